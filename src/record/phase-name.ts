import type { Phase } from "../model/calibration.ts";
import type { CalibrationRecord } from "./record-schema.ts";

/** A phase as a record names it. */
export type PhaseName = keyof CalibrationRecord["phases"];

/** The same phase as the tables name it. */
export const tablePhase: Readonly<Record<PhaseName, Phase>> = Object.freeze({
  asFound: "as_found",
  asLeft: "as_left",
});
