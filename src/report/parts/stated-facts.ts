import { signingState } from "../../proof/signing-state.ts";
import type { CalibrationRecord, SealedRecord } from "../../record/record-schema.ts";
import { writePlain } from "../../units/write-number.ts";
import { toleranceFact } from "../texts/page-texts.ts";
import { dayOf } from "../texts/signing-texts.ts";

/** Names and what the workbook states of them; what it leaves empty is undefined and printed as 'not stated'. */
export type Facts = readonly (readonly [string, string | undefined])[];

export function itemFacts({ instrument, calibration }: CalibrationRecord): Facts {
  const { distanceUnit, signalUnit, valueUnit } = instrument;
  return [
    ["Tag", instrument.tag],
    ["Principle", instrument.principle],
    ["Serial number", instrument.serial],
    ["Range", range(instrument.rangeLower, instrument.rangeUpper, distanceUnit)],
    ["Signal", range(instrument.signalLower, instrument.signalUpper, signalUnit)],
    ["Counts", range(instrument.countsLower, instrument.countsUpper, "counts")],
    ["Controller value", range(instrument.valueLower, instrument.valueUpper, valueUnit ?? "")],
    ["Condition as received", calibration.conditionReceived],
    ["Depends on the loop", instrument.criticality],
  ];
}

/** Who did what, where and why. */
export function workFacts(record: SealedRecord): Facts {
  const { calibration } = record;
  return [
    ["Laboratory", calibration.laboratory],
    ["Address", calibration.laboratoryAddress],
    ["Owner", calibration.owner],
    ["Place of the work", calibration.place],
    ["Reason", calibration.reason],
    ["Procedure", calibration.procedure],
    ["Deviations from it", calibration.deviations],
    ["Work order", calibration.workOrder],
    ["Received on", calibration.receivedOn],
    ["Performed on", calibration.performedOn],
    ["Issued on", issuedOn(record)],
    ["Bypass permit", calibration.bypassPermit],
    ["Returned to service", calibration.returnedToService],
    ["Remarks", calibration.remarks],
  ];
}

/** The day of the last needed signature; of a record that is not issued, what the tables say. */
function issuedOn(record: SealedRecord): string | undefined {
  const { issuedAt } = signingState(record);
  return issuedAt === undefined ? record.calibration.issuedOn : dayOf(issuedAt);
}

/** Air and target. */
export function conditionFacts({ calibration, instrument }: CalibrationRecord): Facts {
  const { targetWidth, targetHeight } = calibration;
  const size =
    targetWidth === undefined || targetHeight === undefined
      ? undefined
      : `${writePlain(targetWidth)} × ${writePlain(targetHeight)} ${instrument.distanceUnit}`;
  return [
    ["Air temperature", withUnit(calibration.airTemperature, "°C")],
    ["Relative humidity", withUnit(calibration.relativeHumidity, "%")],
    ["Air pressure", withUnit(calibration.pressure, "hPa")],
    ["Medium", calibration.medium ?? instrument.medium],
    ["Target", calibration.targetMaterial],
    ["Target size", size],
    ["Target tilt", withUnit(calibration.targetTilt, "°")],
    ["Reference alignment", withUnit(calibration.alignmentAngle, "° at most")],
    ["Target surface", calibration.targetSurface],
  ];
}

/** Tolerance and decision rule. */
export function decisionFacts(record: CalibrationRecord): Facts {
  const { instrument } = record;
  return [
    ["Tolerance", toleranceFact(record)],
    ["Where it comes from", instrument.toleranceSource],
    ["Who set it", instrument.toleranceSetBy],
    ["Decision rule", `${record.decisionRule.name} (ILAC-G8:09/2019)`],
    ["Prescribed by", record.decisionRule.prescribedBy],
    ["Agreed on", record.decisionRule.agreedOn],
    ["Statement covers", "every test point and reading listed; overall the worst of them"],
  ];
}

/** Printed on the certificate itself, in these words or others. */
const onCertificate: ReadonlySet<string> = new Set([
  ...["Tag", "Serial number", "Range", "Signal", "Laboratory", "Performed on", "Air temperature", "Relative humidity"],
  ...["Air pressure", "Target", "Tolerance", "Decision rule", "Statement covers"],
]);

/** The names of what was stated and stands in the annex only. */
export function statedElsewhere(record: SealedRecord): readonly string[] {
  return [itemFacts, workFacts, conditionFacts, decisionFacts]
    .flatMap((facts) => facts(record))
    .flatMap(([name, value]) => (value === undefined || onCertificate.has(name) ? [] : [name]));
}

function range(lower: number | undefined, upper: number | undefined, unit: string): string | undefined {
  if (lower === undefined || upper === undefined) return undefined;
  return `${writePlain(lower)} to ${writePlain(upper)} ${unit}`.trim();
}

/** A number with its unit, where it is stated. */
export function withUnit(value: number | undefined, unit: string | undefined): string | undefined {
  return value === undefined ? undefined : `${writePlain(value)} ${unit ?? ""}`.trim();
}
