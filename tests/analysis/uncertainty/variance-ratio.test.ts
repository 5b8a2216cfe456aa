import { describe, expect, test } from "vitest";
import { varianceRatio } from "../../../src/analysis/uncertainty/variance-ratio.ts";
import { expectNear } from "../sample-loop.ts";

const table = [
  [6.9, 5.4, 5.8, 4.6, 4.0],
  [8.3, 6.8, 7.8, 9.2, 6.5],
  [8.0, 10.5, 8.1, 6.9, 9.3],
];

describe("three groups of five, by R 4.2.2: anova(lm(y ~ group)), qf(0.95, 2, 12)", () => {
  const between = { square: 13.948666666666687, freedom: 2, readings: 5 };
  const within = { square: 1.454333333333331, freedom: 12 };

  test("the mean squares are those of the readings", () => {
    const means = table.map((row) => row.reduce((sum, value) => sum + value, 0) / row.length);
    const middle = means.reduce((sum, value) => sum + value, 0) / means.length;
    expectNear(means.reduce((sum, value) => sum + 5 * (value - middle) ** 2, 0) / 2, between.square, 1e-12);
  });

  test("F and its limit", () => {
    const found = varianceRatio(between, within);
    expectNear(found.ratio, 9.591107036442841, 1e-12);
    expectNear(found.ratioLimit, 3.885293834652392, 1e-9);
    expect(found.isShown).toBe(true);
  });
});

test("what storing a number makes is not measured: groups that do not differ have a ratio of 0, also without scatter", () => {
  const nothing = { square: 1e-22, freedom: 2, readings: 5 };
  expect(varianceRatio(nothing, { square: 0, freedom: 12 })).toMatchObject({ ratio: 0, isShown: false });
});

test("groups that differ without any scatter within them are shown", () => {
  const shown = varianceRatio({ square: 1, freedom: 2, readings: 5 }, { square: 0, freedom: 12 });
  expect(shown.isShown).toBe(true);
  expect(Number.isFinite(shown.ratio)).toBe(true);
});
