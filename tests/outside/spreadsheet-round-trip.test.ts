import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readXlsx } from "hucre/xlsx";
import { beforeAll, expect, it } from "vitest";
import { newWorkbook } from "../../src/jobs/workbook/new-workbook.ts";
import { readWorkbook } from "../../src/jobs/workbook/read-workbook.ts";
import { sentence } from "../../src/problems/sentence.ts";
import { odsSheets } from "../../src/workbook/files/ods-sheets.ts";
import { packedParts, unpackedPart } from "../../src/workbook/files/packed-parts.ts";
import { xlsxSheets } from "../../src/workbook/files/xlsx-sheets.ts";
import { memoryDisk } from "../jobs/memory-disk.ts";
import { spreadsheetOfRows } from "../workbook/spreadsheet.ts";
import { describeWithProgram } from "./needs-program.ts";

const kinds = ["xlsx", "ods"] as const;
type Saved = Readonly<Record<(typeof kinds)[number], readonly Uint8Array[]>>;

/** The workbooks as LibreOffice saves them, in a profile of its own: one start for each kind. */
function savedBy(soffice: string, workbooks: readonly Uint8Array[]): Saved {
  const folder = mkdtempSync(join(tmpdir(), "spanwright-round-trip-"));
  try {
    const files = workbooks.map((bytes, index) => {
      writeFileSync(join(folder, `${index}.xlsx`), bytes);
      return join(folder, `${index}.xlsx`);
    });
    const saved = (kind: string) => {
      const out = join(folder, kind);
      const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
      const words = [profile, "--headless", "--convert-to", kind, "--outdir", out, ...files];
      execFileSync(soffice, words, { stdio: "pipe", timeout: 120_000 });
      return workbooks.map((_, index) => new Uint8Array(readFileSync(join(out, `${index}.${kind}`))));
    };
    return { xlsx: saved("xlsx"), ods: saved("ods") };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

async function newSpreadsheet(isExample: boolean): Promise<Uint8Array> {
  const disk = memoryDisk({});
  await newWorkbook(disk, "new", { isSpreadsheet: true, isExample });
  const found = await disk.read("new/workbook.xlsx");
  return found?.files[0]?.bytes ?? new Uint8Array();
}

async function readBack(name: string, bytes: Uint8Array) {
  const reading = await readWorkbook(memoryDisk({ [name]: bytes }), name, { today: "2026-11-25", firstLook: {} });
  return { ...reading, told: reading.problems.all.map(sentence) };
}

/** Cells of every kind that a spreadsheet has its own way to keep. */
const kept = {
  rows: [
    ["day", "moment", "time", "percent", "unit", "decimals", "truth", "text", "merged", "sum"],
    [new Date(Date.UTC(2026, 2, 4)), new Date(Date.UTC(2026, 2, 4, 14, 5)), 0, 0, 0, 0, true, "12,02", "m", 0],
    [null, null, null, null, null, null, null, "hidden", null, null],
  ],
  cells: {
    "1,1": { value: new Date(Date.UTC(2026, 2, 4, 14, 5)), style: { numFmt: "dd/mm/yy hh:mm" } },
    "1,2": { value: 14.0833333333333 / 24, style: { numFmt: "hh:mm" } },
    "1,3": { value: 0.0525, style: { numFmt: "0.00%" } },
    "1,4": { value: 12.5, style: { numFmt: '0.00" mA"' } },
    "1,5": { value: 10.02, style: { numFmt: "0.0000" } },
    "1,9": { formula: "E2+1", formulaResult: 13.5 },
  },
  more: {
    merges: [{ startRow: 1, startCol: 8, endRow: 2, endCol: 8 }],
    rowDefs: new Map([1, 2].map((row) => [row, { outlineLevel: 1, hidden: row === 2 }])),
  },
};

const systems = ["1900", "1904"] as const;

describeWithProgram("soffice", "what LibreOffice saves is read as it was", (soffice) => {
  let books: readonly Uint8Array[];
  let saved: Saved;
  // All in one start for each kind: a new workbook, one with its example, and one of each date system.
  beforeAll(async () => {
    const ofSystems = systems.map((system) => spreadsheetOfRows({ kept: kept.rows }, kept.cells, kept.more, system));
    books = [await newSpreadsheet(false), await newSpreadsheet(true), ...(await Promise.all(ofSystems))];
    saved = savedBy(soffice, books);
  }, 240_000);

  it("a new workbook, empty and with its example, as .xlsx and as .ods; notes and lists stay", async () => {
    const example = await readBack("workbook.xlsx", books[1] as Uint8Array);
    expect(example.told).toEqual([]);
    for (const kind of kinds) {
      const [empty, filled] = await Promise.all(
        saved[kind].slice(0, 2).map((bytes) => readBack(`workbook.${kind}`, bytes)),
      );
      expect(empty?.isUnfilled).toBe(true);
      expect(filled?.told).toEqual([]);
      expect(filled?.cases[0]?.read().readings.map(({ row, cells }) => [row, cells])).toEqual(
        example.cases[0]?.read().readings.map(({ row, cells }) => [row, cells]),
      );
    }
    const [before, after] = await Promise.all(
      [books[0], saved.xlsx[0]].map(async (one) => (await readXlsx(one as Uint8Array)).sheets),
    );
    for (const [index, sheet] of (before ?? []).entries()) {
      expect(after?.[index]?.dataValidations?.map(({ values }) => values)).toEqual(
        sheet.dataValidations?.map(({ values }) => values),
      );
      expect(after?.[index]?.cells?.get("0,0")?.comment?.text).toContain(
        sheet.cells?.get("0,0")?.comment?.text ?? "a note",
      );
    }
  });

  it.each(systems)("cells of every kind, in the date system of %s", async (system) => {
    const [xlsx, ods] = kinds.map((kind) => saved[kind][2 + systems.indexOf(system)] as Uint8Array);
    const sheets = [...(await xlsxSheets(xlsx as Uint8Array)), ...odsSheets(ods as Uint8Array)];
    expect(sheets).toHaveLength(2);
    for (const { rows, hiddenLines, merged } of sheets) {
      expect(rows[1]?.cells).toEqual([
        ...["2026-03-04", "2026-03-04T14:05:00", "14:05:00", "5.25 %", "12.50 mA", "10.0200"],
        // A truth value may become the number 1, which the columns of yes and no take for yes.
        ...[expect.stringMatching(/^(?:true|1)$/u), "12,02", "m", "13.5"],
      ]);
      expect([...hiddenLines]).toEqual([3]);
      expect(merged).toEqual([{ first: { line: 2, index: 8 }, last: { line: 3, index: 8 } }]);
    }
    const content = contentOf(ods as Uint8Array);
    for (const kept of ['office:value-type="percentage"', "<table:table-row-group"]) expect(content).toContain(kept);
  });
});

function contentOf(bytes: Uint8Array): string {
  const part = packedParts(bytes)?.find(({ name }) => name === "content.xml");
  const content = part && unpackedPart(bytes, part);
  return content instanceof Uint8Array ? new TextDecoder().decode(content) : "";
}
