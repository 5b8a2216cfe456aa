import { chmodSync, cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { checkSignatures } from "../../../src/proof/check-signatures.ts";
import { readSealedRecord } from "../../../src/record/read-sealed-record.ts";
import { signersTable } from "../../jobs/signed-disk.ts";
import { keyFiles, passphrase, signers } from "../../proof/sample-signing.ts";
import { withText } from "../../workbook/smallest-workbook.ts";
import { filesBelow, spanwright, spanwrightGiven, temporaryFolder, written } from "../built-command.ts";

const byInes = withText("calibrations.csv", "T. Example", "I. Example");

/** Reported once for all; each test has a copy of it. */
const book = Object.fromEntries(Object.entries(byInes).map(([name, text]) => [`book/${name}`, text]));
const whole = mkdtempSync(join(tmpdir(), "spanwright-sign-"));
beforeAll(() => {
  written(whole, book);
  const run = spanwright("report", join(whole, "book"), "--out", join(whole, "out"));
  expect(run).toMatchObject({ exitCode: 0, complaints: "" });
});
afterAll(() => rmSync(whole, { recursive: true }));

/** The record of the smallest workbook, reported, with keys and signers. */
function reported() {
  const root = written(temporaryFolder(), keyFiles);
  cpSync(whole, root, { recursive: true });
  for (const name of Object.keys(keyFiles)) chmodSync(join(root, name), 0o600);
  const report = () => spanwright("report", join(root, "book"), "--out", join(root, "out"));
  writeFileSync(join(root, "out/signers.csv"), signersTable());
  const page = join(root, "out/LT-1/C-1.html");
  const json = join(root, "out/LT-1/C-1.json");
  const sign = (who: "ines" | "ada", as: string, input = `${passphrase}\n`, ...words: readonly string[]) =>
    spanwrightGiven(input, "sign", page, "--as", as, "--key", join(root, `${who}.pem`), ...words);
  const texts = () => [page, json].map((path) => readFileSync(path, "utf8"));
  return { root, report, page, json, sign, texts };
}

test("performed, authorised, issued; then neither sign nor report change it", () => {
  const { root, report, page, sign, texts } = reported();
  const first = sign("ines", "performed");
  expect(first).toMatchObject({ exitCode: 0, complaints: "" });
  expect(first.output).toMatch(/^LT-1 +C-1 +performed +Ines Example +a draft: authorised missing +\S+C-1\.html$/mu);
  const second = sign("ada", "authorised");
  expect(second.output).toMatch(/^LT-1 +C-1 +authorised +Ada Specimen +issued \d{4}-\d\d-\d\d +\S+C-1\.html$/mu);
  const [html = "", json = ""] = texts();
  const read = readSealedRecord(html, page);
  if (!("record" in read)) throw new Error("what was written is a record");
  expect(JSON.parse(json)).toEqual(read.record);
  expect(checkSignatures(read.record, signers)).toEqual([]);

  const third = sign("ada", "reviewed");
  expect(third.exitCode).toBe(2);
  expect(third.complaints).toContain("the record is issued");
  const again = report();
  expect(again.exitCode).toBe(2);
  expect(again.complaints).toContain(
    "the record there is signed, and was not written over; accepted: a new revision with spanwright amend",
  );
  expect(texts()).toEqual([html, json]);
  expect(filesBelow(join(root, "out"))).toEqual(["LT-1/C-1.html", "LT-1/C-1.json", "index.html", "signers.csv"]);
});

test("the time of signing is the clock's, with the offset of the place", () => {
  const { page, sign } = reported();
  const before = Math.floor(Date.now() / 1000) * 1000;
  sign("ines", "performed");
  const read = readSealedRecord(readFileSync(page, "utf8"), page);
  if (!("record" in read)) throw new Error("what was written is a record");
  const header = read.record.signOff.signatures[0]?.protected ?? "";
  const { signedAt } = JSON.parse(Buffer.from(header, "base64url").toString());
  expect(signedAt).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d$/u);
  expect(Date.parse(signedAt)).toBeGreaterThanOrEqual(before);
  expect(Date.parse(signedAt)).toBeLessThanOrEqual(Date.now());
});

test.each([
  ["a wrong passphrase", "another one\n", "performed", "the passphrase does not open the key"],
  ["no passphrase", "", "performed", "no passphrase was given"],
  ["a meaning that there is not", `${passphrase}\n`, "approved", "the option --as cannot be read"],
  ["out of order", `${passphrase}\n`, "authorised", "authorised comes after performed, which is missing"],
])("%s: nothing is signed", (_, input, as, told) => {
  const { sign, texts } = reported();
  const before = texts();
  const { exitCode, output, complaints } = sign("ines", as, input);
  expect({ exitCode, output }).toEqual({ exitCode: 2, output: "" });
  expect(complaints).toContain(told);
  expect(complaints).toContain("nothing was signed");
  expect(complaints).not.toContain(passphrase);
  expect(texts()).toEqual(before);
});

test("a table of signers may be named; without one there, nobody can sign", () => {
  const { root, page, sign } = reported();
  mkdirSync(join(root, "elsewhere/deeper"), { recursive: true });
  const moved = join(root, "elsewhere/deeper/C-1.html");
  writeFileSync(moved, readFileSync(page));
  const words = ["sign", moved, "--as", "performed", "--key", join(root, "ines.pem")];
  const without = spanwrightGiven(`${passphrase}\n`, ...words);
  expect(without.exitCode).toBe(2);
  expect(without.complaints).toContain("no table of signers was found beside the record or in the folder above it");
  const named = spanwrightGiven(`${passphrase}\n`, ...words, "--signers", join(root, "out/signers.csv"));
  expect(named).toMatchObject({ exitCode: 0, complaints: "" });
  expect(sign("ines", "performed", `${passphrase}\n`, "--signers", join(root, "none.csv")).complaints).toContain(
    "no table of signers was found",
  );
});

test("one byte changed in the page, and nobody signs it", () => {
  const { page, sign } = reported();
  const text = readFileSync(page, "utf8");
  writeFileSync(page, text.replace("<h1><bdi>LT-1</bdi></h1>", "<h1><bdi>LT-7</bdi></h1>"));
  const { exitCode, complaints } = sign("ines", "performed");
  expect(exitCode).toBe(2);
  expect(complaints).toContain("is not what this record gives");
});

test("one record is signed and another cannot be: the count agrees with its word", () => {
  const { root, page } = reported();
  const words = ["sign", page, join(root, "out/none.html"), "--as", "performed", "--key", join(root, "ines.pem")];
  const { exitCode, complaints } = spanwrightGiven(`${passphrase}\n`, ...words);
  expect(exitCode).toBe(2);
  expect(complaints).toMatch(/^1 record was signed; the others not$/mu);
});
