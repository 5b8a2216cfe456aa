import { expect, test } from "vitest";
import { earlierRecords } from "../../src/filing/earlier-records.ts";
import { currentRecordsByTag } from "../../src/filing/latest-records.ts";
import { entry, phaseInShort } from "./sample-entries.ts";

const first = entry({ calibration: "C-1", performedOn: "2024-01-01" });
const replaced = entry({ calibration: "C-2", performedOn: "2025-01-01", asFound: phaseInShort("fail") });
const amended = entry({ calibration: "C-2", performedOn: "2025-01-01", revision: 2 });
const later = entry({ calibration: "C-3", performedOn: "2026-01-01", asFound: phaseInShort("conditional pass") });
const withoutDay = entry({ calibration: "C-0", performedOn: null });
const elsewhere = entry({ tag: "LT-2", performedOn: "2025-06-01", asFound: phaseInShort("conditional fail") });
const undecided = entry({ tag: "LT-3", performedOn: "2025-06-01", asFound: phaseInShort("cannot be decided") });
const leftOnly = entry({ tag: "LT-4", performedOn: "2025-06-01", asFound: null });
const byTag = currentRecordsByTag(
  Object.freeze([later, replaced, amended, first, withoutDay, elsewhere, undecided, leftOnly]),
);

function before(calibration: string, performedOn?: string) {
  const { ofTag, rate } = earlierRecords(byTag, { tag: "LT-1", calibration, performedOn });
  return { ofTag: ofTag.map(({ summary }) => `${summary.calibration} r${summary.revision}`), rate };
}

test("before a calibration are the records of its tag of earlier days, the latest revision of each, oldest first", () => {
  expect(before("C-4", "2026-11-25").ofTag).toEqual(["C-1 r1", "C-2 r2", "C-3 r1"]);
  expect(before("C-4", "2026-01-01").ofTag).toEqual(["C-1 r1", "C-2 r2"]);
  expect(before("C-4", "2023-01-01").ofTag).toEqual([]);
});

test("a calibration is not before itself, nor one without a day before any", () => {
  expect(before("C-2", "2026-11-25").ofTag).toEqual(["C-1 r1", "C-3 r1"]);
  expect(before("C-0").ofTag).toEqual(["C-1 r1", "C-2 r2", "C-3 r1"]);
});

test("the rate counts how loops of all tags were found before: a conditional fail and what is undecided are not in tolerance", () => {
  expect(before("C-4", "2026-11-25").rate).toEqual({ inTolerance: 3, of: 5 });
  expect(before("C-4", "2025-06-01").rate).toEqual({ inTolerance: 2, of: 2 });
  expect(before("C-4", "2023-01-01").rate).toEqual({ inTolerance: 0, of: 0 });
});

test("a tag that the folder does not know has no history, and the folder its rate", () => {
  const { ofTag, rate } = earlierRecords(byTag, { tag: "LT-9", calibration: "C-1", performedOn: "2026-11-25" });
  expect(ofTag).toEqual([]);
  expect(rate.of).toBe(6 - 1);
});
