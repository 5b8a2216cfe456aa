import { expect, test } from "vitest";
import type { LedgerLine } from "../../src/filing/ledger-line.ts";
import { trailOf } from "../../src/filing/trail.ts";
import { entry } from "./sample-entries.ts";

const entered = (number: number) => ({ number, at: `2026-06-0${number}T10:00:00.000+01:00`, previous: "0".repeat(64) });
const digests = { fileSha256: "1".repeat(64), sealSha256: "2".repeat(64) };
const page = (tag: string) => ({ ...digests, path: `${tag}/a.html`, tag, calibration: "C-1", revision: 1 });
const why = { by: "A. Example", reason: "new tags" };
const lines: readonly LedgerLine[] = [
  { ...entered(1), ...page("LT-1"), action: "filed", by: "T. Example" },
  { ...entered(2), ...page("LT-2"), action: "filed", paper: "folder 7" },
  { ...entered(3), ...page("LT-1"), action: "decided", by: "A. Example", decision: "nothing was touched" },
  { ...entered(4), ...page("LT-2"), action: "withdrawn", ...why },
  { ...entered(5), tag: "LT-1", action: "renamed", to: "LT-9", ...why },
  { ...entered(6), tag: "LT-9", action: "relocated", place: "hall 4", ...why },
  { ...entered(7), tag: "LT-2", action: "transferred", to: "LT-9", ...why },
  { ...entered(8), action: "indexed", rows: 2, rowsSha256: "3".repeat(64) },
];
const entries = [{ ...entry({}), number: 1, signedBy: ["Ines Example (performed)"] }];

test("each line of the ledger is told: who, what, when, and why", () => {
  expect(trailOf(lines, entries).map(({ action, tag, by, says }) => [action, tag, by, says])).toEqual([
    ["filed", "LT-1", "T. Example", "signed by Ines Example (performed)"],
    ["filed", "LT-2", undefined, "counts no more; signatures on paper: folder 7"],
    ["decided", "LT-1", "A. Example", "nothing was touched"],
    ["withdrawn", "LT-2", "A. Example", "new tags"],
    ["renamed", "LT-1", "A. Example", "to LT-9: new tags"],
    ["relocated", "LT-9", "A. Example", "to hall 4: new tags"],
    ["transferred", "LT-2", "A. Example", "its sensor to LT-9: new tags"],
    ["indexed", undefined, undefined, "the index made anew from 2 pages"],
  ]);
  expect(trailOf(lines, entries)[0]).toMatchObject({
    ...{ number: 1, at: "2026-06-01T10:00:00.000+01:00", calibration: "C-1", revision: 1 },
  });
});

test("of one loop under every name that it had, and of the sensor that came to it", () => {
  const numbers = (tag: string) => trailOf(lines, entries, tag).map(({ number }) => number);
  expect(numbers("LT-9")).toEqual([1, 3, 5, 6, 7]);
  expect(numbers("LT-2")).toEqual([2, 4, 7]);
  expect(numbers("LT-3")).toEqual([]);
});

test("a page that nobody signed is told so", () => {
  const [unsigned] = trailOf(lines, [
    { ...entry({}), number: 1 },
    { ...entry({}), number: 2 },
  ]);
  expect(unsigned?.says).toBe("not signed");
  expect(trailOf(lines, [{ ...entry({}), number: 2 }])[1]?.says).toBe("signatures on paper: folder 7");
});
