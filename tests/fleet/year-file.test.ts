import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { type FleetRow, fleetColumns } from "../../src/fleet/fleet-columns.ts";
import { isYearFile, yearFile } from "../../src/fleet/year-file.ts";
import { askedOfDuckDb } from "./asked-of-duckdb.ts";
import { madeUpRows } from "./made-up-rows.ts";

const ledger = "ab".repeat(32);

async function bytesOf(rows: Iterable<FleetRow>): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  for await (const part of yearFile(rows, ledger)) parts.push(part);
  return Buffer.concat(parts);
}

/** What DuckDB, which shares no code with the writer, says of such a file. */
async function answerTo(statement: string, bytes: Uint8Array) {
  const folder = mkdtempSync(join(tmpdir(), "spanwright-year-"));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  writeFileSync(join(folder, "year.parquet"), bytes);
  const [answer = []] = await askedOfDuckDb(folder, [statement]);
  return answer;
}

test("every cell comes back as it was, whatever a table held, and null where there is none", async () => {
  const [some, ...others] = madeUpRows(300) as [FleetRow, ...FleetRow[]];
  const nasty = { ...some, tag: "=1+1", location: "\u001b[31m\u202e😀\0'; DROP TABLE x; --", revision: 2_147_483_647 };
  const rows = [{ ...nasty, performed_on: "0001-01-01", missing: ["", 'a "b"'], standards: [] }, ...others];
  const bytes = await bytesOf(rows);
  const digests = fleetColumns.filter(({ kind }) => kind === "digest").map(({ name }) => name);
  const asHex = digests.map((name) => `lower(hex(${name})) AS ${name}`).join(", ");
  const back = await answerTo(`SELECT * REPLACE (${asHex}) FROM 'year.parquet'`, bytes);
  expect(back).toEqual(rows);
});

test("a file without rows has every column", async () => {
  const columns = await answerTo("DESCRIBE SELECT * FROM 'year.parquet'", await bytesOf([]));
  expect(columns.map((column) => column.column_name)).toEqual(fleetColumns.map(({ name }) => name));
  expect(await answerTo("SELECT count(*) AS n FROM 'year.parquet'", await bytesOf([]))).toEqual([{ n: "0" }]);
});

test("no more than one group of rows is taken before its bytes are given", async () => {
  let taken = 0;
  const rows = madeUpRows(10_000);
  const counting = (function* () {
    for (const row of rows) {
      taken += 1;
      yield row;
    }
  })();
  const takenByPart: number[] = [];
  for await (const part of yearFile(counting, ledger)) {
    expect(part.length).toBeGreaterThan(0);
    takenByPart.push(taken);
  }
  expect(takenByPart).toEqual([4096, 8192, 10_000]);
  const groups =
    "SELECT DISTINCT row_group_id AS id, row_group_num_rows AS n FROM parquet_metadata('year.parquet') ORDER BY id";
  expect(await answerTo(groups, await bytesOf(rows))).toMatchObject([{ n: "4096" }, { n: "4096" }, { n: "1808" }]);
});

test("a yearly file is known by its end, of its own ledger alone", async () => {
  const bytes = await bytesOf(madeUpRows(10));
  expect(isYearFile(bytes, ledger)).toBe(true);
  expect(isYearFile(bytes, "cd".repeat(32))).toBe(false);
  expect(isYearFile(bytes.subarray(0, -1), ledger)).toBe(false);
  expect(isYearFile(new TextEncoder().encode(`PAR1 spanwright-fleet ${ledger} and more PAR1`), ledger)).toBe(false);
  expect(isYearFile(new Uint8Array(), ledger)).toBe(false);
});
