import type { PooledStandardDeviation } from "../../numeric/pooled-standard-deviation.ts";

/** What the line of drift of one test point leaves of each record; one in each series for the same records. */
export type DriftResiduals = { distance: number; residuals: readonly number[] };

/**
 * How far single results scatter about the lines of drift, at each test point, from all test points together.
 *
 * A visit has its own way of being off: it shifts all its points alike, it tilts them alike, and each point has a rest of
 * its own. So J points are no J sources of knowledge, and the residuals are taken apart into a shift (their mean), a tilt
 * (their slope on the distance) and the rest, with mean squares A, B and C of m = n − 2, m and m·(J − 2) degrees of
 * freedom. With h = (d − mean of d)²/Σ(d − mean of d)² at a point,
 * s² = A/J + h·B + (1 − 1/J − h)·C, ν = s⁴/((A/J)²/m + (h·B)²/m + ((1 − 1/J − h)·C)²/(m·(J − 2))):
 * near J·m where each point goes its own way, m where a visit moves all of them alike.
 *
 * @param series for each test point its distance and n >= 3 residuals of a straight line in time, record by record; one
 *   series or more, all of the same records
 * @returns for each series, in its order, the standard deviation of a single result (unit of the residuals, >= 0) and its
 *   effective degrees of freedom, m at least where nothing scatters
 * Faults: `RangeError` for fewer than three residuals or series of different lengths.
 * Source: JCGM 100:2008, H.5 (analysis of variance) and G.4.1 (Satterthwaite); F. E. Satterthwaite, Biometrics Bulletin 2
 *   (1946) 110; that a visit shifts and tilts is own choice: so do zero and span of whatever all its points share.
 * @example pooledScatter([{ distance: 0, residuals: [0.1, -0.2, 0.1] }, { distance: 10, residuals: [0.1, -0.2, 0.1] }])[0]
 *   // standardDeviation 0.2449, degreesOfFreedom 1
 */
export function pooledScatter(series: readonly DriftResiduals[]): readonly PooledStandardDeviation[] {
  const [{ residuals: first } = { residuals: [] }] = series;
  if (first.length < 3) throw new RangeError(`a line through ${first.length} records leaves no scatter`);
  if (series.some(({ residuals }) => residuals.length !== first.length)) {
    throw new RangeError("the series are not of the same records");
  }
  const ofLine = first.length - 2;
  const tilts = tiltsOf(series.map(({ distance }) => distance));
  const squares = meanSquares(series, tilts, ofLine);
  return tilts.map((tilt) => scatterAt(tilt ** 2, squares, { points: series.length, ofLine }));
}

/** Distances about their mean, of length 1 together; zeros where all are equal. */
function tiltsOf(distances: readonly number[]): readonly number[] {
  const mean = distances.reduce((sum, distance) => sum + distance, 0) / distances.length;
  const length = Math.hypot(...distances.map((distance) => distance - mean));
  return distances.map((distance) => (length === 0 ? 0 : (distance - mean) / length));
}

type MeanSquares = { shift: number; tilt: number; rest: number };

function meanSquares(series: readonly DriftResiduals[], tilts: readonly number[], ofLine: number): MeanSquares {
  const records = series[0]?.residuals.map((_, record) => series.map(({ residuals }) => residuals[record] as number));
  let [shift, tilt, all] = [0, 0, 0];
  for (const ofRecord of records ?? []) {
    shift += ofRecord.reduce((sum, residual) => sum + residual, 0) ** 2 / series.length;
    tilt += ofRecord.reduce((sum, residual, point) => sum + residual * (tilts[point] as number), 0) ** 2;
    all += ofRecord.reduce((sum, residual) => sum + residual ** 2, 0);
  }
  const ofRest = ofLine * (series.length - 2);
  return {
    shift: shift / ofLine,
    tilt: tilt / ofLine,
    // What is left of a difference of sums may be a rounding below zero.
    rest: ofRest > 0 ? Math.max(0, all - shift - tilt) / ofRest : 0,
  };
}

function scatterAt(
  leverage: number,
  { shift, tilt, rest }: MeanSquares,
  { points, ofLine }: { points: number; ofLine: number },
): PooledStandardDeviation {
  const parts = [shift / points, leverage * tilt];
  const ofRest = Math.max(0, 1 - 1 / points - leverage) * rest;
  const variance = parts.reduce((sum, part) => sum + part, ofRest);
  if (variance === 0) return { standardDeviation: 0, degreesOfFreedom: ofLine };
  const spread = parts.reduce(
    (sum, part) => sum + part ** 2 / ofLine,
    ofRest === 0 ? 0 : ofRest ** 2 / (ofLine * (points - 2)),
  );
  return { standardDeviation: Math.sqrt(variance), degreesOfFreedom: variance ** 2 / spread };
}
