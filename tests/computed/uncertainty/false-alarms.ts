import type { CurveReading } from "../../../src/analysis/figures/error-curve.ts";
import { copiedReadings } from "../../../src/analysis/plausibility/copied-readings.ts";
import { wildReadings } from "../../../src/analysis/readings/wild-readings.ts";
import { cycleSlopes } from "../../../src/analysis/uncertainty/cycle-slopes.ts";
import type { Reading } from "../../../src/model/calibration.ts";
import { randomFrom } from "../loops/random.ts";
import { doCyclesDiffer, hasOwnScatter } from "./coverage.ts";
import type { Design } from "./designs.ts";
import { type Share, shareOf } from "./shares.ts";
import { type Simulated, simulatePhase } from "./simulate-phase.ts";

/** How often a test of the program speaks where what it looks for is not there. */
export type FalseAlarm = { test: string; design: Design; nominal: number; alarms: Share };

const white = (cycles: number): Design => ({ disturbance: "white noise", cycles, points: 11 });
const coarse = (cycles: number): Design => ({ disturbance: "coarse display", cycles, points: 11 });
const growing = (cycles: number): Design => ({ disturbance: "growing noise", cycles, points: 11 });

/** Each test beside readings in which nothing of its kind is; its nominal rate as the program documents it. */
const tests: readonly {
  test: string;
  designs: readonly Design[];
  nominal: number;
  isAlarm: (one: Simulated) => boolean;
}[] = [
  {
    test: "the cycles differ",
    ...{ designs: [white(2), white(3), white(10), growing(3)], nominal: 0.05 },
    isAlarm: doCyclesDiffer,
  },
  {
    test: "the cycles have slopes of their own",
    ...{ designs: [white(2), white(3), white(10), growing(2), growing(3), growing(10)], nominal: 0.05 },
    isAlarm: ({ phase }) => cycleSlopes(readingsOf(phase))?.isShown === true,
  },
  {
    test: "the scatter differs between test points",
    ...{ designs: [white(2), white(3), white(10)], nominal: 0.05 },
    isAlarm: hasOwnScatter,
  },
  {
    test: "the scatter of one cycle grows along the range",
    ...{ designs: [white(1)], nominal: 0.05 },
    isAlarm: hasOwnScatter,
  },
  {
    test: "the readings do not lie on a straight line",
    ...{ designs: [white(2), white(3), white(10), growing(2), growing(3), growing(10)], nominal: 0.05 },
    isAlarm: ({ phase }) => phase.uncertainLine?.isStraight === false,
  },
  {
    test: "a reading is wild, however little it matters",
    ...{ designs: [white(1), white(3), growing(1), growing(2), growing(3), growing(10)], nominal: 0.00001 },
    isAlarm: ({ phase }) => hasWild(phase),
  },
  {
    test: "readings are copies of others",
    ...{ designs: [coarse(2), coarse(3), coarse(10), white(3)], nominal: 0.01 },
    isAlarm: ({ phase }) => copiedReadings(rowsOf(phase)).length > 0,
  },
];

/** Each test beside as many of its designs. */
export function falseAlarms(
  records: number,
  firstSeed: number,
  most = Number.POSITIVE_INFINITY,
): readonly FalseAlarm[] {
  return tests.flatMap(({ test, designs, nominal, isAlarm }, place) =>
    designs.slice(0, most).map((design, index): FalseAlarm => {
      const seed = firstSeed + 1_000_000 * place + 100_000 * index;
      const heard = Array.from({ length: records }, (_, record) =>
        isAlarm(simulatePhase(design, randomFrom(seed + record))),
      );
      return { test, design, nominal, alarms: shareOf(heard, (isHeard) => isHeard) };
    }),
  );
}

function readingsOf({ readings }: Simulated["phase"]): readonly CurveReading[] {
  return readings.map(({ point, reference, direction, cycle = 1, errorDistance = Number.NaN }) => {
    return { point, reference, direction, cycle, error: errorDistance / 20 };
  });
}

function rowsOf({ readings }: Simulated["phase"]): readonly Reading[] {
  return readings.map(({ point, reference, direction, cycle = 1, signal }) => {
    return { calibration: "C-1", phase: "as_found", cycle, direction, point, reference, signal };
  });
}

function hasWild(phase: Simulated["phase"]): boolean {
  const placed = readingsOf(phase).map(({ point, reference, error }, index) => {
    return { index, point, input: (reference - 200) / 20, error };
  });
  return wildReadings(placed, { mattering: 0, leastScatter: 0 }).length > 0;
}
