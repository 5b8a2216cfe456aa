import { type AnyTableName, requiredTables } from "../../model/table-names.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { headerColumns } from "../header-columns.ts";
import { placeOfTable } from "./place-of-table.ts";
import type { Delimiter, FileDescription, RawRow, RawRows, RawSheet, RawTable } from "./raw-table.ts";
import { settleDecimalMark } from "./settle-decimal-mark.ts";

type Origin<Table> = {
  table: Table;
  file: string;
  sheet?: RawSheet | undefined;
  name: string;
  encoding: FileDescription["encoding"];
};

/** A table of its header, where there is one, and the rows below it; its decimal mark is settled by them. */
export function tableOfRows<Table extends AnyTableName>(
  {
    table,
    file,
    sheet,
    name,
    encoding,
    delimiter,
    header: first,
    rows,
  }: Origin<Table> & { delimiter: Delimiter | null; header: RawRow | undefined; rows: RawRows },
  problems: ProblemList,
): RawTable<Table> {
  const isRequired = (requiredTables as readonly AnyTableName[]).includes(table);
  if (rows.length === 0 && isRequired && !hasQuoteProblem(file, problems)) {
    problems.add("tables/empty", placeOfTable({ file, sheet }));
  }
  const header = (first?.cells ?? []).map((cell) => cell.trim());
  const decimalMark = settleDecimalMark({ file, sheet, rows, delimiter }, headerColumns(table, header), problems);
  const description = { name, encoding, delimiter, decimalMark };
  const headerLine = first?.line ?? 1;
  return { table, file, ...(sheet && { sheet }), header, headerLine, rows, decimalMark, description };
}

/** What stands for a table that could not be read, so that it is not called missing as well. */
export function unreadableTable<Table extends AnyTableName>({
  table,
  file,
  name,
  encoding,
}: Origin<Table>): RawTable<Table> {
  const decimalMark = "point";
  const description = { name, encoding, delimiter: null, decimalMark } as const;
  return { table, file, header: [], headerLine: 1, rows: [], decimalMark, description };
}

/** A quotation mark that does not close takes the rows below it along; they are not missing. */
function hasQuoteProblem(file: string, problems: ProblemList): boolean {
  return problems.all.some(({ code, place }) => code === "tables/quote" && place.file === file);
}
