import { spanOf } from "../../record/range.ts";
import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import { writePlain } from "../../units/write-number.ts";

/** The letter of a column by its key. */
export type LetterOf = (key: string) => string;

/** "200 + (D − 4) × 1800 ÷ 16": the distance that an output stands for, in the letters of the sheet. */
export function indicatedFormula(record: CalibrationRecord, stage: PhaseRecord["judged"], letter: string): string {
  const { rangeLower } = record.instrument;
  const [lower, upper] = stageEnds(record, stage);
  const shifted = lower === 0 ? letter : `(${letter} ${lower < 0 ? "+" : "−"} ${writePlain(Math.abs(lower))})`;
  const start = rangeLower === 0 ? "" : `${writePlain(rangeLower)} + `;
  return `${start}${shifted} × ${writePlain(spanOf(record.instrument))} ÷ ${bracketed(upper - lower)}`;
}

/** The tolerance at a reading, upwards or downwards, in the letters of the sheet. */
export function limitFormula(record: CalibrationRecord, side: "plus" | "minus", letter: LetterOf): string {
  const { instrument } = record;
  const { tolerance, toleranceMinus, secondTolerance, secondToleranceMinus } = instrument;
  const terms = [
    { basis: instrument.toleranceBasis, amount: sideOf(tolerance, toleranceMinus) },
    { basis: instrument.secondToleranceBasis, amount: sideOf(secondTolerance, secondToleranceMinus) },
  ];
  return terms
    .flatMap(({ basis, amount }) => (basis && amount ? [termFormula(record, basis, writePlain(amount), letter)] : []))
    .join(" + ");

  function sideOf(plus: number | undefined, minus: number | undefined): number | undefined {
    return side === "plus" ? plus : (minus ?? plus);
  }
}

function termFormula(
  record: CalibrationRecord,
  basis: CalibrationRecord["instrument"]["toleranceBasis"],
  amount: string,
  letter: LetterOf,
): string {
  const { signalLower, signalUpper } = record.instrument;
  const span = writePlain(spanOf(record.instrument));
  switch (basis) {
    case "percent of span":
      return `${amount} % × ${span}`;
    case "percent of reading":
      return `${amount} % × ${letter("reference")}`;
    case "distance":
      return amount;
    case "signal":
      return `${amount} × ${span} ÷ ${writePlain(Math.abs(signalUpper - signalLower))}`;
  }
}

function stageEnds({ instrument }: CalibrationRecord, stage: PhaseRecord["judged"]): [number, number] {
  if (stage === "signal") return [instrument.signalLower, instrument.signalUpper];
  if (stage === "counts") return [instrument.countsLower ?? 0, instrument.countsUpper ?? 0];
  return [instrument.valueLower ?? 0, instrument.valueUpper ?? 0];
}

function bracketed(value: number): string {
  return value < 0 ? `(${writePlain(value)})` : writePlain(value);
}
