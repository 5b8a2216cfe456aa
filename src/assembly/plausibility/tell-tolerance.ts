import { outputSpanOf } from "../../analysis/readings/ideal-characteristic.ts";
import { type Loop, loopOf } from "../../analysis/readings/loop.ts";
import { toleranceAt } from "../../analysis/readings/tolerance.ts";
import type { TableRow } from "../../model/calibration-case.ts";
import { phaseInWords } from "../../model/calibration-words.ts";
import type { Instrument, Output } from "../../model/instrument.ts";
import { distanceUnits } from "../../model/instrument-words.ts";
import { spanOf } from "../../model/range.ts";
import { placeOfRow } from "../../problems/place-of-row.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { convertDifference } from "../../units/convert.ts";
import { isInside } from "../../units/is-inside.ts";
import { unitOf } from "../../units/unit-table.ts";
import { writePlain } from "../../units/write-number.ts";
import type { MeasuredPhase, MeasuredRows } from "./measured-phase.ts";

/** Percent of span: common practice for what is asked about, own choice for what is refused. */
const asked = 10;
const refused = 25;

/** Which of two codes tells a tolerance of so many percent of span; none for one that is narrow enough. */
function widthOf<Code extends string>(
  percent: number,
  isMeant: boolean | undefined,
  codes: Record<"wide" | "refused", Code>,
) {
  if (isInside(percent, { low: null, high: asked })) return undefined;
  return isMeant === true || isInside(percent, { low: null, high: refused }) ? codes.wide : codes.refused;
}

/**
 * Tells a tolerance that is wider than 10 % of span, and refuses one wider than 25 % that nobody says is meant.
 *
 * @param instrument row of the table instruments
 * @param problems list that it goes to
 * Source: common practice (a tolerance is a small part of the span); the limits are own choice.
 * @example toldBy((_, problems) => tellTolerance(spoiledRows.instrument, problems)) // []
 */
export function tellTolerance(instrument: TableRow<Instrument>, problems: ProblemList): void {
  const { row, cells } = instrument;
  const loop = loopOf(row);
  const { rangeLower, rangeUpper } = row;
  const span = spanOf(row);
  const [widest] = [rangeLower, rangeUpper]
    .map((reference) => ({ reference, ...limitsAt(loop, reference) }))
    .toSorted((one, other) => sideOf(other) - sideOf(one));
  if (widest === undefined || !(span > 0)) return;
  const percent = (100 * sideOf(widest)) / span;
  const code = widthOf(percent, row.toleranceIsWide, {
    wide: "plausible/tolerance-wide",
    refused: "plausible/tolerance-refused",
  });
  if (code === undefined) return;
  const values = {
    percent: rounded(percent, 3),
    limits: limitWords(widest),
    unit: row.distanceUnit,
    reference: writePlain(widest.reference),
  };
  const column = "tolerance";
  problems.add(code, placeOfRow(instrument, column), { read: cells[column], values, belongsTo: { tag: row.tag } });
}

/**
 * The same of the tolerance of a switched output's set point.
 *
 * @param output row of the table outputs
 * @param instrument row of the table instruments that it belongs to
 * @param problems list that it goes to
 * Source: as `tellTolerance`.
 * @example toldBy((_, problems) => tellOutputTolerance(spoiledRows.outputs[0], spoiledRows.instrument, problems)) // []
 */
export function tellOutputTolerance(
  output: TableRow<Output>,
  { row: instrument }: TableRow<Instrument>,
  problems: ProblemList,
): void {
  const { setPointTolerance: tolerance, output: name, tag } = output.row;
  const span = spanOf(instrument);
  if (tolerance === undefined || !(span > 0)) return;
  const percent = (100 * tolerance) / span;
  const code = widthOf(percent, instrument.toleranceIsWide, {
    wide: "plausible/output-tolerance-wide",
    refused: "plausible/output-tolerance-refused",
  });
  if (code === undefined) return;
  const values = {
    ...{ output: name, percent: rounded(percent, 3), limits: `±${rounded(tolerance, 4)}` },
    unit: instrument.distanceUnit,
  };
  const column = "set_point_tolerance";
  problems.add(code, placeOfRow(output, column), { read: output.cells[column], values, belongsTo: { tag } });
}

/**
 * Tells a tolerance that allows nothing, and one that is finer than one step of what reads it: of the outputs as they were
 * written, or of a standard. References are often noted as the round distance that was set, so that their digits say nothing.
 *
 * @param phase on one scale
 * @param rows of the calibration, for its standards
 * Source: own choice.
 * @example toldBy((tell) => tellResolution({ ...spoiledPhase, tell }, spoiledRows)) // []
 */
export function tellResolution(phase: MeasuredPhase, { standards }: Pick<MeasuredRows, "standards">): void {
  const { instrument, loop, rows, steps, tell } = phase;
  const [first] = rows;
  const least = leastTolerance(phase);
  const none = rows.find(({ row: { reference } }) => !(sideOf(limitsAt(loop, reference)) > 0));
  if (none !== undefined) {
    const at = { reference: writePlain(none.row.reference), unit: instrument.distanceUnit };
    tell(none, "plausible/tolerance-none", { values: { phase: phaseInWords[phase.phase], ...at } });
  }
  if (first === undefined || least === undefined) return;
  const span = spanOf(loop.characteristics.signal);
  const isRead = (column: "signal" | "counts" | "value") => rows.some(({ row }) => row[column] !== undefined);
  const columns = (["signal", "counts", "value"] as const)
    .filter(isRead)
    .map((column) => ({ what: column as string, step: ((steps[column] ?? 0) * span) / 100 }));
  const ofStandards = standards.flatMap(({ row }) => {
    const step = stepOfStandard(row.resolution, row.uncertaintyUnit, instrument);
    return step === undefined ? [] : [{ what: row.standard, step }];
  });
  const [coarsest] = [...columns, ...ofStandards].toSorted((one, other) => other.step - one.step);
  if (coarsest === undefined || isInside(coarsest.step, { low: null, high: least.tolerance })) return;
  const values = {
    phase: phaseInWords[phase.phase],
    tolerance: rounded(least.tolerance, 4),
    reference: writePlain(least.reference),
    unit: instrument.distanceUnit,
    what: coarsest.what,
    step: rounded(coarsest.step, 4),
  };
  tell(first, "plausible/tolerance-fine", { values });
}

/** Where nothing is allowed, at a distance of 0 by percent of reading, no step is fine enough. */
function leastTolerance({ rows, loop }: MeasuredPhase): { reference: number; tolerance: number } | undefined {
  const allowed = rows.map(({ row: { reference } }) => {
    const { low, high } = limitsAt(loop, reference);
    return { reference, tolerance: Math.min(-low, high) };
  });
  return allowed.filter(({ tolerance }) => tolerance > 0).toSorted((one, other) => one.tolerance - other.tolerance)[0];
}

function stepOfStandard(
  resolution: number | undefined,
  unitWord: string | undefined,
  instrument: Instrument,
): number | undefined {
  const { distanceUnit, signalUnit } = instrument;
  const unit = unitOf(unitWord ?? "");
  if (resolution === undefined || unit === undefined) return undefined;
  if (distanceUnits.some((one) => one === unit)) return convertDifference(resolution, unit, distanceUnit);
  const isCurrent = signalUnit === "mA" && ["mA", "A", "µA"].includes(unit);
  const isVoltage = signalUnit === "V" && ["V", "mV"].includes(unit);
  if (!isCurrent && !isVoltage) return undefined;
  const { signal } = loopOf(instrument).characteristics;
  const distancePerSignal = spanOf(signal) / Math.abs(outputSpanOf(signal));
  return convertDifference(resolution, unit, signalUnit) * distancePerSignal;
}

type Limits = { low: number; high: number };

function limitsAt({ toleranceTerms, characteristics: { signal } }: Loop, reference: number): Limits {
  return toleranceAt(toleranceTerms, signal, reference);
}

function sideOf({ low, high }: Limits): number {
  return Math.max(-low, high);
}

function limitWords({ low, high }: Limits): string {
  return -low === high ? `±${rounded(high, 4)}` : `−${rounded(-low, 4)} / +${rounded(high, 4)}`;
}

function rounded(value: number, digits: number): string {
  return writePlain(Number(value.toPrecision(digits)));
}
