import { endError } from "../record/loop-end.ts";
import type { CalibrationRecord, PhaseRecord, ReadingRecord } from "../record/record-schema.ts";
import { type Cell, liveWhere } from "./cell.ts";
import type { LoopCells } from "./loop-cells.ts";

/** A column of the sheet of readings; `how` says in words how it follows. */
export type ReadingColumn = { key: string; title: string; unit: string; how: string };

/** Columns behind those of the page. */
export function furtherColumns({ instrument }: CalibrationRecord, phase: PhaseRecord): readonly ReadingColumn[] {
  const { distanceUnit, signalUnit, valueUnit = "" } = instrument;
  const outputUnit = { signal: signalUnit, counts: "counts", value: valueUnit }[phase.judged];
  const hasValues = phase.readings.some(({ loopErrorValue }) => loopErrorValue !== undefined);
  return [
    { key: "low", title: "lower limit", unit: distanceUnit, how: "as the tolerance, downwards" },
    { key: "end", title: "error at the end", unit: distanceUnit, how: "of the last stage that was read" },
    { key: "endPercent", title: "error at the end", unit: "% of span", how: "" },
    { key: "part", title: "part of tolerance", unit: "", how: "error at the end ÷ limit on its side" },
    { key: "output", title: "error of the output", unit: outputUnit, how: "output − what it is meant to be" },
    ...(hasValues
      ? [{ key: "loopValue", title: "loop error", unit: valueUnit, how: "value − what it is meant to be" }]
      : []),
    { key: "number", title: "test point", unit: "its number", how: "value" },
    { key: "used", title: "in the figures", unit: "1 yes, 0 no", how: "value: the program's tests decide" },
    { key: "atEnd", title: "in those of the end", unit: "1 yes, 0 no", how: "value" },
    { key: "line", title: "line", unit: "of the table", how: "value" },
    { key: "why", title: "left out because", unit: "", how: "value" },
    { key: "remark", title: "remark", unit: "", how: "as typed" },
  ];
}

/** The error of a reading at the end of the loop: undefined where that stage was not read, or the reading is left out. */
export function errorAtEnd(reading: ReadingRecord, endOf: PhaseRecord["endOf"]): number | undefined {
  if (reading.leftOut !== undefined) return undefined;
  if (endOf === "controller") return reading.loopErrorDistance;
  if (endOf === "input card") return reading.inputCardErrorDistance;
  return endOf === "wiring" ? reading.wiringErrorDistance : reading.errorDistance;
}

/** Whether a reading is in the figures of the first stage that was read. */
export function isUsed({ leftOut, errorPercentSpan }: ReadingRecord): boolean {
  return leftOut === undefined && errorPercentSpan !== undefined;
}

/** Whether a reading is in the curve of the first stage that was read, or in that of the end. */
export function isOfCurve(reading: ReadingRecord, phase: PhaseRecord, isEnd: boolean): boolean {
  return isEnd ? errorAtEnd(reading, phase.endOf) !== undefined : isUsed(reading);
}

/** What the cells of a phase follow from; `has` tells whether a column is there. */
type Basis = { record: CalibrationRecord; phase: PhaseRecord; loop: LoopCells; has: (key: string) => boolean };
/** The address of a column in the row that is written. */
type At = (key: string) => string;

const shareNames = ["wiring", "inputCard", "scaling", "inputCardAndScaling"] as const;

/** A function that gives the cell of a column for a reading. */
export function readingCells(basis: Basis): (key: string, reading: ReadingRecord, at: At) => Cell {
  const { phase, loop, has } = basis;
  const { judged, points, endOf } = phase;
  const numbers = new Map(points.map(({ point }, index) => [point, index + 1]));
  const typed: Readonly<Record<string, (reading: ReadingRecord) => Cell | undefined>> = {
    cycle: ({ cycle }) => cycle,
    direction: ({ direction }) => direction,
    reference: ({ reference }) => reference,
    signal: ({ signal }) => signal,
    signalAtCard: ({ signalAtCard }) => signalAtCard,
    counts: ({ counts }) => counts,
    value: ({ value }) => value,
    number: ({ point }) => numbers.get(point),
    used: (reading) => Number(isUsed(reading)),
    atEnd: (reading) => Number(errorAtEnd(reading, endOf) !== undefined),
    line: ({ row }) => row,
    why: ({ leftOut }) => leftOut,
    remark: ({ remark }) => remark,
  };
  const live: Readonly<Record<string, (reading: ReadingRecord, at: At) => Cell>> = {
    indicated: ({ indicated }, at) => liveWhere(indicated, distanceOf(loop, judged, at(judged))),
    error: ({ errorDistance }, at) => liveWhere(errorDistance, `${at("indicated")}-${at("reference")}`),
    percent: ({ errorPercentSpan }, at) => liveWhere(errorPercentSpan, `100*${at("error")}/${loop.span}`),
    loop: ({ loopErrorDistance }, at) => liveWhere(loopErrorDistance, `${at("value distance")}-${at("reference")}`),
    limit: ({ toleranceHigh }, at) => ({ formula: loop.tolerance("plus", at("reference")), is: toleranceHigh }),
    low: ({ toleranceLow }, at) => ({ formula: `-${loop.tolerance("minus", at("reference"))}`, is: toleranceLow }),
    output: ({ errorSignal }, at) => liveWhere(errorSignal, `${at(judged)}-${idealOf(loop, judged, at("reference"))}`),
    loopValue: ({ loopErrorValue }, at) =>
      liveWhere(loopErrorValue, `${at("value")}-${idealOf(loop, "value", at("reference"))}`),
    ...endCells(basis),
  };
  return (key, reading, at) => {
    const known = typed[key]?.(reading);
    if (known !== undefined) return known;
    const formula = live[key] ?? distanceCells(key, basis) ?? shareCells(key, has);
    return formula?.(reading, at) ?? null;
  };
}

/** The distance that an output stands for: the ideal line turned round. */
function distanceOf(loop: LoopCells, stage: PhaseRecord["judged"], cell: string): string {
  const { lower, upper } = loop.ends(stage);
  return `${loop.lower}+(${cell}-${lower})*${loop.span}/(${upper}-${lower})`;
}

/** What an output is meant to be at a reference. */
function idealOf(loop: LoopCells, stage: PhaseRecord["judged"], reference: string): string {
  const { lower, upper } = loop.ends(stage);
  return `(${lower}+(${reference}-${loop.lower})*(${upper}-${lower})/${loop.span})`;
}

const laterStages = ["signalAtCard", "counts", "value"] as const;

/** "counts distance" and its like, where the quantity was read. */
function distanceCells(key: string, { loop }: Basis) {
  const quantity = laterStages.find((one) => key === `${one} distance`);
  if (quantity === undefined) return undefined;
  const stage = quantity === "signalAtCard" ? "signal" : quantity;
  return (reading: ReadingRecord, at: At): Cell =>
    reading[quantity] === undefined ? null : { formula: distanceOf(loop, stage, at(quantity)) };
}

/** A share of the error: the distance of a stage less that of the one before it. */
function shareCells(key: string, has: (key: string) => boolean) {
  const share = shareNames.find((one) => one === key);
  if (share === undefined) return undefined;
  const chain = ["indicated", ...laterStages.map((stage) => `${stage} distance`).filter(has)];
  const own = { wiring: "signalAtCard distance", inputCard: "counts distance" }[share as "wiring"] ?? "value distance";
  const before = chain[chain.indexOf(own) - 1] ?? "indicated";
  return ({ shares }: ReadingRecord, at: At): Cell => liveWhere(shares?.[share], `${at(own)}-${at(before)}`);
}

/** The last stage that was read at a reading, and what follows from it. */
function endCells({ loop, has, phase }: Basis) {
  const lastOf = (reading: ReadingRecord) => {
    const stages = laterStages.filter((stage) => reading[stage] !== undefined && has(`${stage} distance`));
    return stages.at(-1);
  };
  const errorOf = (reading: ReadingRecord) => endError(reading)?.errorDistance;
  const isWorst = (reading: ReadingRecord) => reading.row === phase.worst?.row;
  return {
    end: (reading: ReadingRecord, at: At) => {
      const last = lastOf(reading);
      const distance = last === undefined ? at("indicated") : at(`${last} distance`);
      return liveWhere(errorOf(reading), `${distance}-${at("reference")}`);
    },
    endPercent: (reading: ReadingRecord, at: At): Cell =>
      errorOf(reading) === undefined ? null : { formula: `100*${at("end")}/${loop.span}` },
    part: (reading: ReadingRecord, at: At): Cell =>
      reading.leftOut !== undefined || errorOf(reading) === undefined
        ? null
        : {
            formula: `IF(${at("end")}>=0,IF(${at("limit")}=0,0,${at("end")}/${at("limit")}),IF(${at("low")}=0,0,${at("end")}/${at("low")}))`,
            ...(isWorst(reading) && { is: phase.worst?.partOfTolerance ?? undefined }),
          },
    verdict: (reading: ReadingRecord, at: At): Cell =>
      reading.leftOut !== undefined || errorOf(reading) === undefined
        ? (reading.verdict ?? null)
        : liveWhere(
            reading.verdict,
            `IF(AND(${at("end")}>=${at("low")}-${loop.rounding},${at("end")}<=${at("limit")}+${loop.rounding}),"pass","fail")`,
          ),
  };
}
