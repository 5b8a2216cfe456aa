import { phasesOf } from "../record/phases-of.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import { axisDomain } from "./axis-domain.ts";

/** The horizontal axis of every chart: the range and whatever was read beyond it, the same for both phases; `room` at both ends. */
export function distanceAxis(record: CalibrationRecord, room = 0.02) {
  const { rangeLower, rangeUpper, distanceUnit } = record.instrument;
  const references = phasesOf(record).flatMap(({ phase: { readings } }) => readings.map(({ reference }) => reference));
  return {
    xDomain: axisDomain([rangeLower, rangeUpper, ...references], { below: room, above: room }),
    xTitle: `reference distance, ${distanceUnit}`,
  };
}
