import { expect, test } from "vitest";
import { stageFindings } from "../../src/assembly/stage-findings.ts";
import { demoRecord } from "../report/demo-records.ts";

const record = demoRecord("LT-702");

test("the last phase speaks: LT-702 was scaled wrongly as found, and rightly as left", () => {
  const asLeft = stageFindings(record);
  expect(asLeft.get("scaling")?.finding).toMatchObject({ isPass: true, says: expect.stringMatching(/^as left, /u) });
  expect(asLeft.get("end to end")?.finding).toEqual({
    isPass: true,
    says: "as left, what the controller shows: pass",
  });
  const { asFound } = record.phases;
  const found = stageFindings({ ...record, phases: { ...(asFound && { asFound }) } });
  // Planted: the far end stands for 2 instead of 0 % fill, so for 2 % of 7.6 m too little; the tolerance is 0.3 %.
  expect(found.get("scaling")?.finding).toMatchObject({
    isPass: false,
    says: expect.stringMatching(/by −0\.152 m at 8(?:\.00\d)? m, tolerance there −0\.0228 m$/u),
  });
  expect(found.get("end to end")?.finding).toEqual({
    isPass: false,
    says: "as found, what the controller shows: fail",
  });
});

test("a loop without controller values says nothing of either", () => {
  expect([...stageFindings(demoRecord("ZT-201"))]).toEqual([]);
  expect([...stageFindings({ ...record, phases: {} })]).toEqual([]);
});

test("a rejected reading does not speak", () => {
  const { asFound } = record.phases;
  if (asFound === undefined) throw new Error("LT-702 has a phase as found");
  const readings = asFound.readings.map((reading) => ({ ...reading, leftOut: "rejected" }));
  expect(stageFindings({ ...record, phases: { asFound: { ...asFound, readings } } }).has("scaling")).toBe(false);
});
