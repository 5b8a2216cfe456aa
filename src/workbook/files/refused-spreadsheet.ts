import type { ProblemCode } from "../../problems/catalogue.ts";
import type { Problem } from "../../problems/problem.ts";
import { columnLetters } from "../../units/column-letters.ts";
import { type PackedPart, packedParts, unpackedPart } from "./packed-parts.ts";
import { mostUnpackedBytes, unpackedSize } from "./unpacked-size.ts";

/** The rows times the columns that a sheet may span, empty cells too: three million take 300 MB while they are read. */
export const mostSpannedCells = 3_000_000;

/** Why a spreadsheet is not opened. */
export type Refusal = { code: ProblemCode; values?: Problem["values"] };

/** The beginning of a file of the compound binary kind, in which spreadsheets with a password are wrapped. */
const compoundFile = [0xd0, 0xcf, 0x11, 0xe0] as const;

/** What a wrapped file calls its content, in the characters of such a file. */
const wrappedContent = Buffer.from("EncryptedPackage", "utf16le");

/** Whether a file is refused before anything of it is read as a sheet: too large, with a password, or made to do harm. */
export function refusedSpreadsheet(bytes: Uint8Array): Refusal | undefined {
  if (isWrapped(bytes)) return { code: "tables/spreadsheet-password" };
  if (unpackedSize(bytes) === Infinity) {
    return { code: "tables/spreadsheet-large", values: { megabytes: mostUnpackedBytes / 2 ** 20 } };
  }
  for (const part of packedParts(bytes) ?? []) {
    const refusal = isRead(part) ? refusedPart(part.name, unpackedPart(bytes, part)) : undefined;
    if (refusal !== undefined) return refusal;
  }
  return undefined;
}

function isWrapped(bytes: Uint8Array): boolean {
  return (
    compoundFile.every((byte, at) => bytes[at] === byte) &&
    Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).includes(wrappedContent)
  );
}

function isRead({ name }: PackedPart): boolean {
  return /\.(?:xml|rels)$/iu.test(name);
}

function refusedPart(name: string, content: Uint8Array | "more" | undefined): Refusal | undefined {
  if (content === undefined || content === "more") return undefined;
  const bytes = Buffer.from(content.buffer, content.byteOffset, content.byteLength);
  // A spreadsheet declares no document type (ECMA-376 part 2, 8.1.4); entities could fetch files and grow without end.
  if (bytes.includes("<!DOCTYPE")) return { code: "tables/spreadsheet-entity", values: { part: name } };
  if (name === "META-INF/manifest.xml" && bytes.includes("encryption-data")) {
    return { code: "tables/spreadsheet-password" };
  }
  return /^xl\/worksheets\/[^/]+\.xml$/u.test(name) ? refusedExtent(bytes) : undefined;
}

/** A row or a cell, with its reference where it has one. */
const rowOrCell = /<(?:\w+:)?(c|row)(?=[\s>/])(?:[^>]*?\sr\s*=\s*["']([A-Za-z]{0,3})(\d{1,9})["'])?/gu;

/** Two cells far apart make a sheet of thousands of millions. What has no reference stands behind what comes before it. */
function refusedExtent(bytes: Buffer): Refusal | undefined {
  let [rows, columns, row, column] = [0, 0, 0, 0];
  for (const [, what, letters = "", number] of bytes.toString("latin1").matchAll(rowOrCell)) {
    if (number !== undefined) row = Number(number);
    else if (what === "row") row += 1;
    if (what === "row") column = 0;
    else column = letters === "" ? column + 1 : columnNumber(letters);
    rows = Math.max(rows, row);
    columns = Math.max(columns, column);
  }
  if (rows * Math.max(1, columns) <= mostSpannedCells) return undefined;
  const corner = `${columnLetters(Math.max(0, columns - 1))}${rows}`;
  return { code: "tables/spreadsheet-extent", values: { corner, most: mostSpannedCells } };
}

function columnNumber(letters: string): number {
  let number = 0;
  for (const letter of letters.toUpperCase()) number = 26 * number + letter.charCodeAt(0) - 64;
  return number;
}
