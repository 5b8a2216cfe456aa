import { beforeAll, describe, expect, it } from "vitest";
import { chanceIn, forecastsOf } from "./forecasts.ts";
import { type Judged, judge } from "./judge.ts";
import { judgedPage } from "./judged-page.ts";
import { scoreOf } from "./score.ts";

/**
 * Sixty loops of the two thousand of `npm run judge`. At the rates of docs/advice-judged.md of version 0.2.0 other sixty
 * would break one of these limits with a probability of less than 1 in 20 000 each (binomial tails for 2.8 % false
 * passes, 7.4 % 'replace' without need, 11 % wrong advice, and 0.2 % findings in healthy loops). They are to be tightened
 * when the detectors get better; each says what is aimed at.
 */
const sixty = Array.from({ length: 60 }, (_, seed) => seed);
let judged: readonly Judged[];

beforeAll(async () => {
  judged = await judge(sixty);
}, 120_000);

const how = (isSo: (one: Judged) => boolean) => judged.filter(isSo).length;

describe("sixty loops of the second generator", () => {
  it("never break the program", () => {
    expect(how(({ broke }) => broke !== null)).toBe(0);
  });

  it("are hardly passed where they are outside: aim 0", () => {
    expect(how(({ isFalsePass }) => isFalsePass)).toBeLessThanOrEqual(8);
    expect(how(({ isFalsePassAsLeft }) => isFalsePassAsLeft)).toBeLessThanOrEqual(2);
  });

  it("are not too often to be replaced without need: aim 0", () => {
    expect(how(({ isFalseReplace }) => isFalseReplace)).toBeLessThanOrEqual(15);
  });

  it("have no finding where they are healthy: aim 99.8 %", () => {
    expect(how(({ made, titles }) => made.family === "healthy" && titles.length > 0)).toBeLessThanOrEqual(2);
    expect(how(({ isFalseFail }) => isFalseFail)).toBeLessThanOrEqual(2);
  });

  it("get mostly the advice of an engineer: aim 97 %", () => {
    const asked = judged.filter(({ made }) => made.family !== "doubtful");
    expect(asked.filter(({ isAdviceRight }) => isAdviceRight).length).toBeGreaterThanOrEqual(0.6 * asked.length);
  });

  it("make a page with every kind of fault in it", async () => {
    const forecasts = await forecastsOf(judged);
    const page = judgedPage(judged, scoreOf(judged, forecasts), { date: "2026-11-25", first: 0, last: 59 });
    expect(page).toContain("| upper end taught wrong + curvature |");
    expect(page).toContain("| references in another unit |");
    expect(forecasts.length).toBeGreaterThan(0);
  });
});

describe("chanceIn", () => {
  it("finds a stated chance however deep, and none where there is none", () => {
    expect(chanceIn({ sensor: { now: 1, expected: { chanceOfPass: 0.25 } } })).toBe(0.25);
    expect(chanceIn({ sensor: { now: 1 }, newConstants: null })).toBeNull();
  });
});
