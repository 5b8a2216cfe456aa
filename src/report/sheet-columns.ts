import type { CalibrationRecord, PhaseRecord, ReadingRecord } from "../record/record-schema.ts";
import { writeFixed, writeSigned } from "../units/write-number.ts";
import { type NumberStyle, plainNumber } from "./number-style.ts";

/** One lettered column of the working sheet. */
export type SheetColumn = {
  letter: string;
  title: string;
  unit: string;
  /** How the column follows from other columns, by their letters; empty for what was read. */
  formula: string;
  isNumber: boolean;
  cell: (reading: ReadingRecord) => string;
};

type UnletteredColumn = Omit<SheetColumn, "letter" | "formula"> & {
  key: string;
  formula?: (letter: (key: string) => string) => string;
};

/** The columns of a phase's working sheet: what was read first, then what follows from it, each with its formula. */
export function sheetColumns(record: CalibrationRecord, phase: PhaseRecord, style: NumberStyle): readonly SheetColumn[] {
  const columns = [
    ...identityColumns(record, phase),
    ...readColumns(record, phase),
    ...errorColumns(record, phase, style),
    ...loopColumns(record, phase, style),
    ...limitColumns(record, phase, style),
  ];
  const letters = new Map(columns.map(({ key }, index) => [key, String.fromCharCode(65 + index)]));
  const letter = (key: string) => letters.get(key) ?? "?";
  return columns.map(({ key, formula, ...column }) => ({
    ...column,
    letter: letter(key),
    formula: formula?.(letter) ?? "",
  }));
}

function identityColumns(record: CalibrationRecord, { decimals }: PhaseRecord): readonly UnletteredColumn[] {
  return [
    { key: "cycle", title: "cycle", unit: "", isNumber: true, cell: ({ cycle }) => (cycle === undefined ? "" : `${cycle}`) },
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
      cell: (reading) => fixed(reading[key], phase.decimals[key]),
    }));
}

function errorColumns(record: CalibrationRecord, phase: PhaseRecord, style: NumberStyle): readonly UnletteredColumn[] {
  const { distanceUnit } = record.instrument;
  const span = plainNumber(spanOf(record));
  return [
    {
      key: "indicated",
      title: "indicated",
      unit: distanceUnit,
      isNumber: true,
      formula: (letter) => indicatedFormula(record, phase.judged, letter(phase.judged)),
      cell: ({ indicated }) => fixed(indicated, style.distance),
    },
    {
      key: "error",
      title: "error",
      unit: distanceUnit,
      isNumber: true,
      formula: (letter) => `${letter("indicated")} − ${letter("reference")}`,
      cell: ({ errorDistance }) => signed(errorDistance, style.distance),
    },
    {
      key: "percent",
      title: "error",
      unit: "% of span",
      isNumber: true,
      formula: (letter) => `100 × ${letter("error")} ÷ ${span}`,
      cell: ({ errorPercentSpan }) => signed(errorPercentSpan, style.percent),
    },
  ];
}

const shareColumns = [
  { key: "inputCard", title: "input card share", minuend: "counts", subtrahend: "indicated" },
  { key: "scaling", title: "scaling share", minuend: "value", subtrahend: "counts" },
  { key: "inputCardAndScaling", title: "card and scaling share", minuend: "value", subtrahend: "indicated" },
] as const;

/** The controller's error and how much of it each stage adds; only where controller values or counts were judged too. */
function loopColumns(record: CalibrationRecord, phase: PhaseRecord, style: NumberStyle): readonly UnletteredColumn[] {
  const { distanceUnit } = record.instrument;
  const shares = shareColumns
    .filter(({ key }) => phase.readings.some((reading) => reading.shares?.[key] !== undefined))
    .map(
      ({ key, title, minuend, subtrahend }): UnletteredColumn => ({
        key,
        title,
        unit: distanceUnit,
        isNumber: true,
        formula: (letter) =>
          `[${indicatedFormula(record, minuend, letter(minuend))}] − ${
            subtrahend === "indicated"
              ? letter("indicated")
              : `[${indicatedFormula(record, subtrahend, letter(subtrahend))}]`
          }`,
        cell: ({ shares: found }) => signed(found?.[key], style.distance),
      }),
    );
  if (!phase.readings.some(({ loopErrorDistance }) => loopErrorDistance !== undefined)) return shares;
  const sum = (letter: (key: string) => string) =>
    ["error", ...shareColumns.map(({ key }) => key)].filter((key) => letter(key) !== "?").map(letter).join(" + ");
  return [
    ...shares,
    {
      key: "loop",
      title: "loop error",
      unit: distanceUnit,
      isNumber: true,
      formula: (letter) =>
        shares.length > 0 ? sum(letter) : `[${indicatedFormula(record, "value", letter("value"))}] − ${letter("reference")}`,
      cell: ({ loopErrorDistance }) => signed(loopErrorDistance, style.distance),
    },
  ];
}

function limitColumns(record: CalibrationRecord, phase: PhaseRecord, style: NumberStyle): readonly UnletteredColumn[] {
  const { instrument } = record;
  const isSymmetric = phase.readings.every(({ toleranceLow, toleranceHigh }) => toleranceLow === -toleranceHigh);
  const hasLoop = phase.readings.some(({ loopErrorDistance }) => loopErrorDistance !== undefined);
  const plus = limitFormula(record, "plus");
  const minus = limitFormula(record, "minus");
  return [
    {
      key: "limit",
      title: "tolerance",
      unit: instrument.distanceUnit,
      isNumber: true,
      formula: (letter) => (isSymmetric ? `±(${plus(letter)})` : `−(${minus(letter)}) / +(${plus(letter)})`),
      cell: ({ toleranceLow, toleranceHigh }) =>
        isSymmetric
          ? `±${writeFixed(toleranceHigh, style.distance)}`
          : `${writeFixed(toleranceLow, style.distance)} / +${writeFixed(toleranceHigh, style.distance)}`,
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

/** "200 + (F − 4) × 1800 ÷ 16": the distance that an output stands for, in the letters of the sheet. */
function indicatedFormula(record: CalibrationRecord, stage: PhaseRecord["judged"], letter: string): string {
  const { instrument } = record;
  const [lower, upper] =
    stage === "signal"
      ? [instrument.signalLower, instrument.signalUpper]
      : stage === "counts"
        ? [instrument.countsLower ?? 0, instrument.countsUpper ?? 0]
        : [instrument.valueLower ?? 0, instrument.valueUpper ?? 0];
  const shifted = lower === 0 ? letter : `(${letter} ${lower < 0 ? "+" : "−"} ${plainNumber(Math.abs(lower))})`;
  const start = instrument.rangeLower === 0 ? "" : `${plainNumber(instrument.rangeLower)} + `;
  return `${start}${shifted} × ${plainNumber(spanOf(record))} ÷ ${bracketed(upper - lower)}`;
}

function bracketed(value: number): string {
  return value < 0 ? `(${plainNumber(value)})` : plainNumber(value);
}

function limitFormula({ instrument }: CalibrationRecord, side: "plus" | "minus") {
  const span = instrument.rangeUpper - instrument.rangeLower;
  const terms = [
    { basis: instrument.toleranceBasis, plus: instrument.tolerance, minus: instrument.toleranceMinus },
    { basis: instrument.secondToleranceBasis, plus: instrument.secondTolerance, minus: instrument.secondToleranceMinus },
  ];
  return (letter: (key: string) => string): string =>
    terms
      .flatMap(({ basis, plus, minus }) => {
        if (basis === undefined || plus === undefined) return [];
        const amount = plainNumber(side === "plus" ? plus : (minus ?? plus));
        switch (basis) {
          case "percent of span":
            return [`${amount} % × ${plainNumber(span)}`];
          case "percent of reading":
            return [`${amount} % × ${letter("reference")}`];
          case "distance":
            return [amount];
          case "signal":
            return [`${amount} × ${plainNumber(span)} ÷ ${plainNumber(Math.abs(instrument.signalUpper - instrument.signalLower))}`];
        }
      })
      .join(" + ");
}

function spanOf({ instrument }: CalibrationRecord): number {
  return instrument.rangeUpper - instrument.rangeLower;
}

function fixed(value: number | undefined, decimals: number): string {
  return value === undefined ? "" : writeFixed(value, decimals);
}

function signed(value: number | undefined, decimals: number): string {
  return value === undefined ? "" : writeSigned(value, decimals);
}
