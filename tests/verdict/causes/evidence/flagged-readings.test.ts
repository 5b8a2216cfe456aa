import { expect, test } from "vitest";
import {
  countedTwice,
  heldStageReadings,
  stagePlateaus,
} from "../../../../src/verdict/causes/evidence/flagged-readings.ts";
import { planted } from "../planted.ts";

const ends = { stage: "sensor", input: "reference", output: "signal" } as const;

test("twice the distance at the nearest points is an echo; a shift that doubles it is none", () => {
  const doubled = planted({ seen: (part) => (part < 0.15 ? 2 * (part + 0.2) - 0.2 : part) });
  expect(countedTwice(doubled.readings, "signal", doubled.loop)).toMatchObject({ factor: 2 });
  expect(doubled.echoes?.members).toHaveLength(8);
  const shifted = planted({ seen: (part) => part + 0.2 });
  expect(countedTwice(shifted.readings, "signal", shifted.loop)).toBeUndefined();
});

test("one held reading alone is none, for it may be a slip", () => {
  const hold = (many: number) => {
    let held = 0;
    return planted({
      signal: (signal, { part, signalBefore }) => (part > 0.5 && signalBefore && held++ < many ? signalBefore : signal),
    });
  };
  const one = hold(1);
  expect(heldStageReadings(ends, one.readings, 0.25, 0)).toEqual([]);
  expect(hold(3).held).toHaveLength(3);
});

test("a limit at 70 % makes a plateau of the three points beyond it", () => {
  const { readings } = planted({ seen: (part) => Math.min(part, 0.75) });
  expect(stagePlateaus(ends, readings, 0.25, 0).map(({ end, members }) => [end, members.length])).toEqual([
    ["upper", 12],
  ]);
});
