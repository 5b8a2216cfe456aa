import { expect, test } from "vitest";
import { recordPlace } from "../../../src/jobs/records/record-place.ts";

const placed = (tag: string) => recordPlace("out", { instrument: { tag }, calibration: { calibration: "C-0001" } });

test("a record lies under its tag and its number, made safe for file names", () => {
  expect(placed("LT-204")).toBe("out/LT-204/C-0001");
  expect(placed("../../x")).toMatch(/^out\/x-[0-9a-f]{8}\/C-0001$/u);
});
