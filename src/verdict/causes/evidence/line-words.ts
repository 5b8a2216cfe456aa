import { inUnitOf } from "../../../analysis/stages/staged-readings.ts";
import type { Axis } from "../../../model/loop-stages.ts";
import { spanOf } from "../../../model/range.ts";
import { writePlain, writeSigned } from "../../../units/write-number.ts";
import type { CausePlace, Evidence } from "../finding.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { lineErrorAt, type StageEvidence } from "./stage-evidence.ts";

/**
 * The unit in which a quantity of a loop was read.
 *
 * @param evidence of a phase
 * @param axis which quantity
 * @returns "mm", "mA", "V", "counts", the controller's unit
 * Source: the instrument's row.
 * @example unitOf(evidence, "signal") // "mA"
 */
export function unitOf({ instrument }: Pick<CauseEvidence, "instrument">, axis: Axis): string {
  if (axis === "reference") return instrument.distanceUnit;
  if (axis === "counts") return "counts";
  return axis === "value" ? (instrument.valueUnit ?? "in the controller") : instrument.signalUnit;
}

/**
 * The numbers of a stage's line that an engineer looks at first.
 *
 * @param evidence of the phase
 * @param stage with a line
 * @returns gain, error at both ends of the range, greatest residual, zero crossing in the unit of the stage's input
 * Source: `stageLine`.
 * @example lineNumbers(evidence, stage).map(({ name }) => name)[0] // "gain"
 */
export function lineNumbers(evidence: CauseEvidence, stage: StageEvidence): Evidence[] {
  const { line } = stage;
  if (line === undefined) return [];
  const unit = unitOf(evidence, line.input);
  const zero = line.zeroCrossing;
  return [
    { name: "gain", value: line.gain, unit: "", standardUncertainty: line.gainStandardUncertainty },
    errorNumber(evidence, stage, 0),
    errorNumber(evidence, stage, 100),
    { name: "greatest residual from the line", value: line.greatestResidual.percentSpan, unit: "% of span" },
    ...(zero === undefined
      ? []
      : [{ name: "no error at", value: zero.value, unit, standardUncertainty: zero.standardUncertainty }]),
  ];
}

function errorNumber(evidence: CauseEvidence, stage: StageEvidence, end: 0 | 100): Evidence {
  const { percentSpan, standardUncertainty } = lineErrorAt(stage, end);
  const place = `${placeNumber(inUnitOf(evidence.loop, stage.input, end))} ${unitOf(evidence, stage.input)}`;
  return { name: `error at ${place}`, value: percentSpan, unit: "% of span", standardUncertainty };
}

/**
 * A place of a range as words give it: no more digits than it needs.
 *
 * @param value any finite number
 * @returns at most six significant digits
 * Source: own choice.
 * @example placeNumber(1200.0000001) // "1200"
 */
export function placeNumber(value: number): string {
  return writePlain(Number(value.toPrecision(6)));
}

/**
 * An error in percent of span and in the instrument's distance unit, as a sentence gives it.
 *
 * @param evidence of the phase
 * @param percent of span
 * @returns both, with their sign
 * Source: own choice.
 * @example errorWords(evidence, 2.16) // "+2.16 % of span (+21.6 mm)"
 */
export function errorWords(evidence: CauseEvidence, percent: number): string {
  const { loop, instrument } = evidence;
  const distance = (percent / 100) * spanOf(loop.characteristics.signal);
  const decimals = distance === 0 ? 0 : Math.min(4, Math.max(0, 2 - Math.floor(Math.log10(Math.abs(distance)))));
  return `${writeSigned(percent, 2)} % of span (${writeSigned(distance, decimals)} ${instrument.distanceUnit})`;
}

/**
 * Where a stage sits, in the words of a finding.
 *
 * @param stage of the loop
 * @returns the place; card and scaling together count as scaling, unless the cause says otherwise
 * Source: own choice.
 * @example placeOf("input card and scaling") // "scaling"
 */
export function placeOf(stage: StageEvidence["stage"]): CausePlace {
  if (stage === "input card" || stage === "wiring" || stage === "scaling") return stage;
  return stage === "input card and scaling" ? "scaling" : "sensor";
}
