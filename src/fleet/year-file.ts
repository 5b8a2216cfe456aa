import { ByteWriter, ParquetWriter } from "hyparquet-writer";
import { dayNumber } from "../analysis/years/day-number.ts";
import { type ColumnKind, type FleetRow, fleetColumns } from "./fleet-columns.ts";

/** Rows that are held at once, and read at once by an engine. */
const rowsOfGroup = 4096;
/** Under this key a file says what it is, and of which ledger. */
const formKey = "spanwright-fleet";
const formNumber = "1";
const digestBytes = 32;

type Element = ConstructorParameters<typeof ParquetWriter>[0]["schema"][number];

const shape: Readonly<Record<Exclude<ColumnKind, "texts" | "standards">, Omit<Element, "name">>> = {
  text: { type: "BYTE_ARRAY", converted_type: "UTF8" },
  whole: { type: "INT32" },
  number: { type: "DOUBLE" },
  day: { type: "INT32", converted_type: "DATE" },
  flag: { type: "BOOLEAN" },
  digest: { type: "FIXED_LEN_BYTE_ARRAY", type_length: digestBytes },
};

/**
 * The bytes of a Parquet file of those rows, in parts: what is held at once is one group of rows.
 *
 * @param ledgerBegins SHA-256 of the first line of the ledger that the records are of
 */
export async function* yearFile(
  rows: AsyncIterable<FleetRow> | Iterable<FleetRow>,
  ledgerBegins: string,
): AsyncGenerator<Uint8Array> {
  const writer = new ByteWriter();
  const kvMetadata = [{ key: formKey, value: `${formNumber} ${ledgerBegins}` }];
  const parquet = new ParquetWriter({ writer, schema, kvMetadata, createdBy: "spanwright" });
  let group: FleetRow[] = [];
  for await (const row of rows) {
    group.push(row);
    if (group.length < rowsOfGroup) continue;
    writeGroup(parquet, group);
    group = [];
    yield taken(writer);
  }
  if (group.length > 0) writeGroup(parquet, group);
  parquet.finish();
  yield taken(writer);
}

/** Whether bytes are a yearly file of the folder whose ledger begins so: by what the end of the file says of it. */
export function isYearFile(bytes: Uint8Array, ledgerBegins: string): boolean {
  const marks = [bytes.subarray(0, 4), bytes.subarray(-4)].map((mark) => new TextDecoder("latin1").decode(mark));
  if (bytes.length < 12 || marks.some((mark) => mark !== "PAR1")) return false;
  const end = bytes.length - 8;
  const length = new DataView(bytes.buffer, bytes.byteOffset + end, 4).getUint32(0, true);
  if (length > end - 4) return false;
  const footer = new TextDecoder("latin1").decode(bytes.subarray(end - length, end));
  return footer.includes(formKey) && footer.includes(ledgerBegins);
}

const schema: Element[] = [
  { name: "records", num_children: fleetColumns.length, repetition_type: "REQUIRED" },
  ...fleetColumns.flatMap(({ name, kind }) => elementsOf(name, kind)),
];

function elementsOf(name: string, kind: ColumnKind): Element[] {
  if (kind === "texts") return listOf(name, [leaf("element", "text")]);
  if (kind !== "standards") return [leaf(name, kind)];
  const parts = [leaf("standard", "text"), leaf("certificate", "text"), leaf("due_on", "day")];
  return listOf(name, [{ name: "element", num_children: parts.length, repetition_type: "OPTIONAL" }, ...parts]);
}

function leaf(name: string, kind: keyof typeof shape): Element {
  return { ...shape[kind], name, repetition_type: "OPTIONAL" };
}

/** The three levels by which Parquet keeps a list. */
function listOf(name: string, element: readonly Element[]): Element[] {
  return [
    { name, converted_type: "LIST", num_children: 1, repetition_type: "OPTIONAL" },
    { name: "list", num_children: 1, repetition_type: "REPEATED" },
    ...element,
  ];
}

function writeGroup(parquet: ParquetWriter, rows: readonly FleetRow[]): void {
  const columnData = fleetColumns.map(({ name, kind }) => ({
    name,
    data: rows.map((row) => asKept(kind, row[name])),
    offsetIndex: false,
  }));
  parquet.write({ columnData, rowGroupSize: rows.length });
}

/** A cell as the library takes it. */
function asKept(kind: ColumnKind, cell: FleetRow[keyof FleetRow]): unknown {
  if (cell === null) return null;
  if (kind === "day") return dayNumber(cell as string);
  if (kind === "digest") return Buffer.from(cell as string, "hex");
  if (kind !== "standards") return cell;
  return (cell as NonNullable<FleetRow["standards"]>).map((one) => ({ ...one, due_on: dayNumber(one.due_on) }));
}

/** What was written since the last time; the writer goes on counting its place in the file. */
function taken(writer: ByteWriter): Uint8Array {
  const part = writer.getBytes().slice();
  writer.index = 0;
  return part;
}
