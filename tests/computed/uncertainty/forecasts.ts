import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import { forecastOf } from "../../../src/analysis/years/drift-line.ts";
import { loopDrift } from "../../../src/analysis/years/loop-drift.ts";
import { type Random, randomFrom } from "../loops/random.ts";
import { type Share, shareOf } from "./shares.ts";
import { instrumentOf, type Simulated, simulatePhase, usualTolerance } from "./simulate-phase.ts";

/** What the years make of loops that were calibrated so often, a year apart. */
export type Forecast = {
  visits: number;
  /** The next result at one test point lies within the 95 % prediction band. */
  held: Share;
  /** The 95 % interval of the drift a year does not hold the drift that there is: at one test point, and at the leading one. */
  missed: Share;
  missedAtLeading: Share;
};

const design = { disturbance: "white noise", cycles: 3, points: 5 } as const;
const daysPerYear = 365.25;

/**
 * Loops whose zero drifts by up to 1 mm a year, and a gain that stays. Each visit has readings, zero and span errors of
 * standards of its own, as after their calibration.
 */
export function forecastsOf(visits: number, loops: number, firstSeed: number): Forecast {
  const all = Array.from({ length: loops }, (_, index) => {
    const random = randomFrom(firstSeed + index);
    const [zero, perYear, gain] = [random.between(-1, 1), random.between(-1, 1), random.between(-1e-3, 1e-3)];
    const at = (year: number) => visit(random, { zero: zero + perYear * year, gain });
    const records = Array.from({ length: visits }, (_visit, year) => ({
      ...{ day: daysPerYear * year, adjustment: "none", asLeft: null },
      asFound: at(year),
    }));
    const drift = loopDrift(records, instrumentOf(usualTolerance));
    const next = at(visits);
    const place = index % design.points;
    const lineAt = (which: number) => {
      const line = drift.points[which]?.line;
      if (line === undefined || !isDetermined(line)) throw new Error("no line of drift");
      return line;
    };
    const isMissed = (which: number) => {
      const { low, high } = lineAt(which).perYear;
      return perYear < low || perYear > high;
    };
    const band = forecastOf(lineAt(place))(daysPerYear * visits);
    const error = next.points[place]?.errorDistance ?? Number.NaN;
    if (!isDetermined(drift.leading)) throw new Error("no test point leads");
    return {
      isHeld: band.low <= error && error <= band.high,
      isMissed: isMissed(place),
      isMissedAtLeading: isMissed(drift.leading.index),
    };
  });
  return {
    visits,
    held: shareOf(all, ({ isHeld }) => isHeld),
    missed: shareOf(all, ({ isMissed }) => isMissed),
    missedAtLeading: shareOf(all, ({ isMissedAtLeading }) => isMissedAtLeading),
  };
}

function visit(random: Random, truth: { zero: number; gain: number }): Simulated["phase"] {
  return simulatePhase(design, random, { truth }).phase;
}
