import type { TableName } from "../../model/table-names.ts";
import type { ProblemCode } from "../../problems/catalogue.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import type { RawTable } from "../../workbook/files/raw-table.ts";

/** A table that is still to be filled in need not be there, and may have no rows. */
const mayBeUnfinished: ReadonlySet<ProblemCode> = new Set(["tables/missing", "tables/empty"]);

/**
 * Tells what stops some tables of a workbook whose others may be unfinished: what is wrong in their rows, that the
 * instruments are not there at all, and every file that could not be read, for it may hold any of them.
 */
export function tellStopsOf(
  names: readonly TableName[],
  { tables, all }: { tables: readonly RawTable[]; all: ProblemList },
  problems: ProblemList,
): void {
  const files = tables.filter(({ table }) => names.includes(table)).map(({ file }) => file);
  for (const { code, severity, place, read, values } of all.all) {
    const isOfThem = files.includes(place.file) || (code === "tables/missing" && values.table === "instruments");
    const isUnread = code.startsWith("tables/") && place.line === undefined && !mayBeUnfinished.has(code);
    if (severity === "stop" && (isOfThem || isUnread)) problems.add(code, place, { read, values });
  }
}
