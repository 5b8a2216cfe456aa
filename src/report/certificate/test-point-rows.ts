import { foundAtPoint, type ReadQuantity, readQuantities } from "../../record/found-at-point.ts";
import { idealOutput } from "../../record/ideal-output.ts";
import { decidingPoints, endError } from "../../record/loop-end.ts";
import { type PhaseName, phaseNames } from "../../record/phase-name.ts";
import type { CalibrationRecord, JudgedPointRecord, PhaseRecord, ReadingRecord } from "../../record/record-schema.ts";
import { writeFixed, writePlain, writeSigned } from "../../units/write-number.ts";
import type { NumberStyle } from "../style/number-style.ts";
import { signedWithUncertainty } from "../texts/switching-texts.ts";

/** What one phase says at one row of the certificate's table, as it is printed. */
export type RowOfPhase = {
  /** Mean reference distance that was set. */
  distance: string;
  expected: string;
  rising: string;
  falling: string;
  /** The same of the stage that decides, where that is not the signal. */
  further?: { expected: string; rising: string; falling: string };
  error: string;
  shareOfTolerance: string;
  statement: string;
};

/** One row: a test point, with what each phase found there. */
export type TestPointRow = { name: string; isOutput?: boolean; of: { [Name in PhaseName]?: RowOfPhase } };

/** Every test point by rising distance. */
export function testPointRows(record: CalibrationRecord, style: NumberStyle): readonly TestPointRow[] {
  const rows = new Map<number, TestPointRow>();
  for (const name of phaseNames) {
    const phase = record.phases[name];
    if (phase === undefined) continue;
    const stated = statedPhase(phase);
    for (const point of decidingPoints(phase)) {
      const row = rows.get(point.point) ?? { name: writePlain(Number(point.point.toPrecision(6))), of: {} };
      row.of[name] = rowOfPhase(record, stated, point, style);
      rows.set(point.point, row);
    }
  }
  return [...rows].sort(([one], [other]) => one - other).map(([, row]) => row);
}

/** Whether both phases stood at the same distances, so that one column of them does for both. */
export function haveSameDistances(rows: readonly TestPointRow[]): boolean {
  return rows.every(({ of: { asFound, asLeft } }) => !asFound || !asLeft || asFound.distance === asLeft.distance);
}

/** What its rows ask of a phase, found once: the readings of each test point, and what is the same for all. */
type StatedPhase = {
  phase: PhaseRecord;
  readingsAt: ReadonlyMap<number, readonly ReadingRecord[]>;
  quantities: readonly [ReadQuantity | undefined, ReadQuantity | undefined];
  referenceDecimals: number;
};

function statedPhase(phase: PhaseRecord): StatedPhase {
  const readingsAt = new Map<number, ReadingRecord[]>();
  for (const reading of phase.readings) {
    const here = readingsAt.get(reading.point);
    if (here === undefined) readingsAt.set(reading.point, [reading]);
    else here.push(reading);
  }
  return { phase, readingsAt, quantities: quantitiesOf(phase), referenceDecimals: referenceDecimals(phase) };
}

function rowOfPhase(
  record: CalibrationRecord,
  { phase, readingsAt, quantities: [first, last], referenceDecimals }: StatedPhase,
  point: JudgedPointRecord,
  style: NumberStyle,
): RowOfPhase {
  const readings = readingsAt.get(point.point) ?? [];
  const found = first === undefined ? nothing : foundWords(record, { phase, readings }, point, first);
  const further =
    last === first || last === undefined ? undefined : foundWords(record, { phase, readings }, point, last);
  return {
    distance: writeFixed(point.reference, referenceDecimals),
    ...found,
    ...(further && { further }),
    ...judgedWords(record, readings, point, style),
  };
}

const nothing = { expected: "", rising: "", falling: "" };

/** A mean of references needs a digit more than was typed, unless all of them were the same. */
function referenceDecimals({ points, decimals }: PhaseRecord): number {
  const isTyped = points.every(
    ({ reference }) => Math.abs(Number(reference.toFixed(decimals.reference)) - reference) < 1e-9,
  );
  return isTyped ? decimals.reference : decimals.reference + 1;
}

/** The first quantity that was read and the one at the end of the loop. */
function quantitiesOf({ readings, endOf }: PhaseRecord): readonly [ReadQuantity | undefined, ReadQuantity | undefined] {
  const isRead = (name: ReadQuantity) => readings.some((reading) => reading[name] !== undefined);
  const first = readQuantities.find(isRead);
  const last = { sensor: first, wiring: "signalAtCard", "input card": "counts", controller: "value" } as const;
  return [first, last[endOf]];
}

/** Fewest decimals of a signal: a meter in the loop shows microamperes or millivolts. */
const signalDecimals = 3;

function foundWords(
  record: CalibrationRecord,
  { phase, readings }: { phase: PhaseRecord; readings: readonly ReadingRecord[] },
  { point, reference }: JudgedPointRecord,
  quantity: ReadQuantity,
) {
  const typed = phase.decimals[quantity === "signalAtCard" ? "signal" : quantity];
  const decimals = quantity === "signal" || quantity === "signalAtCard" ? Math.max(typed, signalDecimals) : typed;
  const ideal = idealOutput(record.instrument, quantity, reference);
  const of = (direction: "rising" | "falling") => {
    const found = foundAtPoint(readings, { point, direction, quantity });
    return found === undefined ? "–" : writeFixed(found.mean, found.count === 1 ? typed : Math.max(typed, decimals));
  };
  return {
    expected: ideal === undefined ? "–" : writeFixed(ideal, decimals),
    rising: of("rising"),
    falling: of("falling"),
  };
}

/** By simple acceptance each reading is judged, by any other rule the mean of the worse direction with its U. */
function judgedWords(
  record: CalibrationRecord,
  here: readonly ReadingRecord[],
  point: JudgedPointRecord,
  style: NumberStyle,
) {
  if (record.decisionRule.name !== "simple acceptance") {
    return {
      error: signedWithUncertainty(point.errorDistance, point.expandedUncertainty),
      shareOfTolerance: shareWords(point.errorDistance, point),
      statement: point.statement,
    };
  }
  const worst = worstReading(here);
  const error = worst?.error ?? point.errorDistance;
  const limits = worst?.reading ?? point;
  return {
    error: writeSigned(error, style.distance),
    shareOfTolerance: shareWords(error, limits),
    statement: here.some(({ verdict }) => verdict === "fail") ? "fail" : point.statement,
  };
}

type JudgedReading = { reading: ReadingRecord; error: number };

function worstReading(readings: readonly ReadingRecord[]): JudgedReading | undefined {
  const judged = readings.flatMap((reading): readonly JudgedReading[] => {
    const end = reading.leftOut === undefined ? endError(reading) : undefined;
    return end === undefined ? [] : [{ reading, error: end.errorDistance }];
  });
  const [first, ...others] = judged;
  return first && others.reduce((worst, one) => (shareOf(one) > shareOf(worst) ? one : worst), first);
}

function shareOf({ reading, error }: JudgedReading): number {
  return partOfTolerance(error, reading) ?? (error === 0 ? 0 : Number.POSITIVE_INFINITY);
}

type Limits = Pick<ReadingRecord, "toleranceLow" | "toleranceHigh">;

function partOfTolerance(error: number, { toleranceLow, toleranceHigh }: Limits): number | undefined {
  const limit = Math.abs(error < 0 ? toleranceLow : toleranceHigh);
  return limit === 0 ? undefined : Math.abs(error) / limit;
}

/** "48": never 100 for what lies outside, nor for what lies inside. */
export function shareWords(error: number, limits: Limits): string {
  const part = partOfTolerance(error, limits);
  if (part === undefined) return error === 0 ? "0" : "–";
  for (let decimals = 0; decimals < 12; decimals += 1) {
    const words = writeFixed(100 * part, decimals);
    if (Number(words) > 100 === part > 1) return words;
  }
  return writeFixed(100 * part, 12);
}
