import { randomFrom } from "../loops/random.ts";
import { meanOf, type Share, shareOf } from "./shares.ts";
import { type Given, simulatePhase, usualTolerance } from "./simulate-phase.ts";

/** Test points whose stated risk lies between two bounds, and how often their true error lay outside the tolerance. */
export type RiskBin = { from: number; to: number; stated: number; outside: Share };

const bounds = [0, 0.01, 0.05, 0.2, 0.5, 0.8, 0.95, 0.99, 1] as const;
/** Far more than tolerance and U together, so that nothing says beforehand where the true error lies. */
const furthestZero = 12;
const design = { disturbance: "white noise", cycles: 5, points: 5 } as const;

/**
 * The risk that a record states for a test point, held against what is so. The zero of each sensor is drawn flat over far
 * more than the tolerance, because the risk takes nothing for known but the readings (JCGM 106:2012, 6.2 and 9.5). Of each
 * record one test point counts, a different one each time, so that they are independent of each other.
 */
export function statedRisks(
  directions: NonNullable<Given["directions"]>,
  records: number,
  firstSeed: number,
): readonly RiskBin[] {
  const found = risksAndTruths(directions, records, firstSeed);
  return bounds.slice(1).flatMap((to, place) => {
    const from = bounds[place] ?? 0;
    const inBin = found.filter(({ stated }) => stated >= from && (stated < to || to === 1));
    if (inBin.length === 0) return [];
    const stated = meanOf(inBin.map((one) => one.stated));
    return [{ from, to, stated, outside: shareOf(inBin, ({ isOutside }) => isOutside) }];
  });
}

/** The stated risk of one test point of each record, and whether its true error is outside the tolerance. */
export function risksAndTruths(directions: NonNullable<Given["directions"]>, records: number, firstSeed: number) {
  return Array.from({ length: records }, (_, index) => {
    const { phase, trueError } = simulatePhase(design, randomFrom(firstSeed + index), { furthestZero, directions });
    const point = phase.points[index % design.points];
    if (point === undefined) throw new Error("a test point is missing");
    return { stated: point.specificRisk, isOutside: Math.abs(trueError(point.reference)) > usualTolerance };
  });
}
