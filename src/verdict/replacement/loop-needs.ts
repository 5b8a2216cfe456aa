import type { Figure } from "../../analysis/figures/figure.ts";
import type { Calibration } from "../../model/calibration.ts";
import type { Instrument, Output } from "../../model/instrument.ts";

/** The error that the air makes at the far end in a sensor that does not correct for it, beside the tolerance there. */
export type AirExtreme = { temperature: number; errorAtUpper: number; toleranceAtUpper: number };

/** What a candidate is held against; distances in the instrument's unit. */
export type LoopNeeds = {
  instrument: Instrument;
  calibration: Calibration;
  outputs: readonly Output[];
  /** Coldest and hottest air, as far as the loop states them and the air in which it was taught. */
  airExtremes: readonly AirExtreme[];
  /** Expanded uncertainty of the standards alone, or why it is not known. */
  standardsUncertainty: Figure<number>;
};
