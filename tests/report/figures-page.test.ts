import { expect, test } from "vitest";
import { drawPictures } from "../../src/jobs/records/draw-pictures.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import type { CalibrationRecord, PhaseRecord } from "../../src/record/record-schema.ts";
import { renderPage } from "../../src/report/page.tsx";
import { sampleRecord } from "../charts/sample-record.ts";
import { demoRecord } from "./demo-records.ts";
import { drawnPage } from "./drawn-page.ts";

const sample = sampleRecord({ phases: ["asFound"], rangeLower: 0, rangeUpper: 1000 });

/** How a figure reads on the page of the sample with another value of it. */
async function cellOf(name: string, change: Partial<PhaseRecord>): Promise<string> {
  const record: CalibrationRecord = structuredClone(sample);
  Object.assign(record.phases.asFound ?? {}, change);
  const page = renderPage(sealRecord(record), await drawPictures(record));
  const row = page.split("<tr").find((one) => one.includes(`>${name} <`)) ?? "";
  return (row.split("<td")[1] ?? "").replace(/^[^>]*>|<[^>]+>/gu, "").trim();
}

test("both sides of the inaccuracy are printed, and none where no reading lies on one", async () => {
  const inaccuracy = (positive: number, negative: number) =>
    cellOf("Inaccuracy", { inaccuracy: { positive, negative } });
  expect(await inaccuracy(0.25, -0.5)).toMatch(/^\+0\.250* \/ −0\.50*$/u);
  expect(await inaccuracy(0, -0.5)).toMatch(/^none \/ −0\.50*$/u);
  expect(await inaccuracy(0.25, 0)).toMatch(/^\+0\.250* \/ none$/u);
});

test("the mean absolute error is printed without a sign, with its distance; a record from before it says that it is not there", async () => {
  const found = await cellOf("Mean absolute error", { meanAbsoluteError: { percentSpan: 0.25, distance: 2.5 } });
  expect(found).toMatch(/^0\.250* 2\.50* mm$/u);
  expect(await cellOf("Mean absolute error", { meanAbsoluteError: undefined })).toBe(
    "not determined: not in these data",
  );
});

test("where all are equal, a difference of 0 is at no place", async () => {
  const hysteresis = (percentSpan: number) =>
    cellOf("Hysteresis", { hysteresis: { percentSpan, point: 200, withinOneCycle: null } });
  expect(await hysteresis(0.25)).toMatch(/^0\.250* at 200 mm$/u);
  expect(await hysteresis(0)).toMatch(/^0\.0+$/u);
  // What a computer's own rounding makes of equal numbers.
  expect(await hysteresis(3e-14)).toMatch(/^0\.0+$/u);
});

test("where another stage decided, the heading of the figures says of what they are, on sheet 1 and in annex B", async () => {
  const headings = async (changes: Partial<PhaseRecord>) => {
    const record: CalibrationRecord = structuredClone(sample);
    Object.assign(record.phases.asFound ?? {}, changes);
    const page = renderPage(sealRecord(record), await drawPictures(record));
    return [...page.matchAll(/<caption>(Figures[^<]*)</gu)].map(([, heading]) => heading);
  };
  expect(await headings({ endOf: "controller" })).toEqual([
    "Figures of what the sensor gave; in full in annex B",
    "Figures of what the sensor gave",
  ]);
  expect(await headings({ endOf: "controller", judged: "counts" })).toEqual([
    "Figures of what the raw counts gave; in full in annex B",
    "Figures of what the raw counts gave",
  ]);
  expect(await headings({ endOf: "sensor", judged: "value" })).toEqual(["Figures; in full in annex B"]);
});

test("U of the worst test point says of which stage it is where that is not the sensor", async () => {
  const named = async (tag: string) => /<th[^>]*>(U, worst point[^<]*)</u.exec(await drawnPage(demoRecord(tag)))?.[1];
  expect(demoRecord("LT-702").phases.asFound?.worstPoint?.of).toBe("controller");
  expect(await named("LT-702")).toBe("U, worst point, controller");
  expect(await named("LT-310")).toBe("U, worst point");
});
