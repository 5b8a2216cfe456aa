import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import type { FiledLine } from "../../src/filing/ledger-line.ts";
import { indexEntry, indexRow } from "../../src/filing/make-index-entry.ts";
import { recordSummary } from "../../src/record/record-summary.ts";
import { sampleLines } from "./sample-lines.ts";
import { samplePage } from "./sample-pages.ts";

const [line] = sampleLines(1) as [FiledLine];

test("an entry is the line's place, the record in short of its test points what a drift needs, and its standards", () => {
  const { record } = samplePage({ isOutOfTolerance: true });
  const entry = indexEntry(line, record);
  const { points = [], ...asFound } = recordSummary(record).asFound ?? {};
  const places = points.map((point) => [point.point, point.errorDistance, point.toleranceLow, point.toleranceHigh]);
  expect(entry).toEqual({
    number: 1,
    path: line.path,
    fileSha256: line.fileSha256,
    recommendation: record.recommendation?.asFound?.action,
    summary: { ...recordSummary(record), asFound: { ...asFound, places } },
    signedBy: [],
    standards: [{ standard: "GB-1", certificate: "K-7", dueOn: "2027-06-01" }],
  });
  expect(entry.summary.asFound?.statement).toBe("fail");
});

test("what the record states of its instrument is there, and nothing that it does not", () => {
  const { record } = samplePage();
  const instrument = {
    ...record.instrument,
    ...{ description: "tank", location: "hall 3", criticality: "safety" as const },
    ...{ intervalMonths: 6, intervalAgreedBy: "A. Example" },
  };
  const calibration = { ...record.calibration, impactDecision: "no impact" };
  expect(indexEntry(line, { ...record, instrument, calibration })).toMatchObject({
    ...{ description: "tank", location: "hall 3", criticality: "safety" },
    ...{ intervalMonths: 6, intervalAgreedBy: "A. Example", impactDecision: "no impact" },
  });
});

test("a row is the entry, its JSON and the digest of that", () => {
  const { record } = samplePage();
  const { entry, text, sha256 } = indexRow(line, record);
  expect(JSON.parse(text)).toEqual(entry);
  expect(sha256).toBe(createHash("sha256").update(text).digest("hex"));
});
