import { expect, test } from "vitest";
import { refusedSpreadsheet } from "../../../src/workbook/files/refused-spreadsheet.ts";
import { spreadsheet } from "../spreadsheet.ts";
import { zipOf, zipOfParts } from "../zip-of.ts";

const code = (bytes: Uint8Array) => refusedSpreadsheet(bytes)?.code;
const sheet = (xml: string) => zipOfParts({ "xl/worksheets/sheet1.xml": xml });

test("a spreadsheet as it is saved is not refused, nor what is none: its reader tells", async () => {
  expect(refusedSpreadsheet(await spreadsheet("readings", "signal\n1"))).toBeUndefined();
  expect(refusedSpreadsheet(new Uint8Array(100))).toBeUndefined();
});

test("a password is told by the file that wraps a spreadsheet, or by the list of its parts", () => {
  const wrapped = Buffer.concat([
    Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]),
    Buffer.alloc(504),
    Buffer.from("EncryptedPackage", "utf16le"),
  ]);
  expect(code(wrapped)).toBe("tables/spreadsheet-password");
  expect(code(wrapped.subarray(0, 512))).toBeUndefined();
  const manifest = "<manifest:encryption-data manifest:checksum='x'/>";
  expect(code(zipOfParts({ "META-INF/manifest.xml": manifest }))).toBe("tables/spreadsheet-password");
});

test("a document type is refused wherever it stands in a part, and in words of a cell it is none", () => {
  expect(code(sheet(`<!-- ${"x".repeat(5000)} --><!DOCTYPE a><worksheet/>`))).toBe("tables/spreadsheet-entity");
  expect(code(sheet("<c t='inlineStr'>&lt;!DOCTYPE a&gt;</c>"))).toBeUndefined();
});

test("a sheet is refused by how far apart its cells lie, not by what it says of itself", () => {
  const far = refusedSpreadsheet(
    sheet('<dimension ref="A1"/><row r="1"><c r="A1"/></row><row r="1048576"><c r="XFD1048576"/></row>'),
  );
  expect(far).toMatchObject({ code: "tables/spreadsheet-extent", values: { corner: "XFD1048576" } });
  expect(code(sheet("<x:row r='1048576'><x:c s='1' r='D1048576'/></x:row>"))).toBe("tables/spreadsheet-extent");
  expect(code(sheet('<dimension ref="A1:XFD1048576"/><row r="200000"><c r="O200000"/></row>'))).toBeUndefined();
  const nameless = `<row r="9">${"<c/>".repeat(16_000)}</row><row/>`;
  expect(code(sheet(`${nameless}<row r="500"><c/></row>`))).toBe("tables/spreadsheet-extent");
  expect(code(sheet(nameless))).toBeUndefined();
});

test("more bytes than may be unpacked are too large", () => {
  expect(code(zipOf("xl/workbook.xml", new Uint8Array(), 2 ** 31))).toBe("tables/spreadsheet-large");
});
