import type { AnyTableName } from "../../model/table-names.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { decodeText } from "./decode-text.ts";
import type { RawTable, SourceFile } from "./raw-table.ts";
import { splitText } from "./split-text.ts";
import { tableOfRows, unreadableTable } from "./table-of-rows.ts";

/** A .csv file as a table of texts. */
export function readDelimited<Table extends AnyTableName>(
  { name, bytes }: SourceFile,
  table: Table,
  problems: ProblemList,
): RawTable<Table> {
  const decoded = decodeText(bytes);
  const encoding = decoded?.encoding ?? "utf-8";
  if (decoded === undefined) {
    problems.add("tables/encoding", { file: name });
    return unreadableTable({ table, file: name, name, encoding });
  }
  const { header, rows, delimiter } = splitText(decoded.pieces(), table, name, problems);
  return tableOfRows({ table, file: name, name, encoding, delimiter, header, rows }, problems);
}
