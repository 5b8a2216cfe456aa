import { expect, test } from "vitest";
import { tableColumns } from "../../../src/model/table-columns.ts";
import { mostUnpackedBytes, unpackedSize } from "../../../src/workbook/files/unpacked-size.ts";
import { writeSpreadsheet } from "../../../src/workbook/files/write-spreadsheet.ts";
import { zipOf } from "../zip-of.ts";

const megabytes = (count: number) => new Uint8Array(count * 2 ** 20);

test("what its parts take is the size of a packed file; other files have none", async () => {
  expect(unpackedSize(zipOf("a", megabytes(1)))).toBe(2 ** 20);
  const spreadsheet = await writeSpreadsheet([
    { name: "readings", columns: tableColumns("readings"), rows: [["C-1"]] },
  ]);
  expect(unpackedSize(spreadsheet)).toBeGreaterThan(1000);
  expect(unpackedSize(spreadsheet)).toBeLessThan(100_000);
  expect(unpackedSize(new TextEncoder().encode("tag,range_lower\nLT-1,0\n"))).toBeUndefined();
  expect(unpackedSize(new Uint8Array())).toBeUndefined();
});

test("more than is allowed is too large, whether its directory says so or not", () => {
  const bomb = megabytes(mostUnpackedBytes / 2 ** 20 + 1);
  const packed = zipOf("a", bomb);
  expect(packed.length).toBeLessThan(100_000);
  expect(unpackedSize(packed)).toBe(Infinity);
  expect(unpackedSize(zipOf("a", bomb, 1000))).toBe(Infinity);
  expect(unpackedSize(zipOf("a", new Uint8Array(0), 2 ** 32 - 1))).toBe(Infinity);
});

test("a directory that leads out of the file is for the reader of spreadsheets to tell", () => {
  const broken = zipOf("a", megabytes(1));
  new DataView(broken.buffer).setUint32(broken.length - 6, 2 ** 31, true);
  expect(unpackedSize(broken)).toBeUndefined();
  expect(unpackedSize(zipOf("a", megabytes(1)).subarray(5))).not.toBe(Infinity);
});
