import { expect, test } from "vitest";
import { checkAmendment } from "../../src/filing/check-amendment.ts";
import type { SealedRecord } from "../../src/record/record-schema.ts";
import { amended, samplePage } from "./sample-pages.ts";

const replaced = samplePage().record;
const { record } = amended(replaced, "put right");
const asRead = (one: SealedRecord, form: number) => ({ record: one, written: one, form });
const told = (one: SealedRecord, other: SealedRecord, formOfOne = 2) =>
  checkAmendment(asRead(one, formOfOne), asRead(other, 2), "x.html").map(({ says }) => says);

test("a revision that says what it replaces and all that differs gives no doubt", () => {
  expect(told(replaced, record)).toEqual([]);
});

test("a revision that says nothing, or names another record, is told", () => {
  const { amendment, ...bare } = record;
  expect(told(replaced, bare)).toEqual(["it is revision 2 and does not say what it amends"]);
  expect(amendment).toBeDefined();
  const says = "it says that it replaces another record than the filed revision 1";
  expect(told(samplePage({ calibration: "C-2" }).record, record)).toEqual([says]);
  expect(told(replaced, { ...record, revision: 3 })).toEqual([
    "it says that it replaces another record than the filed revision 2",
  ]);
});

test("a change that is not listed, and one that is listed and was none, are told", () => {
  const silent = { ...record, figureBasis: "another" };
  expect(told(replaced, silent)).toEqual([
    "its list of changes is not what differs from revision 1: 1 are listed, 2 were found, the first that differs is figureBasis",
  ]);
  const { amendment } = record;
  if (amendment === undefined) throw new TypeError("the second revision amends the first");
  const boastful = {
    ...record,
    amendment: {
      ...amendment,
      changes: [...amendment.changes, { place: "nextDue", before: null, after: '"2027-01-01"' }],
    },
  };
  expect(told(replaced, boastful)).toEqual([
    "its list of changes is not what differs from revision 1: 2 are listed, 1 were found, the first that differs is nextDue",
  ]);
});

test("half of a character in what is said to have changed is told, and ends nothing", () => {
  const { amendment } = record;
  if (amendment === undefined) throw new TypeError("the second revision amends the first");
  const halved = { ...record, amendment: { ...amendment, changes: [{ place: "x", before: null, after: "\ud800" }] } };
  expect(told(replaced, halved)).toEqual(["it holds what JSON cannot: half of a character"]);
});

test("where the replaced record is of an earlier form, what was typed alone is compared", () => {
  expect(told(replaced, { ...record, figureBasis: "another" }, 1)).toEqual([]);
  const other = structuredClone(record);
  Object.assign(other.inputs.rows.readings[0]?.cells ?? {}, { signal: "4.00" });
  expect(told(replaced, other, 1)).toEqual([expect.stringContaining("inputs.rows.readings[0].cells.signal")]);
});
