import type { CalibrationRecord } from "../record/record-schema.ts";
import { axisDomain } from "./axis-domain.ts";
import { phasesOf } from "./phase-rows.ts";

/** The horizontal axis of every chart: the range and whatever was read beyond it, the same for both phases. */
export function distanceAxis(record: CalibrationRecord) {
  const { rangeLower, rangeUpper, distanceUnit } = record.instrument;
  const references = phasesOf(record).flatMap(([, { readings }]) => readings.map(({ reference }) => reference));
  return {
    xDomain: axisDomain([rangeLower, rangeUpper, ...references], { below: 0.02, above: 0.02 }),
    xTitle: `reference distance, ${distanceUnit}`,
  };
}
