import { expect, test } from "vitest";
import {
  atSignal,
  isLiveZero,
  signalEnds,
  signalErrorAt,
  trueZero,
} from "../../../../src/verdict/causes/evidence/signal-order.ts";
import { signalKinds } from "../../../computed/faults/faulty-loop.ts";
import { planted } from "../planted.ts";

const direct = signalEnds({ signalLower: 4, signalUpper: 20 });
const reverse = signalEnds({ signalLower: 20, signalUpper: 4 });

test("the ends of a signal stand in the order of the signal, whichever way the loop acts", () => {
  expect(direct).toEqual({ low: 4, high: 20, isReverse: false });
  expect(reverse).toEqual({ low: 4, high: 20, isReverse: true });
  expect(atSignal(reverse, 0)).toBe(100);
  expect(atSignal(direct, -25)).toBe(-25);
});

test("0 mA lies a quarter of the span below 4 mA, and 0 V at the end of 0 to 10 V", () => {
  expect(trueZero(direct)).toBe(-25);
  expect(trueZero(signalEnds({ signalLower: 1, signalUpper: 5 }))).toBe(-25);
  expect(trueZero(signalEnds({ signalLower: 10, signalUpper: 0 }))).toBe(0);
  expect(isLiveZero(direct) && isLiveZero(signalEnds({ signalLower: 1, signalUpper: 5 }))).toBe(true);
  expect(isLiveZero(signalEnds({ signalLower: 0, signalUpper: 20 }))).toBe(false);
});

test("too much signal is an error above zero on a reverse-acting loop, too", () => {
  const stage = planted({ signal: (signal) => signal + 0.32 }, { kind: signalKinds["20–4"] }).stages[0]!;
  // 0.32 mA are 2 % of 16 mA; 44 readings of 0.02 % noise leave less than 0.02 % at an end.
  expect(Math.abs(signalErrorAt(stage, reverse, 0).percentSpan - 2)).toBeLessThan(0.02);
});
