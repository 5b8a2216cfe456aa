import { slipThatFits } from "../../analysis/plausibility/typing-alternatives.ts";
import { type AnalysedReading, analyseReadings } from "../../analysis/readings/analyse-readings.ts";
import { indicatedDistance } from "../../analysis/readings/ideal-characteristic.ts";
import { type Loop, loopOf, readStages, type Stage, stages } from "../../analysis/readings/loop.ts";
import { partOfTolerance } from "../../analysis/readings/place-in-range.ts";
import { toleranceAt } from "../../analysis/readings/tolerance.ts";
import type { Reading } from "../../model/calibration.ts";
import type { Instrument } from "../../model/instrument.ts";
import { tableColumns } from "../../model/table-columns.ts";
import { median } from "../../numeric/median.ts";
import { isInside } from "../../units/is-inside.ts";
import { readNumber } from "../../units/read-number.ts";
import { writePlain } from "../../units/write-number.ts";
import { readCell } from "../../workbook/cells/read-cell.ts";
import { remarked } from "../../workbook/text-rows.ts";
import type { Cells } from "../sheet-data.ts";

/** What one reading says by itself, at once while it is typed. */
export type RowSays = {
  /** Error at the stage that takes most of its tolerance, in the unit of distance. */
  errorDistance: number;
  /** Error over the tolerance on its side; null where nothing is allowed there. */
  part: number | null;
  isOutside: boolean;
};

/** A reading as it is typed: text by the names of the columns. */
export type TypedReading = { id: string; cells: Cells };

/** What rows said before, by the cells themselves: a key press changes one row. */
export type SaidBefore = WeakMap<Cells, { judged: Stage; says: RowSays | undefined }>;

/** A typed number that its fellows contradict, and the one that would fit. */
export type Slip = { meant: string; kind: string };

/**
 * What each reading of a phase says of its own: its error against the tolerance there. What readings say of each other is
 * judged with the whole sheet, a moment later.
 *
 * @param typed readings of one phase, in the order of the table
 * @param instrument their loop
 * @param before what rows said before; a row whose cells are the same object is not reckoned anew
 * @returns by id; a reading that cannot be read yet, or that goes into no figure, is absent
 * Source: `analyseReadings`, which the record rests on too.
 */
export function rowsSay(
  typed: readonly TypedReading[],
  instrument: Instrument,
  before: SaidBefore = new WeakMap(),
): ReadonlyMap<string, RowSays> {
  const loop = loopOf(instrument);
  const judged = stages.find(
    (stage) =>
      loop.characteristics[stage] !== undefined && typed.some(({ cells }) => (cells[stage] ?? "").trim() !== ""),
  );
  if (judged === undefined) return new Map();
  return new Map(
    typed.flatMap(({ id, cells }) => {
      const known = before.get(cells);
      const says = known?.judged === judged ? known.says : rowSays(cells, { instrument, loop, judged });
      before.set(cells, { judged, says });
      return says === undefined ? [] : [[id, says] as const];
    }),
  );
}

function rowSays(
  cells: Cells,
  { instrument, loop, judged }: { instrument: Instrument; loop: Loop; judged: Stage },
): RowSays | undefined {
  const reading = readingOf(atItsPoint(cells), instrument);
  const [one] = reading === undefined ? [] : analyseReadings([reading], loop, judged);
  return one && saidBy(one);
}

/**
 * A reading's texts with one decimal mark, a point; it is taken at its point unless another reference was typed.
 *
 * @param cells as they are typed
 * @returns the same, trimmed
 * Source: own choice.
 */
export function atItsPoint(cells: Cells): Cells {
  const typed = Object.fromEntries(Object.entries(cells).map(([name, text]) => [name, remarked(text.trim(), "point")]));
  return { ...typed, reference: typed.reference || (typed.point ?? "") };
}

/**
 * The slip of the typing hand that would make a number fit what the other readings say.
 *
 * @param typed the reading and the column in question
 * @param others errors of the other readings of the phase, distance
 * @param instrument their loop
 * @returns the number that would fit and the kind of slip; undefined where the number fits or no slip explains it
 * Source: `slipThatFits`; that a number a whole tolerance apart is asked about is our own choice.
 */
export function slipIn(
  { cells, column }: { cells: Cells; column: string },
  others: readonly number[],
  instrument: Instrument,
): Slip | undefined {
  const loop = loopOf(instrument);
  const stage = stages.find((one) => one === column);
  const characteristic = stage === undefined ? undefined : loop.characteristics[stage];
  const written = readNumber(cells[column] ?? "", "point");
  const reference = readNumber(cells.reference ?? "", "point")?.value;
  if (characteristic === undefined || written === undefined || reference === undefined) return undefined;
  const expected = others.length === 0 ? 0 : median(others);
  const missedBy = (meant: number) => Math.abs(indicatedDistance(characteristic, meant) - reference - expected);
  const { low, high } = toleranceAt(loop.toleranceTerms, loop.characteristics.signal, reference);
  const allowed = Math.min(-low, high);
  if (missedBy(written.value) <= allowed) return undefined;
  const slip = slipThatFits(written.value, written.decimals, missedBy, allowed / 2);
  if (slip === undefined) return undefined;
  return { meant: Number(slip.meant.toPrecision(12)).toFixed(written.decimals), kind: slip.kind };
}

/** An error with its unit and its part of the tolerance: "+1.3 mm, 26 % of tolerance". */
export function errorWords({ errorDistance, part }: RowSays, unit: string): string {
  const error = `${errorDistance > 0 ? "+" : ""}${writePlain(Number(errorDistance.toPrecision(3)))} ${unit}`;
  return part === null ? error : `${error}, ${Math.round(100 * part)} % of tolerance`;
}

const emptyReading = { calibration: "-", phase: "as_found", direction: "rising" } as const;

const readingColumns = ["cycle", "direction", "point", "reference", "signal", "signal_at_card", "counts", "value"];

/** The reading that the texts give; nothing where one of them cannot be read, or where nothing was read. */
function readingOf(cells: Cells, instrument: Instrument): Reading | undefined {
  const reading: Record<string, unknown> = { ...emptyReading };
  for (const column of tableColumns("readings")) {
    const text = (cells[column.name] ?? "").trim();
    if (!readingColumns.includes(column.name) || text === "") continue;
    const result = readCell(text, column, "point", instrument);
    if ("code" in result) return undefined;
    reading[column.key] = result.value;
  }
  const isRead = readStages.some((stage) => reading[stage] !== undefined);
  return isRead && typeof reading.reference === "number" ? (reading as Reading) : undefined;
}

function saidBy({ tolerance, stageErrors, error, leftOut }: AnalysedReading): RowSays | undefined {
  if (leftOut !== undefined) return undefined;
  const distances = [...Object.values(stageErrors).map(({ distance }) => distance), error?.errorDistance].filter(
    (one): one is number => one !== undefined,
  );
  const partOf = (one: number) => partOfTolerance(one, tolerance.low, tolerance.high);
  const worst = distances.toSorted((one, other) => partOf(other) - partOf(one))[0];
  if (worst === undefined) return undefined;
  const part = partOf(worst);
  return {
    errorDistance: worst,
    part: Number.isFinite(part) ? part : null,
    isOutside: !isInside(worst, tolerance),
  };
}
