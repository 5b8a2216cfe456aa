import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import type { Grid } from "./grid.ts";

/** Where the numbers stand that say what the loop is meant to do; each is a cell's address. */
export type LoopCells = {
  lower: string;
  upper: string;
  span: string;
  /** What storing a decimal number may change of a distance. */
  rounding: string;
  ends: (stage: PhaseRecord["judged"]) => { lower: string; upper: string };
  /** Tolerance at a reference distance, on one side, above zero. */
  tolerance: (side: "plus" | "minus", reference: string) => string;
};

/** Writes what the loop is meant to do on top of a sheet: labels in A, numbers in C, units in D. */
export function loopCells(grid: Grid, { instrument }: CalibrationRecord): LoopCells {
  const { distanceUnit, signalUnit, valueUnit = "" } = instrument;
  const put = (label: string, cell: number | { formula: string }, unit: string) =>
    grid.at("C", grid.add([label, null, cell, unit]));
  const lower = put("range lower", instrument.rangeLower, distanceUnit);
  const upper = put("range upper", instrument.rangeUpper, distanceUnit);
  const span = put("span", { formula: `${upper}-${lower}` }, distanceUnit);
  const rounding = put(
    "allowed for rounding",
    { formula: `1E-12*MAX(ABS(${lower}),ABS(${upper}))` },
    `${distanceUnit}, 10⁻¹² of the greatest distance: on a limit is inside`,
  );
  const units = { signal: signalUnit, counts: "counts", value: valueUnit } as const;
  const ends = new Map(
    (["signal", "counts", "value"] as const).flatMap((stage) => {
      const [from, to] = [instrument[`${stage}Lower`], instrument[`${stage}Upper`]];
      if (from === undefined || to === undefined) return [];
      const unit = units[stage];
      return [[stage, { lower: put(`${stage} lower`, from, unit), upper: put(`${stage} upper`, to, unit) }]];
    }),
  );
  const signal = ends.get("signal");
  const outputSpan = signal && `ABS(${signal.upper}-${signal.lower})`;
  const termAt = toleranceTerms(instrument, put, `${span}/${outputSpan}`, span);
  return {
    ...{ lower, upper, span, rounding },
    ends: (stage) => ends.get(stage) ?? { lower, upper },
    tolerance: termAt,
  };
}

type Put = (label: string, cell: number, unit: string) => string;
type Instrument = CalibrationRecord["instrument"];

/** The one or two terms of the tolerance, joined as the instrument says. */
function toleranceTerms(
  instrument: Instrument,
  put: Put,
  distancePerSignal: string,
  span: string,
): LoopCells["tolerance"] {
  const { tolerance, toleranceMinus, toleranceBasis, toleranceCombined = "sum" } = instrument;
  const { secondTolerance, secondToleranceMinus, secondToleranceBasis } = instrument;
  const first = termCells("tolerance", tolerance, toleranceMinus, toleranceBasis);
  const second = termCells("second tolerance", secondTolerance, secondToleranceMinus, secondToleranceBasis);
  return (side, reference) => {
    const [one, other] = [first, second].map((cells) => cells && term(cells, side, reference));
    if (other === undefined) return one ?? "0";
    const join = { sum: "SUM", greater: "MAX", less: "MIN" }[toleranceCombined];
    return `${join}(${one},${other})`;
  };

  function termCells(label: string, plus?: number, minus = plus, basis?: Instrument["toleranceBasis"]) {
    if (plus === undefined || minus === undefined || basis === undefined) return undefined;
    const unit = { distance: instrument.distanceUnit, signal: instrument.signalUnit }[basis as "distance"] ?? basis;
    return { basis, plus: put(`${label}, upwards`, plus, unit), minus: put(`${label}, downwards`, minus, unit) };
  }

  function term(cells: { basis: string; plus: string; minus: string }, side: "plus" | "minus", reference: string) {
    const amount = cells[side];
    if (cells.basis === "percent of span") return `${amount}*${span}/100`;
    if (cells.basis === "percent of reading") return `${amount}*ABS(${reference})/100`;
    return cells.basis === "signal" ? `${amount}*${distancePerSignal}` : amount;
  }
}
