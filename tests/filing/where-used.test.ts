import { expect, test } from "vitest";
import { whereUsed } from "../../src/filing/where-used.ts";
import { entry } from "./sample-entries.ts";

const used = (...standards: readonly (readonly [string, string])[]) => ({
  standards: standards.map(([standard, certificate]) => ({ standard, certificate, dueOn: "2027-01-01" })),
});
const entries = [
  entry({ calibration: "C-1", performedOn: "2026-03-01" }, used(["BAR-1", "K-7"], ["METER-1", "M-1"])),
  entry({ calibration: "C-2", performedOn: "2026-01-01" }, used(["BAR-1", "K-6"])),
  entry({ calibration: "C-3", performedOn: "2026-02-01" }, used(["METER-1", "M-1"])),
  entry({ calibration: "C-1", performedOn: "2026-03-01", revision: 2 }, used(["METER-1", "M-1"])),
];
const found = (standard: string, certificate?: string) =>
  whereUsed(entries, { standard, certificate }).map(({ entry: { summary }, certificates, isCurrent }) => [
    ...[summary.calibration, summary.revision, isCurrent],
    certificates.join(),
  ]);

test("every record that rests on a standard, the oldest work first, a superseded one as what it is", () => {
  expect(found("BAR-1")).toEqual([
    ["C-2", 1, true, "K-6"],
    ["C-1", 1, false, "K-7"],
  ]);
  expect(found("METER-1").map(([calibration, revision]) => [calibration, revision])).toEqual([
    ["C-3", 1],
    ["C-1", 1],
    ["C-1", 2],
  ]);
});

test("one certificate alone, and none where no record names it", () => {
  expect(found("BAR-1", "K-7")).toEqual([["C-1", 1, false, "K-7"]]);
  expect(found("BAR-1", "K-9")).toEqual([]);
  expect(found("TAPE-1")).toEqual([]);
});
