import { expect, test } from "vitest";
import { notDetermined } from "../../../src/analysis/figures/figure.ts";
import { type ObservedRate, observedRate } from "../../../src/analysis/years/observed-rate.ts";

// R 4.2.2: binom.test(4, 5)$conf.int is 0.2835821 0.9949492.
test("four of five are 0.8, from 0.2836 to 0.9949", () => {
  const { inTolerance, of, rate, low, high } = observedRate([true, true, true, false, true]) as ObservedRate;
  expect([inTolerance, of, rate]).toEqual([4, 5, 0.8]);
  expect(Math.abs(low - 0.2835821)).toBeLessThan(0.51e-7);
  expect(Math.abs(high - 0.9949492)).toBeLessThan(0.51e-7);
});

test("all or none leave one side open", () => {
  expect(observedRate([true, true, true])).toMatchObject({ rate: 1, high: 1 });
  expect(observedRate([false])).toMatchObject({ rate: 0, low: 0 });
});

test("without a result there is no rate", () => {
  expect(observedRate([])).toEqual(notDetermined("not enough: nothing was found at the end of an interval"));
});
