import { columnName } from "../model/column-name.ts";
import type { Instrument } from "../model/instrument.ts";
import type { SignalUnit } from "../model/instrument-words.ts";
import { type DecimalMark, readNumber } from "../units/read-number.ts";
import type { UnitSymbol } from "../units/unit-table.ts";
import type { CellValue } from "./cells/cell-result.ts";
import { readTolerance, toleranceForms, toleranceValues } from "./cells/read-tolerance.ts";
import type { Finding } from "./table-row.ts";

type Row = Record<string, CellValue>;

/** What a tolerance in words says, and where the rest of the row says something else. */
export type SaidTolerance = { row: Row; findings: readonly Finding[] };

const column = "tolerance";

/** The values of a tolerance that is written in words; undefined where the cell holds a number alone, or with its unit. */
export function saidTolerance(text: string, mark: DecimalMark, row: Row): SaidTolerance | undefined {
  const written = readNumber(text, mark);
  if (written?.unit === null) return undefined;
  const tolerance = readTolerance(text, mark);
  if (tolerance === undefined) {
    const isNumber = written !== undefined && row.toleranceBasis !== undefined;
    return isNumber ? undefined : unread(text, "the tolerance cannot be understood, or in two ways");
  }
  const { distanceUnit, signalUnit } = row as { distanceUnit?: UnitSymbol; signalUnit?: SignalUnit };
  const values = toleranceValues(tolerance, { distanceUnit, signalUnit });
  if (values === undefined) return unread(text, "the tolerance has a unit that is none of this loop");
  return { row: { ...values }, findings: [] };
}

function unread(read: string, what: string): SaidTolerance {
  return {
    row: {},
    findings: [{ code: "tables/tolerance-words", column, read, values: { what, forms: toleranceForms } }],
  };
}

/** Puts what the tolerance says into the row; a cell of the row that says something else is a problem. */
export function fillInTolerance(said: Row, row: Row, cells: Readonly<Record<string, string>>): readonly Finding[] {
  return Object.entries(said).flatMap(([key, value]): readonly Finding[] => {
    const name = columnName(key);
    if (name !== column && cells[name] !== undefined && row[key] !== value) {
      return [
        { code: "tables/tolerance-contradicted", column: name, read: cells[name], values: { says: String(value) } },
      ];
    }
    row[key] = value;
    return [];
  });
}

/** A tolerance without a basis, neither in its own column nor in its words. */
export function missingBasis(row: Row, cells: Readonly<Record<string, string>>): readonly Finding[] {
  const { tolerance, toleranceBasis } = row as Partial<Instrument>;
  if (tolerance === undefined || toleranceBasis !== undefined || cells.tolerance_basis !== undefined) return [];
  const accepted = `percent of span, percent of reading, distance or signal; or the tolerance in words: ${toleranceForms}`;
  return [{ code: "tables/cell-missing", column: "tolerance_basis", values: { accepted } }];
}
