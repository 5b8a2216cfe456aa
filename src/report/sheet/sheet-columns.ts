import { onceForEach } from "../../record/once-for-each.ts";
import { spanOf } from "../../record/range.ts";
import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import { columnLetters } from "../../units/column-letters.ts";
import { writeFixed, writePlain } from "../../units/write-number.ts";
import type { NumberStyle } from "../style/number-style.ts";
import { fixedText, type SheetColumn, signedText, type UnletteredColumn } from "./sheet-column.ts";
import { type SheetDigits, sheetDigitsOf } from "./sheet-digits.ts";
import { indicatedFormula, type LetterOf, limitFormula } from "./sheet-formulas.ts";
import { loopColumns } from "./sheet-loop-columns.ts";

/** The columns of a phase's working sheet: what was read first, then what follows from it, each with its formula. */
export function sheetColumns(
  record: CalibrationRecord,
  phase: PhaseRecord,
  style: NumberStyle,
): readonly SheetColumn[] {
  const columns = columnsWith(record, phase, digitsOfStyle(style)(record));
  const letters = new Map(columns.map(({ key }, index) => [key, columnLetters(index)]));
  const letter = (key: string) => letters.get(key) ?? "?";
  return columns.map(({ formula, work: _, ...column }) => ({
    ...column,
    letter: letter(column.key),
    formula: formula?.(letter) ?? "",
  }));
}

/** All phases have the same, which are found once for a record. */
const digitsOfStyle = onceForEach((style: NumberStyle) =>
  onceForEach((record: CalibrationRecord) =>
    sheetDigitsOf(record, style, (phase, digits) => columnsWith(record, phase, digits)),
  ),
);

function columnsWith(record: CalibrationRecord, phase: PhaseRecord, digits: SheetDigits): readonly UnletteredColumn[] {
  return [
    ...identityColumns(record, phase),
    ...readColumns(record, phase),
    ...errorColumns(record, phase, digits),
    ...loopColumns(record, phase, digits),
    ...limitColumns(record, phase, digits),
  ];
}

function identityColumns(record: CalibrationRecord, { decimals }: PhaseRecord): readonly UnletteredColumn[] {
  return [
    {
      key: "cycle",
      title: "cycle",
      unit: "",
      isNumber: true,
      cell: ({ cycle }) => (cycle === undefined ? "" : `${cycle}`),
    },
    { key: "direction", title: "direction", unit: "", isNumber: false, cell: ({ direction }) => direction },
    {
      key: "reference",
      title: "reference",
      unit: record.instrument.distanceUnit,
      isNumber: true,
      cell: ({ reference }) => writeFixed(reference, decimals.reference),
    },
  ];
}

function readColumns({ instrument }: CalibrationRecord, phase: PhaseRecord): readonly UnletteredColumn[] {
  const quantities = [
    { key: "signal", title: "signal", unit: instrument.signalUnit },
    { key: "signalAtCard", title: "at the card", unit: instrument.signalUnit },
    { key: "counts", title: "counts", unit: "" },
    { key: "value", title: "controller", unit: instrument.valueUnit ?? "" },
  ] as const;
  return quantities
    .filter(({ key }) => phase.readings.some((reading) => reading[key] !== undefined))
    .map(({ key, title, unit }) => ({
      key,
      title,
      unit,
      isNumber: true,
      cell: (reading) => fixedText(reading[key], phase.decimals[key === "signalAtCard" ? "signal" : key]),
    }));
}

function errorColumns(record: CalibrationRecord, phase: PhaseRecord, digits: SheetDigits): readonly UnletteredColumn[] {
  const { distanceUnit } = record.instrument;
  const span = writePlain(spanOf(record.instrument));
  return [
    {
      key: "indicated",
      title: "indicated",
      unit: distanceUnit,
      isNumber: true,
      formula: (letter) => indicatedFormula(record, phase.judged, letter(phase.judged)),
      cell: ({ indicated }) => fixedText(indicated, digits.distance),
    },
    {
      key: "error",
      title: "error",
      unit: distanceUnit,
      isNumber: true,
      formula: (letter) => `${letter("indicated")} − ${letter("reference")}`,
      work: (printed) => printed("indicated") - printed("reference"),
      cell: ({ errorDistance }) => signedText(errorDistance, digits.distance),
    },
    {
      key: "percent",
      title: "error",
      unit: "% of span",
      isNumber: true,
      formula: (letter) => `100 × ${letter("error")} ÷ ${span}`,
      work: (printed) => (100 * printed("error")) / spanOf(record.instrument),
      cell: ({ errorPercentSpan }) => signedText(errorPercentSpan, digits.percent),
    },
  ];
}

function limitColumns(record: CalibrationRecord, phase: PhaseRecord, digits: SheetDigits): readonly UnletteredColumn[] {
  const { instrument } = record;
  const isSymmetric = phase.readings.every(({ toleranceLow, toleranceHigh }) => toleranceLow === -toleranceHigh);
  const hasLoop = phase.readings.some(({ loopErrorDistance }) => loopErrorDistance !== undefined);
  const plus = (letter: LetterOf) => limitFormula(record, "plus", letter);
  const minus = (letter: LetterOf) => limitFormula(record, "minus", letter);
  return [
    {
      key: "limit",
      title: "tolerance",
      unit: instrument.distanceUnit,
      isNumber: true,
      formula: (letter) => (isSymmetric ? `±(${plus(letter)})` : `−(${minus(letter)}) / +(${plus(letter)})`),
      cell: ({ toleranceLow, toleranceHigh }) =>
        isSymmetric
          ? `±${writeFixed(toleranceHigh, digits.distance)}`
          : `${writeFixed(toleranceLow, digits.distance)} / +${writeFixed(toleranceHigh, digits.distance)}`,
    },
    {
      key: "verdict",
      title: "verdict",
      unit: "",
      isNumber: false,
      formula: (letter) => {
        const errors = hasLoop ? `${letter("error")} and ${letter("loop")}` : letter("error");
        return `${errors} within ${letter("limit")}`;
      },
      cell: ({ verdict, leftOut }) => (leftOut === undefined ? (verdict ?? "") : (verdict ?? "left out")),
    },
  ];
}
