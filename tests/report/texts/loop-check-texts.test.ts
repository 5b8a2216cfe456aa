import { expect, test } from "vitest";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import type { LoopCheckItem } from "../../../src/record/loop-check-schema.ts";
import type { CalibrationRecord } from "../../../src/record/record-schema.ts";
import { renderPage } from "../../../src/report/page.tsx";
import {
  allowedWords,
  burdenWords,
  checkNumber,
  contradictionsOf,
  countWords,
  incompleteWords,
} from "../../../src/report/texts/loop-check-texts.ts";
import { demoRecord } from "../demo-records.ts";

const record = demoRecord("LT-640");
const loopChecks = record.loopChecks!;
const item = (more: Partial<LoopCheckItem>): LoopCheckItem => ({ ...loopChecks.items[0]!, ...more });
const withItems = (items: readonly LoopCheckItem[], more: Partial<typeof loopChecks> = {}): CalibrationRecord => ({
  ...record,
  loopChecks: { ...loopChecks, items: [...items], ...more },
});
const drawings = { errorWide: undefined, errorNarrow: undefined, stages: [], others: [], absent: [] };
const textOf = (one: CalibrationRecord) =>
  renderPage(sealRecord(one), drawings)
    .split('<script type="application/gzip"')[0]!
    .replace(/<[^>]+>/gu, " ")
    .replace(/\s+/gu, " ");

test("what is allowed is said with its unit once, own words first", () => {
  expect(allowedWords(item({ low: 12, high: 30, unit: "V" }))).toBe("allowed 12 to 30 V");
  expect(allowedWords(item({ low: 2, high: 2, unit: "wires" }))).toBe("allowed 2 wires");
  expect(allowedWords(item({ low: null, high: 571.428, unit: "Ω" }))).toBe("allowed 571.43 Ω at most");
  expect(allowedWords(item({ low: 15, high: null, unit: "min", words: ["dry"] }))).toBe("allowed dry; 15 min or more");
  expect(allowedWords(item({ low: null, high: null, words: [] }))).toBeUndefined();
  expect(checkNumber(27_648)).toBe("27648");
});

test("the count names what failed; what was not looked at is no item of it", () => {
  expect(countWords(loopChecks)).toBe("5 of 6 items pass; fail: supply at full output.");
  const open = withItems([item({ result: "pass" }), item({ result: "not looked at" })]).loopChecks!;
  expect(countWords(open)).toBe("The one item that was looked at passes.");
  const failed = withItems([item({ result: "pass" }), item({ item: "duct", result: "fail" })]).loopChecks!;
  expect(countWords(failed)).toBe("1 of 2 items passes; fail: duct.");
  expect(countWords({ ...loopChecks, items: [] })).toBe("No item was looked at.");
});

test("an item that failed, and passed when it was looked at again, passes and is named; a contradiction is over", () => {
  const shield = (more: Partial<LoopCheckItem>) => item({ item: "shield", isContradiction: false, ...more });
  const mended = withItems([
    shield({ result: "fail" }),
    item({ item: "duct", result: "pass" }),
    shield({ result: "pass" }),
  ]);
  expect(countWords(mended.loopChecks!)).toBe(
    "All 2 items that were looked at pass. Failed, and passed when looked at again: shield.",
  );
  const settled = withItems([shield({ result: "pass", isContradiction: true }), shield({ result: "pass" })]);
  expect(contradictionsOf(settled)).toEqual([]);
});

test("the burden is a sum that a reader can follow", () => {
  expect(burdenWords(demoRecord("LT-702"))).toBe(
    "Burden: card 250 Ω + barrier 120 Ω + cable 2 · 0.18 km · 28.04 Ω/km at 40 °C, 10.1 Ω = 380.1 Ω; allowed (24 V − 12 V) / 21 mA = 571.4 Ω; margin 33 %. At 21 mA the loop needs 20.0 V.",
  );
  expect(burdenWords(demoRecord("ZT-201"))).toBeUndefined();
});

test("a loop that is not handed back is not complete: in the result, in its section, in the safety notes", () => {
  expect(incompleteWords(record)).toBeUndefined();
  const open = withItems([], { incomplete: ["nobody has answered that the loop was restored"] });
  const said = "Not complete: nobody has answered that the loop was restored.";
  expect(incompleteWords(open)).toBe(said);
  expect(textOf(open).split(said)).toHaveLength(1 + 3);
});

test("a contradiction is on the page, in the result too", () => {
  const contradicted = item({ result: "pass", isContradiction: true, outside: ["11.4 V where 12 to 30 V is allowed"] });
  const page = textOf(withItems([contradicted]));
  expect(contradictionsOf(withItems([contradicted]))).toHaveLength(1);
  expect(page).toContain("Contradiction: identity.");
  expect(page).toContain("Contradiction: identity has the result pass, and yet: 11.4 V where 12 to 30 V is allowed.");
  expect(contradictionsOf(record)).toEqual([]);
});

test("the page shows each item, what the tables compute, and what was not looked at", () => {
  const page = textOf(record);
  expect(page).toContain("11.4 V where 12 to 30 V is allowed by supply_min, supply_max");
  expect(page).toContain("0.283 kΩ 0.28286 kΩ by the tables allowed 0.5 kΩ at most by load_max");
  expect(page).toContain("Not looked at, of the items that apply to this loop: as-built drawing");
  expect(textOf({ ...record, loopChecks: undefined })).not.toContain("Loop check");
});

test("the set-point table is on the page, fault levels as signals alone", () => {
  const page = textOf(demoRecord("LT-702"));
  expect(page).toContain("25 % of span 2.3 8.000 6912 75 25.00");
  expect(page).toContain("fault level, high – 21.000 – – –");
});
