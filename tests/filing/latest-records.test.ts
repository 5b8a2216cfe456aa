import { expect, test } from "vitest";
import { currentRecordsByTag } from "../../src/filing/latest-records.ts";
import { entry } from "./sample-entries.ts";

const namesOf = (entries: Parameters<typeof currentRecordsByTag>[0]) =>
  Object.fromEntries(
    [...currentRecordsByTag(entries)].map(([tag, ofTag]) => [
      tag,
      ofTag.map(({ summary }) => `${summary.calibration} r${summary.revision}`),
    ]),
  );

test("a later revision takes the place of the earlier one, in whatever order they were filed", () => {
  const [first, second] = [1, 2].map((revision) => entry({ calibration: "C", revision }));
  expect(namesOf([first!, second!])).toEqual({ "LT-1": ["C r2"] });
  expect(namesOf([second!, first!])).toEqual({ "LT-1": ["C r2"] });
});

test("the records of a tag stand by the day of the work, not of the filing; one without a day comes first", () => {
  const late = entry({ calibration: "late", performedOn: "2026-05-01" });
  const early = entry({ calibration: "early", performedOn: "2025-05-01" });
  const undated = entry({ calibration: "undated", performedOn: null });
  const other = entry({ tag: "LT-2", calibration: "other" });
  expect(namesOf([late, early, undated, other])).toEqual({
    "LT-1": ["undated r1", "early r1", "late r1"],
    "LT-2": ["other r1"],
  });
});

test("two records of one day stand in the order of filing", () => {
  const [first, second] = ["first", "second"].map((calibration) => entry({ calibration }));
  expect(namesOf([second!, first!])).toEqual({ "LT-1": ["first r1", "second r1"] });
});
