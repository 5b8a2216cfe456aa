import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { runCommandLine } from "../../src/cli/command-line.ts";
import { smallestWorkbook, withText } from "../workbook/smallest-workbook.ts";
import { filesBelow, temporaryFolder, written } from "./built-command.ts";
import { recordingConsole } from "./recording-console.ts";

async function run(...words: readonly string[]) {
  const console = recordingConsole();
  const exitCode = await runCommandLine(words, console);
  return { exitCode, printed: console.printed.join("\n"), complained: console.complained.join("\n") };
}

test("a record is reported, filed, amended, filed again, decided about, and verified", async () => {
  const folder = temporaryFolder();
  const book = written(join(folder, "book"), withText("readings.csv", "100,20.01", "100,20.51"));
  const mended = written(join(folder, "mended"), withText("readings.csv", "100,20.01", "100,20.41"));
  const [out, into] = [join(folder, "out"), join(folder, "filed")];
  await run("report", book, "--out", out);

  const refused = await run("file", join(out, "LT-1/C-1.html"), "--into", into);
  expect([refused.exitCode, refused.printed]).toEqual([2, ""]);
  expect(refused.complained).toContain("the record is a draft: it is not yet signed as performed and authorised");

  const filed = await run("file", join(out, "LT-1/C-1.html"), "--into", into, "--signed-on-paper", "binder 7");
  const first = join(into, "LT-1/2026-03-04_C-1_r1.html");
  expect([filed.exitCode, filed.complained]).toEqual([0, ""]);
  expect(filed.printed.split("\n").at(-2)).toMatch(/^LT-1 +C-1 +1 +filed +/u);
  expect(filed.printed.split("\n").at(-1)).toMatch(/^head of the ledger, 1 line, to be noted elsewhere: /u);
  expect(readFileSync(first).equals(readFileSync(join(out, "LT-1/C-1.html")))).toBe(true);

  const amended = await run("amend", first, "--with", mended, "--reason", "a slip", "--by", "T. Example", "--out", out);
  expect([amended.exitCode, amended.complained]).toEqual([0, ""]);
  expect(amended.printed).toMatch(/^revision 2: \d+ fields differ; a draft until it is signed$/mu);

  const again = await run("file", join(out, "LT-1/C-1_r2.html"), "--into", into, "--signed-on-paper", "binder 7");
  expect(again.exitCode).toBe(0);
  const words = ["--decision", "no impact, because the tank was empty", "--by", "A. Example"];
  const decided = await run("decide", into, "LT-1", "C-1", ...words);
  expect(decided).toEqual({
    exitCode: 0,
    printed: "line 3 of the ledger: decided about LT-1, C-1, revision 2",
    complained: "",
  });
  expect(filesBelow(into)).toEqual([
    ...["LT-1/2026-03-04_C-1_r1.html", "LT-1/2026-03-04_C-1_r2.html"],
    ...["index.jsonl", "ledger.jsonl"],
  ]);
  expect((await run("verify", into)).exitCode).toBe(0);
});

test("what cannot be done is told with exit code 2", async () => {
  const folder = temporaryFolder();
  const book = written(join(folder, "book"), smallestWorkbook);
  await run("report", book, "--out", join(folder, "out"));
  const page = join(folder, "out/LT-1/C-1.html");
  const amended = await run("amend", page, "--with", book, "--reason", "a", "--by", "b", "--out", join(folder, "out"));
  expect([amended.exitCode, amended.printed]).toEqual([2, ""]);
  expect(amended.complained).toContain("and no folder of records has it");
  const decided = await run("decide", join(folder, "out"), "LT-1", "C-1", "--decision", "a", "--by", "b");
  expect([decided.exitCode, decided.printed]).toEqual([2, ""]);
  expect((await run("file", page)).complained).toContain("required option '--into <folder>' not specified");
});
