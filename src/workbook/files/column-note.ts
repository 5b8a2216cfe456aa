import type { Column, UnitSource } from "../../model/column.ts";
import { type UnitKind, type UnitSymbol, unitTable } from "../../units/unit-table.ts";

/** What stands beside the header of a column: what it means, whether it is needed, and what its cells take. */
export function columnNote(column: Column): string {
  const needed = column.required ? "Needed. " : "";
  return `${needed}${capitalised(column.about)}.\n${capitalised(takenBy(column))}.`;
}

/** The words of a column that takes no others, for a list to choose from. */
export function fixedWords(column: Column): readonly string[] | undefined {
  if (column.reads === "choice" || column.reads === "choices") return column.choices;
  if (column.reads === "yesNo") return ["yes", "no"];
  return column.reads === "unit" ? Object.keys(unitTable) : undefined;
}

/** Whether a cell of the column may hold several of its words, which no list to choose from offers. */
export function takesSeveral(column: Column): boolean {
  return column.reads === "choices" || (column.reads === "choice" && column.several !== undefined);
}

function takenBy(column: Column): string {
  const words = fixedWords(column)?.join(", ");
  if (words !== undefined) return takesSeveral(column) ? `${words}; several with ; between them` : `one of ${words}`;
  switch (column.reads) {
    case "number":
      return `${column.saysMore ? "a number, or a tolerance in words" : "a number"}${unitWords(column.unit)}`;
    case "numberOrWords":
      return "a number, or words";
    case "wholeNumber":
      return "a whole number from 1 on";
    case "date":
      return "a date, or year-month-day such as 2026-03-04";
    case "time":
      return "a time of day, or as 2026-03-04T14:05 or 14:05:30";
    case "list":
      return "words, several with ; between them";
    default:
      return "words";
  }
}

/** The column that names the unit, or the unit itself; a number may carry another of its kind. */
const namedBy: Readonly<Partial<Record<UnitSource, { column: string; kinds: readonly UnitKind[] }>>> = {
  distance: { column: "distance_unit", kinds: ["distance"] },
  signal: { column: "signal_unit", kinds: ["current", "voltage"] },
  "controller value": { column: "value_unit", kinds: [] },
  "stated by row": { column: "uncertainty_unit", kinds: [] },
  tolerance: { column: "tolerance_basis", kinds: [] },
  "second tolerance": { column: "second_tolerance_basis", kinds: [] },
  accuracy: { column: "accuracy_basis", kinds: [] },
};

function unitWords(source: UnitSource): string {
  if (source === "none") return " without a unit";
  const named = namedBy[source];
  if (named !== undefined) {
    const units = unitsOf(named.kinds).join(", ");
    return ` in the unit that ${named.column} says${units === "" ? "" : `, or with its own: ${units}`}`;
  }
  const others = unitsOf([unitTable[source as UnitSymbol].kind]).filter((symbol) => symbol !== source);
  return ` in ${source}${others.length === 0 ? "" : `, or with its own unit: ${others.join(", ")}`}`;
}

function unitsOf(kinds: readonly UnitKind[]): readonly string[] {
  return Object.entries(unitTable).flatMap(([symbol, { kind }]) => (kinds.includes(kind) ? [symbol] : []));
}

function capitalised(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
