import { expect, test } from "vitest";
import { driftSince } from "../../src/filing/drift-since.ts";
import { entry, phaseInShort } from "./sample-entries.ts";

const before = entry({
  performedOn: "2022-01-01",
  adjustment: "re-teach",
  asFound: phaseInShort("fail", 9, 9),
  asLeft: phaseInShort("pass", 0.1, 0.1),
}).summary;
const now = (zero: number, span: number, more = {}) =>
  entry({ performedOn: "2026-01-01", asFound: phaseInShort("pass", zero, span), ...more }).summary;

test("a drift is as found now minus as left before, at the end that moved more, a year", () => {
  // lower end 0.5 − 0.1 = 0.4; upper end (0.5 + 0.5) − (0.1 + 0.1) = 0.8; over four years 0.2 a year.
  const drift = driftSince(before, now(0.5, 0.5));
  expect("percentSpanPerYear" in drift && Math.abs(drift.percentSpanPerYear - 0.2)).toBeLessThan(1e-15);
  // lower end −0.6 − 0.1 = −0.7 against upper end −0.6 + 0.9 − 0.2 = 0.1.
  const falling = driftSince(before, now(-0.6, 0.9));
  expect("percentSpanPerYear" in falling && Math.abs(falling.percentSpanPerYear + 0.175)).toBeLessThan(1e-15);
});

test("where nothing was adjusted the record before left the loop as it was found", () => {
  const asFoundOnly = { ...before, adjustment: "none" as const, asLeft: null };
  expect(driftSince(asFoundOnly, now(9, 9))).toEqual({ percentSpanPerYear: 0 });
});

test.each([
  ["one record only", undefined, now(0, 0)],
  ["the range was another one", before, now(0, 0, { rangeUpper: 200 })],
  ["the range was another one", before, now(0, 0, { distanceUnit: "cm" })],
  ["another serial number", { ...before, serial: "A-1" }, now(0, 0, { serial: "A-2" })],
  ["no line was fitted", before, now(0, 0, { asFound: null })],
  ["the record before does not say how it left the loop", { ...before, asLeft: null }, now(0, 0)],
  ["a day is not stated", before, now(0, 0, { performedOn: null })],
  ["under 30 days apart", before, now(0, 0, { performedOn: "2022-01-30" })],
])("it is not determined: %s", (reason, earlier, later) => {
  expect(driftSince(earlier, later)).toEqual({ notDetermined: reason });
});
