import { type TableName, tableNames } from "../../model/table-names.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { packedParts, unpackedPart } from "../../workbook/files/packed-parts.ts";
import type { RawTable, SourceFile } from "../../workbook/files/raw-table.ts";
import type { PlacedRow } from "../../workbook/merge-rows.ts";
import { mayHoldTable, readTables } from "../../workbook/read-tables.ts";
import { textRows } from "../../workbook/text-rows.ts";
import type { Disk } from "../disk.ts";

/** What came back from one sheet: its rows by their tables, numbers with a point. */
export type Source = { path: string; rows: ReadonlyMap<TableName, readonly PlacedRow[]> };

/** A .zip of more bytes than these is nothing that a sheet handed back. */
const mostBytes = 64_000_000;

/**
 * Reads what came back: .zip files of sheets, folders of tables, single tables.
 *
 * @returns a source a path; one that cannot be read is a problem and absent
 */
export async function readSources(
  disk: Pick<Disk, "read">,
  paths: readonly string[],
  problems: ProblemList,
): Promise<readonly Source[]> {
  const sources: Source[] = [];
  for (const path of paths) {
    const found = await disk.read(path, (name) => mayHoldTable(name) || isPackage(name));
    if (found === undefined) {
      problems.add("collect/not-found", { file: path });
      continue;
    }
    const packages = found.files.filter(({ name }) => isPackage(name));
    for (const file of packages) {
      const own = found.isFolder ? `${path}/${file.name}` : path;
      const files = unpacked(file, own, problems);
      if (files !== undefined) sources.push(await sourceOf(own, files, problems));
    }
    const tables = found.files.filter(({ name }) => !isPackage(name));
    if (tables.length > 0 || packages.length === 0) sources.push(await sourceOf(path, tables, problems));
  }
  return sources;
}

function isPackage(name: string): boolean {
  return /\.zip$/iu.test(name);
}

async function sourceOf(path: string, files: readonly SourceFile[], problems: ProblemList): Promise<Source> {
  const own = new ProblemList();
  const tables = await readTables(files, own);
  for (const { code, severity, place, read, values } of own.all) {
    if (severity !== "stop" || code === "tables/empty") continue;
    problems.add(code, { ...place, file: placeIn(path, place.file) }, { read, values });
  }
  if (tables.length === 0 && !own.hasStop) {
    problems.add("collect/no-tables", { file: path }, { values: { tables: tableNames.join(", ") } });
  }
  return { path, rows: new Map(tables.map((table) => [table.table, placedRows(table, path)])) };
}

/** Where a table lies: a lone one is the source itself. */
function placeIn(path: string, file: string): string {
  return path.endsWith(file) ? path : `${path}/${file}`;
}

/** The rows of a table, each with the place where it stands. */
export function placedRows(table: RawTable, path: string): readonly PlacedRow[] {
  return textRows(table, "point").map(({ cells, line }) => ({ cells, place: `${placeIn(path, table.file)}:${line}` }));
}

/** The tables in a .zip file, where it can be unpacked; folders in it do not count. */
function unpacked({ bytes }: SourceFile, path: string, problems: ProblemList): readonly SourceFile[] | undefined {
  const refused = (why: string) => problems.add("collect/zip", { file: path }, { values: { why } });
  const parts = packedParts(bytes);
  if (parts === undefined) return void refused("invalid zip data");
  const tooMuch = `it would unpack to more than ${mostBytes / 1e6} MB`;
  if (parts.reduce((sum, { size }) => sum + size, 0) > mostBytes) return void refused(tooMuch);
  const files: SourceFile[] = [];
  for (const part of parts) {
    const name = part.name.split(/[\\/]/u).at(-1) ?? part.name;
    if (!mayHoldTable(name)) continue;
    const content = unpackedPart(bytes, part);
    if (content === undefined || content === "more") return void refused("invalid zip data");
    files.push({ name, bytes: content });
  }
  return files;
}
