import { expect, test } from "vitest";
import { drawPictures } from "../../../src/jobs/records/draw-pictures.ts";
import { sampleRecord } from "../../charts/sample-record.ts";
import { switchingRecord } from "../../record/sample-switching.ts";

const ofBothStages = await drawPictures(sampleRecord({ hasController: true }));

const classOf = (svg: string) => /class="([^"]+)"/u.exec(svg)?.[1];

test("a record with both phases has two widths of the error picture and, each phase, its others", async () => {
  const { errorWide, errorNarrow, stages, others, absent } = await drawPictures(sampleRecord());
  expect(stages).toEqual([]);
  expect(classOf(errorWide?.svg ?? "")).toContain("wide");
  expect(classOf(errorNarrow?.svg ?? "")).toContain("narrow");
  expect(others).toHaveLength(4);
  expect(absent).toEqual([]);
});

test("a controller adds the picture of the stages to each phase", () => {
  expect(ofBothStages.stages).toHaveLength(2);
});

test("what cannot be drawn is said with its reason", async () => {
  const { others, absent } = await drawPictures(sampleRecord({ phases: ["asFound"], directions: ["rising"] }));
  expect(others).toHaveLength(1);
  expect(absent).toEqual(["As found, rising against falling: not drawn, no test point was read in both directions."]);
});

test("each switched output that was tripped has its picture after the others", async () => {
  const { others } = await drawPictures(switchingRecord());
  expect(classOf(others.at(-1)?.svg ?? "")).toBe("chart trip-chart");
  expect((await drawPictures(switchingRecord({ trips: [] }))).others).toHaveLength(others.length - 1);
});

test("no id stands twice among the pictures of a page", () => {
  const { errorWide, errorNarrow, stages, others } = ofBothStages;
  const page = [errorWide, errorNarrow, ...stages, ...others].map((drawing) => drawing?.svg ?? "").join("");
  const ids = [...page.matchAll(/ id="([^"]+)"/gu)].map(([, id]) => id);
  expect(ids.length).toBeGreaterThanOrEqual(8);
  expect(new Set(ids).size).toBe(ids.length);
});

test("each picture has a title, a caption and a description", () => {
  const { errorWide, errorNarrow, stages, others } = ofBothStages;
  for (const drawing of [errorWide, errorNarrow, ...stages, ...others]) {
    expect(drawing?.title).not.toBe("");
    expect(drawing?.caption).not.toBe("");
    expect(drawing?.description).not.toBe("");
  }
});

test("where every reading is left out nothing is drawn and nothing fails", async () => {
  const record = structuredClone(sampleRecord({ phases: ["asFound"] }));
  const phase = record.phases.asFound;
  if (phase === undefined) throw new RangeError("the sample has no phase as found");
  for (const reading of phase.readings) reading.leftOut = "target moved";
  phase.counted = { ...phase.counted, used: 0, leftOut: phase.readings.length };
  const { errorWide, errorNarrow, stages, others } = await drawPictures(record);
  expect([errorWide, errorNarrow, ...stages, ...others]).toEqual([undefined, undefined]);
});
