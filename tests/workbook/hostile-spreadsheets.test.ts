import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect, test } from "vitest";
import { packedParts, unpackedPart } from "../../src/workbook/files/packed-parts.ts";
import { command, temporaryFolder, written } from "../cli/built-command.ts";
import { odsOf, odsRow } from "./ods-of.ts";
import { spreadsheet } from "./spreadsheet.ts";
import { zipOf, zipOfParts } from "./zip-of.ts";

const good = await spreadsheet("readings", "calibration,phase,direction,reference,signal\nC-1,as_found,rising,0,4");

/** A sound spreadsheet with this in the place of its first sheet. */
function withSheet(xml: string): Uint8Array {
  const texts = (packedParts(good) ?? []).map((part) => {
    const isSheet = part.name.startsWith("xl/worksheets/sheet");
    return [part.name, isSheet ? xml : new TextDecoder().decode(unpackedPart(good, part) as Uint8Array)];
  });
  return zipOfParts(Object.fromEntries(texts));
}

const cells = (rows: string, more = "") => withSheet(`<worksheet><sheetData>${rows}</sheetData>${more}</worksheet>`);
const first = '<row r="1"><c r="A1"><v>1</v></c></row>';
const repeated = odsRow("x")
  .replace("table:table-row", 'table:table-row table:number-rows-repeated="1048576"')
  .replace("<table:table-cell", '<table:table-cell table:number-columns-repeated="16384"');

const wrapped = Buffer.concat([
  Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]),
  Buffer.alloc(504),
  Buffer.from("EncryptedPackage", "utf16le"),
]);

/** What each file is made to do, and a word of what is said of it. */
const hostile: Readonly<Record<string, { bytes: Uint8Array; said: string }>> = {
  "bomb.xlsx": {
    bytes: zipOf("xl/worksheets/sheet1.xml", new Uint8Array(2 ** 28), 2 ** 20),
    said: "takes more than 64 MB",
  },
  "bomb.ods": { bytes: zipOf("content.xml", new Uint8Array(2 ** 28)), said: "takes more than 64 MB" },
  "far.xlsx": {
    bytes: cells(`${first}<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>`),
    said: "reaches to XFD1048576",
  },
  "far-without-names.xlsx": { bytes: cells(`<row r="900">${"<c/>".repeat(16_384)}</row>`), said: "reaches to XFD900" },
  "repeated.ods": { bytes: odsOf(`<table:table table:name="x">${repeated}</table:table>`), said: "reaches to XFD" },
  "entity.xlsx": {
    bytes: withSheet(`<!DOCTYPE x [<!ENTITY a SYSTEM "file:///etc/hosts">]><worksheet><sheetData/></worksheet>`),
    said: "declares a document type",
  },
  "password.xlsx": { bytes: wrapped, said: "protected by a password" },
  "truncated.xlsx": { bytes: good.slice(0, -400), said: "cannot be read as a spreadsheet" },
  "nested.ods": { bytes: odsOf("<table:table><text:p>".repeat(300_000)), said: "cannot be read as a spreadsheet" },
  "open-quote.ods": {
    bytes: odsOf(`<table:table table:name="${"x".repeat(20_000_000)}`),
    said: "cannot be read as a spreadsheet",
  },
  "attributes.ods": { bytes: odsOf(`<table:table ${"a ".repeat(5_000_000)}/>`), said: "" },
  "merged.xlsx": {
    bytes: cells(first, `<mergeCells>${'<mergeCell ref="A1:B2"/>'.repeat(300_000)}</mergeCells>`),
    said: "",
  },
  "not-a-number-of-a-column.xlsx": { bytes: cells('<row r="1"><c r="ZZZZZZZ1"><v>1</v></c></row>'), said: "" },
};

/** Says, when it ends, how much memory it took in kB and for how many microseconds it computed. */
const measured = `process.on("exit", () => {
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  process.stderr.write("\\nUSED " + maxRSS + " " + (userCPUTime + systemCPUTime));
}); await import(process.argv[1]);`;

test.each(Object.entries(hostile))("%s ends within 2 s and 300 MB with a message", (name, { bytes, said }) => {
  const folder = written(temporaryFolder(), { [name]: bytes });
  const words = ["--input-type=module", "-e", measured, "--", command, "check", join(folder, name)];
  const { status, stdout, stderr } = spawnSync(process.execPath, words, { encoding: "utf8" });
  const [, kilobytes, microseconds] = /USED (\d+) (\d+)$/u.exec(stderr) ?? [];
  expect(status).toBe(2);
  expect(`${stdout}${stderr}`).toContain(said);
  expect(`${stdout}${stderr}`).toContain(`wrong  ${folder}`);
  expect(Number(kilobytes)).toBeLessThan(300_000);
  expect(Number(microseconds)).toBeLessThan(2_000_000);
});
