/** Percent of span. */
type PlantedErrors = { zero: number; span: number; hysteresis: number };

type Visit = {
  calibration: string;
  on: string;
  found: PlantedErrors;
  /** Day from which the loop has drifted. */
  since?: string;
  left?: PlantedErrors;
};

export const historyLoops: readonly {
  tag: string;
  range: readonly [lower: number, upper: number];
  points: readonly number[];
  reference: { step: number };
  cycles: number;
  noise: number;
  wander: number;
  drift: number;
  visits: readonly Visit[];
}[];
