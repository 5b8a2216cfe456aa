/**
 * What is planted in the switched outputs: the distance of the sensor itself at which each was taught, its differential
 * travel, and how far a trip scatters, in the loop's own unit. Where the target then stands follows from the error that is
 * planted in the loop: a sensor that indicates too much switches too early.
 */
import { plantedLoops } from "./planted-loops.mjs";
import { seededNoise } from "./seeded-noise.mjs";

export const plantedOutputs = [
  {
    tag: "ZT-201",
    output: "Q1",
    seed: 20111,
    cycles: 5,
    differential: 12,
    scatter: 0.6,
    taughtAt: { as_found: 451.2 },
  },
  {
    tag: "LT-310",
    output: "Q1",
    seed: 31012,
    cycles: 4,
    differential: 9,
    scatter: 1.2,
    taughtAt: { as_found: 421, as_left: 418 },
  },
  {
    tag: "LT-640",
    output: "Q1",
    seed: 64016,
    cycles: 3,
    differential: 0.03,
    scatter: 0.003,
    taughtAt: { as_found: 0.91 },
  },
];

/** Trips as a technician would type them: out and back in each cycle, rows of texts by column, with a decimal point. */
export const trips = plantedOutputs.flatMap((planted) => {
  const loop = plantedLoops.find(({ tag }) => tag === planted.tag);
  const noise = seededNoise(planted.seed);
  return Object.entries(planted.taughtAt).flatMap(([phase, taughtAt]) =>
    Array.from({ length: planted.cycles }, (_, index) => [
      trip({ loop, planted, phase, noise, cycle: index + 1, direction: "approach", indicated: taughtAt }),
      trip({
        loop,
        planted,
        phase,
        noise,
        cycle: index + 1,
        direction: "recede",
        indicated: taughtAt + planted.differential,
      }),
    ]).flat(),
  );
});

function trip({ loop, planted, phase, noise, cycle, direction, indicated }) {
  const distance = distanceAt(loop, phase, indicated) + planted.scatter * noise.normal();
  const { step, decimals } = loop.reference;
  return {
    calibration: loop.calibration,
    phase,
    output: planted.output,
    cycle: String(cycle),
    direction,
    reference: (Math.round(distance / step) * step).toFixed(decimals),
  };
}

/** Where the target stands when the sensor indicates so much: the inverse of x + error(x), with the error a straight line. */
export function distanceAt({ range: [lower, upper], phases }, phase, indicated) {
  const { zero, span } = phases[phase];
  return (indicated - ((upper - lower) * zero) / 100 + (lower * span) / 100) / (1 + span / 100);
}
