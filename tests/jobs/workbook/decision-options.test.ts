import { describe, expect, test } from "vitest";
import { type DecisionOptions, readDecision } from "../../../src/jobs/workbook/decision-options.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";

function read(options: DecisionOptions) {
  const problems = new ProblemList();
  return { settings: readDecision(options, problems), told: problems.all.map(sentence) };
}

test("no option leaves everything to the instrument, and draws nothing", () => {
  expect(read({})).toEqual({
    settings: { ruleOverride: { name: undefined, guardFactor: undefined }, monteCarloDraws: undefined },
    told: [],
  });
});

test.each([
  ["guard band", "guard band"],
  ["guard-band", "guard band"],
  ["Managed Guard Band", "managed guard band"],
  ["four_words", "non-binary guard band"],
  ["simpleacceptance", "simple acceptance"],
])("a rule may be typed %j", (rule, name) => {
  expect(read({ rule })).toMatchObject({ settings: { ruleOverride: { name } }, told: [] });
});

test.each([
  ["0", 0],
  ["1", 1],
  [" 0.83 ", 0.83],
])("a guard factor of %j is %d", (guardFactor, value) => {
  expect(read({ guardFactor })).toMatchObject({ settings: { ruleOverride: { guardFactor: value } }, told: [] });
});

test.each([
  ["250000", 250_000],
  ["1e6", 1_000_000],
  ["10000000", 10_000_000],
])("%j draws are %d", (monteCarlo, draws) => {
  expect(read({ monteCarlo })).toMatchObject({ settings: { monteCarloDraws: draws }, told: [] });
});

describe("what cannot be understood is told, with what is accepted, and nothing comes back", () => {
  test.each<[DecisionOptions, string, string]>([
    [{ rule: "coin" }, "--rule", "simple acceptance, guard band, non-binary guard band, managed guard band"],
    [{ rule: "" }, "--rule", "simple acceptance, guard band, non-binary guard band, managed guard band"],
    [{ guardFactor: "1.01" }, "--guard-factor", "a number from 0 to 1"],
    [{ guardFactor: "-0.1" }, "--guard-factor", "a number from 0 to 1"],
    [{ guardFactor: "0,5" }, "--guard-factor", "a number from 0 to 1"],
    [{ guardFactor: "" }, "--guard-factor", "a number from 0 to 1"],
    [{ monteCarlo: "249999" }, "--monte-carlo", "a whole number of draws from 250000 to 10000000"],
    [{ monteCarlo: "10000001" }, "--monte-carlo", "a whole number of draws from 250000 to 10000000"],
    [{ monteCarlo: "300000.5" }, "--monte-carlo", "a whole number of draws from 250000 to 10000000"],
    [{ monteCarlo: "many" }, "--monte-carlo", "a whole number of draws from 250000 to 10000000"],
  ])("%j", (options, option, accepted) => {
    const { settings, told } = read(options);
    expect(settings).toBeUndefined();
    expect(told).toHaveLength(1);
    expect(told[0]).toContain(option);
    expect(told[0]).toContain(accepted);
  });

  test("all of them at once", () => {
    expect(read({ rule: "coin", guardFactor: "2", monteCarlo: "1" }).told).toHaveLength(3);
  });
});
