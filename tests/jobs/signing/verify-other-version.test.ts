import { expect, test } from "vitest";
import { recordJson, recordPage } from "../../../src/jobs/records/write-record.ts";
import { sharedFigures, verifyOtherVersion } from "../../../src/jobs/signing/verify-other-version.ts";
import { sealOf } from "../../../src/proof/seal-record.ts";
import { readSealedRecord } from "../../../src/record/read-sealed-record.ts";
import { withPlainRecord } from "../../../src/record/record-element.ts";
import type { SealedRecord } from "../../../src/record/record-schema.ts";
import { reportedRecord } from "../reported-records.ts";

const { record, page, json } = await reportedRecord();

/** What is said of a text by a version that did not write it. */
function said(text: string, filedBy?: number) {
  const read = readSealedRecord(text, "a.html");
  if (!("record" in read)) throw new TypeError(read.doubts[0]?.says);
  const { doubts, note } = verifyOtherVersion(text, read, sharedFigures(read.record), {
    ...{ softwareVersion: "9.0.0", filedBy },
  });
  return { doubts: doubts.map(({ about, place }) => `${about}: ${place}`), says: doubts.map((one) => one.says), note };
}

function changed(change: (copy: SealedRecord) => void): SealedRecord {
  const copy = structuredClone(record);
  change(copy);
  return { ...copy, seal: sealOf(copy) };
}

const begins = "written by spanwright 0.1.0 in form 2, verified by 9.0.0; ";
const agrees = /the \d+ figures that both versions define agree with its rows within 1 in 10\^9/u;

test("a page and a JSON as another version wrote them give no doubt, and one sentence says how far that goes", () => {
  expect(said(page).doubts).toEqual([]);
  expect(said(page).note).toMatch(new RegExp(`^${begins}${agrees.source}; the page was not drawn again: whether`, "u"));
  expect(said(page, 4).note).toMatch(/its SHA-256 is that in line 4 of the ledger$/u);
  expect(said(json)).toEqual({
    doubts: [],
    says: [],
    note: expect.stringMatching(new RegExp(`^${begins}${agrees.source}$`, "u")),
  });
});

test("a figure that both define and its rows do not give is a doubt, sealed anew or not; then the writer has to be asked", async () => {
  const forged = changed(({ phases }) => Object.assign(phases.asFound?.zeroError ?? {}, { percentSpan: 0 }));
  for (const text of [await recordPage(forged), recordJson(forged)]) {
    const { doubts, says, note } = said(text);
    expect(doubts).toEqual(["figures: phases.asFound.zeroError.percentSpan", "file: software.version"]);
    expect(says[1]).toMatch(/^spanwright 0\.1\.0 wrote this record and this is 9\.0\.0, which computes these figures/u);
    expect(note).toMatch(/; 1 of \d+ figures that both versions define differ(?:;|$)/u);
  }
});

test("a cell of the rows that was changed is a doubt", () => {
  const forged = changed(({ inputs }) => Object.assign(inputs.rows.readings[0]?.cells ?? {}, { signal: "4.50" }));
  expect(said(recordJson(forged)).doubts).toContain("figures: phases.asFound.readings[0].signal");
});

test("data that are not written as records are written are a doubt, and so are two records in a page", () => {
  expect(said(withPlainRecord(page).replace('"revision":1', '"revision": 1')).doubts).toEqual([
    "page: data inside the page",
  ]);
  expect(said(withPlainRecord(page).replace('"schema"', '"\\u0073chema"')).doubts).toEqual([
    "page: data inside the page",
  ]);
  expect(said(`${page}<script id="record">{}</script>`).says).toEqual(["it holds 2 records, and may hold one"]);
  expect(said(json.trimEnd()).doubts).toEqual([expect.stringMatching(/^page: line \d+$/u)]);
});

test("fields that are not known are named, some of many", () => {
  expect(said(recordJson({ ...record, mast: 3 })).note).toMatch(/; fields that this version does not know: mast$/u);
  const many = Object.fromEntries(Array.from({ length: 7 }, (_, index) => [`extra${index}`, 1]));
  expect(said(recordJson({ ...record, ...many })).note).toMatch(
    /: extra0, extra1, extra2, extra3, extra4 and 2 more$/u,
  );
});

test("rows that this version cannot read are told, and are no doubt: what was sealed is what it was", () => {
  const forged = changed(({ inputs }) => Object.assign(inputs.rows.readings[0]?.cells ?? {}, { signal: "four" }));
  const { doubts, note } = said(recordJson(forged));
  expect(doubts).toEqual([]);
  expect(note).toMatch(/; none of its figures could be made again from its rows: .*four/u);
});
