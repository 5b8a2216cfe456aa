import { expect, test } from "vitest";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { sentence } from "../../src/problems/sentence.ts";
import { readSigners } from "../../src/workbook/read-signers.ts";

const header = "name,role,public_key,valid_from,valid_to,may_sign\n";
const keyOne = "iojj3XQJ8ZX9UtstPLpdcspnCb8dlBIb83SIAbQPb1w";
const keyTwo = "gTl3Dqh9F19Wo1Rmw0x-zMuNipG07jeiXfYPW4_Js5Q";

function read(text: string | Uint8Array) {
  const problems = new ProblemList();
  const bytes = typeof text === "string" ? new TextEncoder().encode(text) : text;
  const rows = readSigners({ name: "signers.csv", bytes }, problems);
  return { signers: rows.map(({ row }) => row), told: problems.all.map(sentence) };
}

test("a row is a key of a person; empty cells are open", () => {
  expect(read(`${header}Ada Specimen,engineer,${keyOne},2026-01-01,,\n`)).toEqual({
    signers: [{ name: "Ada Specimen", role: "engineer", publicKey: keyOne, validFrom: "2026-01-01" }],
    told: [],
  });
});

test("what it may sign is a list of meanings, spelled as people do", () => {
  const { signers, told } = read(
    `${header}Ada,engineer,${keyOne},2026-01-01,2026-12-31,"Reviewed, AUTHORISED;reviewed"\n`,
  );
  expect(told).toEqual([]);
  expect(signers[0]).toMatchObject({ validTo: "2026-12-31", maySign: ["reviewed", "authorised"] });
});

test("it is read as spreadsheets save it: semicolons, other columns first, byte order mark, UTF-16", () => {
  const text = `public key;Name;Role;valid from\n${keyOne};Zoë;ingénieur;2026-01-01\n`;
  const expected = [{ name: "Zoë", role: "ingénieur", publicKey: keyOne, validFrom: "2026-01-01" }];
  expect(read(`\ufeff${text}`).signers).toEqual(expected);
  const utf16 = new Uint8Array(Buffer.from(`\ufeff${text}`, "utf16le"));
  expect(read(utf16).signers).toEqual(expected);
});

test("one person may have an old key and a new one, and one key several rows of its person", () => {
  const { signers, told } = read(
    `${header}Ada,engineer,${keyOne},2026-01-01,2026-06-30,\nAda,head,${keyOne},2026-07-01,,\nAda,head,${keyTwo},2026-07-01,,\n`,
  );
  expect(told).toEqual([]);
  expect(signers).toHaveLength(3);
});

test("what is wrong is told at its place, and the row cannot sign", () => {
  const { signers, told } = read(
    `${header}Ada,engineer,${keyOne},2026-01-01,,
Tom,engineer,${keyOne},2026-01-01,,
Ines,technician,${keyTwo.slice(0, 42)},2026-01-01,,
Ines,technician,${keyTwo.slice(0, 42)}R,2026-01-01,,
Ines,technician,${keyTwo},2026-12-31,2026-01-01,
Ines,technician,${keyTwo},01/02/2026,,
Ines,technician,${keyTwo},2026-01-01,,seen
Ines,technician,${keyTwo},2026-01-01,,;
,technician,${keyTwo},2026-01-01,,
`,
  );
  expect(signers.map(({ name }) => name)).toEqual(["Ada"]);
  expect(told.map((one) => one.split(";")[0])).toEqual([
    "signers.csv:7:valid_from: this is not a date that can be read in one way only",
    "signers.csv:8:may_sign: this word is not one of those that the column takes",
    "signers.csv:9:may_sign: this word is not one of those that the column takes",
    "signers.csv:10:name: nothing is written here",
    "signers.csv:3:public_key: the key stands at line 2 too, for Ada",
    "signers.csv:4:public_key: this is no public key",
    "signers.csv:5:public_key: this is no public key",
    "signers.csv:6:valid_to: valid_to comes before valid_from",
  ]);
});

test("a table without a column that it needs, or that is no text, gives nobody", () => {
  expect(read(`name,role,valid_from\nAda,engineer,2026-01-01\n`)).toEqual({
    signers: [],
    told: [
      "signers.csv:1: the column public_key is not there; accepted: a first row with the columns name, role, public_key, valid_from",
      "signers.csv:1: its heading lacks a column or has one that is not known, so that nobody in it is known to be a signer; accepted: a heading with the columns that spanwright keys new prints, each by its name",
    ],
  });
  expect(read(new Uint8Array([0x61, 0x81, 0x2c])).told[0]).toContain("no text that a spreadsheet saves");
  expect(read("")).toEqual({ signers: [], told: [] });
});
