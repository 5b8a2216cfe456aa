import { randomFrom } from "../loops/random.ts";
import { simulatePhase, tolerance } from "./simulate-phase.ts";

/** Test points whose stated risk lies between two bounds, and how often their true error lay outside the tolerance. */
export type RiskBin = { from: number; to: number; points: number; stated: number; outside: number };

const bounds = [0, 0.01, 0.05, 0.2, 0.5, 0.8, 0.95, 0.99, 1] as const;
/** Far more than tolerance and U together, so that nothing says beforehand where the true error lies. */
const furthestZero = 12;
const design = { disturbance: "white noise", cycles: 3, points: 5 } as const;

/**
 * The risk that a record states for a test point, held against what is so. The zero of each sensor is drawn flat over far
 * more than the tolerance, because the risk takes nothing for known but the readings (JCGM 106:2012, 6.2 and 9.5).
 */
export function statedRisks(records: number, firstSeed: number): readonly RiskBin[] {
  const found = Array.from({ length: records }, (_, index) =>
    simulatePhase(design, randomFrom(firstSeed + index), { furthestZero }),
  ).flatMap(({ phase, trueError }) =>
    phase.points.map(({ specificRisk, reference }) => ({
      stated: specificRisk,
      isOutside: Math.abs(trueError(reference)) > tolerance,
    })),
  );
  return bounds.slice(1).map((to, place) => {
    const from = bounds[place] ?? 0;
    const inBin = found.filter(({ stated }) => stated >= from && (stated < to || to === 1));
    return {
      ...{ from, to, points: inBin.length },
      stated: inBin.reduce((sum, { stated }) => sum + stated, 0) / inBin.length,
      outside: inBin.filter(({ isOutside }) => isOutside).length / inBin.length,
    };
  });
}
