import { describe, expect, test } from "vitest";
import { decisionRules } from "../../../src/model/instrument-words.ts";
import type { CalibrationRecord, PhaseRecord } from "../../../src/record/record-schema.ts";
import { pointWords, riskWords, ruleInShort, ruleWords } from "../../../src/report/texts/decision-texts.ts";
import { sampleRecord } from "../../charts/sample-record.ts";

const record = sampleRecord({ phases: ["asFound"], hasController: true });
const phase = record.phases.asFound as PhaseRecord;

const withRule = (name: CalibrationRecord["decisionRule"]["name"], guardFactor: number): CalibrationRecord => ({
  ...record,
  decisionRule: { ...record.decisionRule, name, guardFactor },
});

describe("the rule in words", () => {
  test("names itself, and each rule says something else", () => {
    const all = decisionRules.map((name) => ruleWords(withRule(name, 1)));
    for (const [index, name] of decisionRules.entries()) expect(all[index]?.startsWith(name)).toBe(true);
    expect(new Set(all).size).toBe(decisionRules.length);
  });

  test("in short names itself or its guard band, in one line", () => {
    const all = decisionRules.map((name) => ruleInShort(withRule(name, 0.83)));
    expect(new Set(all).size).toBe(decisionRules.length);
    for (const words of all) expect(words.length).toBeLessThan(75);
    expect(ruleInShort(withRule("guard band", 0.83))).toBe("guard band of 0.83 · U inside the tolerance");
    expect(ruleInShort(withRule("non-binary guard band", 1))).toBe("non-binary guard band of 1 · U");
  });

  test("carries the factor of the guard band where it has one", () => {
    expect(ruleWords(withRule("guard band", 0.83))).toContain("0.83 · U");
    expect(ruleWords(withRule("non-binary guard band", 1))).toContain("1 · U");
    for (const name of ["simple acceptance", "managed guard band"] as const)
      expect(ruleWords(withRule(name, 0))).not.toContain("· U");
  });

  test("simple acceptance says what a result on the limit may be", () => {
    expect(ruleWords(withRule("simple acceptance", 0))).toContain("may be wrong as often as right");
  });
});

test("a point in words: error with its sign, uncertainty to two digits, k, place and direction", () => {
  const point = {
    ...phase.points[0]!,
    ...{
      point: 1650,
      direction: "falling" as const,
      errorDistance: 14.2345,
      expandedUncertainty: 0.8567,
      coverageFactor: 2.0489,
    },
  };
  expect(pointWords(record, point)).toBe("+14.23 ± 0.86 mm (k = 2.05) at 1650 mm, falling");
  expect(pointWords(record, { ...point, errorDistance: -14.2345 })).toBe(
    "−14.23 ± 0.86 mm (k = 2.05) at 1650 mm, falling",
  );
  expect(pointWords(record, { ...point, errorDistance: 0, point: 0.1 + 0.2 })).toBe(
    "0.00 ± 0.86 mm (k = 2.05) at 0.3 mm, falling",
  );
});

test.each([
  [0, "under 0.01 %"],
  [0.00009999, "under 0.01 %"],
  [0.0001, "0.010 %"],
  [0.1587, "16 %"],
  [0.989, "99 %"],
  [0.996, "99.60 %"],
  [0.9999, "99.99 %"],
  [0.99991, "over 99.99 %"],
  [1, "over 99.99 %"],
])("a risk of %d is %j", (risk, words) => {
  expect(riskWords(risk)).toBe(words);
});
