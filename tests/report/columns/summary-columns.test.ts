import { expect, test } from "vitest";
import type { CalibrationRecord, PhaseRecord } from "../../../src/record/record-schema.ts";
import { summaryColumns } from "../../../src/report/columns/summary-columns.ts";
import { namedRows } from "../../../src/report/table/column.ts";
import { sampleRecord } from "../../charts/sample-record.ts";
import { demoRecord } from "../demo-records.ts";

const worst = Object.freeze({
  of: "sensor",
  row: 2,
  errorDistance: 7.4,
  errorPercentSpan: 0.74,
  partOfTolerance: 1.48,
} as const);

function withPhase(name: "asFound" | "asLeft", change: Partial<PhaseRecord>, tag = "LT-204"): CalibrationRecord {
  const record = sampleRecord({ tag, phases: [name] });
  const phase = record.phases[name];
  return phase === undefined ? record : { ...record, phases: { [name]: { ...phase, ...change } } };
}

const rowOf = (record: CalibrationRecord) => namedRows(summaryColumns, [{ record, page: "out/page.html" }])[1];

test("the first row names the columns", () => {
  expect(namedRows(summaryColumns, [])).toEqual([
    ["tag", "calibration", "as found", "as left", "overall", "worst error, % of span", "to do", "page"],
  ]);
});

test("a row says tag, number, verdicts, worst error with the decimals of the page, and page", () => {
  expect(rowOf(withPhase("asFound", { verdict: "fail", worst }))).toEqual([
    "LT-204",
    "C-0001",
    "fail",
    "–",
    "fail",
    "+0.740",
    "re-teach",
    "out/page.html",
  ]);
});

test("a phase whose verdict or worst error was not determined says so", () => {
  expect(rowOf(withPhase("asLeft", { verdict: null, worst: null }))).toEqual([
    "LT-204",
    "C-0001",
    "–",
    "not determined",
    "pass",
    "not determined",
    "leave",
    "out/page.html",
  ]);
});

test("both phases stand with an arrow between them", () => {
  const found = withPhase("asFound", { worst });
  const left = withPhase("asLeft", { worst: { ...worst, errorPercentSpan: -0.05, partOfTolerance: 0.1 } });
  expect(rowOf({ ...found, phases: { ...found.phases, ...left.phases } })?.[5]).toBe("+0.740 → −0.050");
});

test("an error of exactly zero has no sign", () => {
  const none = { ...worst, errorDistance: 0, errorPercentSpan: 0, partOfTolerance: 0 };
  expect(rowOf(withPhase("asFound", { worst: none }))?.[5]).toBe("0.000");
});

test("a long tag and one with a newline stay on one short line", () => {
  const [cell] = rowOf(withPhase("asFound", {}, `first\nsecond ${"x".repeat(100)}`)) ?? [];
  const tag = String(cell);
  expect([...tag]).toHaveLength(40);
  expect(tag.startsWith("first second xxx")).toBe(true);
  expect(tag.endsWith("…")).toBe(true);
});

test("what to do is that of the last phase, each kind of work once", () => {
  expect(rowOf(demoRecord("LT-310"))?.[6]).toBe("leave");
  expect(rowOf(demoRecord("LT-640"))?.[6]).toBe("repair, re-teach");
  expect(rowOf(demoRecord("ZT-331"))?.[6]).toBe("repair, cannot be decided");
});
