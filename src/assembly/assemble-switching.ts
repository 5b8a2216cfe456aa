import { switchedOutput } from "../analysis/switching/switched-output.ts";
import type { CalibrationRows } from "../model/calibration-case.ts";
import type { Output } from "../model/instrument.ts";
import { spanOf } from "../model/range.ts";
import { type PhaseName, tablePhase } from "../record/phase-name.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import type { SwitchedPhaseRecord } from "../record/switching-schema.ts";
import { assembleSwitchedPhase } from "./assemble-switched-phase.ts";
import { assembleWiring } from "./assemble-wiring.ts";
import { decimalMarkOf } from "./decimal-mark-of.ts";
import { typedResolution } from "./phase/typed-resolution.ts";

/**
 * The switched outputs of a loop: each with its wiring and, for each phase in which it was tripped, its figures.
 *
 * @param record with its phases and its decision rule
 * @param rows outputs and trips of the calibration
 * @returns `switching`, one entry an output in the order of the table; nothing where the tag has no output
 * Source: the parts' own files.
 * @example assembleSwitching(record, { ...rows, outputs: [] }) // {}
 */
export function assembleSwitching(
  record: CalibrationRecord,
  rows: CalibrationRows,
): Pick<CalibrationRecord, "switching"> {
  if (rows.outputs.length === 0) return {};
  return {
    switching: rows.outputs.map(({ row: output }) => ({
      output,
      wiring: assembleWiring(output, lastTrips(output, rows)),
      phases: {
        ...phaseOf("asFound", output, record, rows),
        ...phaseOf("asLeft", output, record, rows),
      },
    })),
  };
}

/** As left, where it was tripped so; of a run that chatters the first, for its others go either way. */
function lastTrips({ output }: Output, { trips }: CalibrationRows) {
  const own = trips.map(({ row }) => row).filter((trip) => trip.output === output);
  const left = own.filter(({ phase }) => phase === tablePhase.asLeft);
  const last = left.length > 0 ? left : own;
  const { isCounted } = switchedOutput(last);
  return last.filter((_, index) => isCounted[index]);
}

function phaseOf(
  name: PhaseName,
  output: Output,
  record: CalibrationRecord,
  rows: CalibrationRows,
): { [Name in PhaseName]?: SwitchedPhaseRecord } {
  const trips = rows.trips.filter(({ row }) => row.phase === tablePhase[name] && row.output === output.output);
  if (trips.length === 0) return {};
  const { instrument, calibration, standards } = record;
  const assembled = assembleSwitchedPhase(trips, {
    output,
    rule: record.decisionRule,
    basis: {
      standards,
      performedOn: calibration.performedOn,
      distanceUnit: instrument.distanceUnit,
      principle: instrument.principle,
      isTemperatureCompensated: instrument.temperatureCompensated === true,
      airTemperatureCelsius: calibration.airTemperature,
      alignmentAngleDegrees: calibration.alignmentAngle,
    },
    typed: typedResolution(trips, "reference", instrument.distanceUnit, decimalMarkOf(rows, "trips")),
    span: spanOf(instrument),
    phase: record.phases[name],
  });
  return { [name]: assembled };
}
