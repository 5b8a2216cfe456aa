import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { runCommandLine } from "../../src/cli/command-line.ts";
import type { SealedRecord } from "../../src/record/record-schema.ts";
import { smallestWorkbook } from "../workbook/smallest-workbook.ts";
import { temporaryFolder, written } from "./built-command.ts";
import { recordingConsole } from "./recording-console.ts";

async function run(...words: readonly string[]) {
  const console = recordingConsole();
  const exitCode = await runCommandLine(words, console);
  return { exitCode, printed: console.printed.join("\n"), complained: console.complained.join("\n") };
}

/** Four years, in which the signal at every point rises by 16 µA a year (0.1 mm of 100 mm); the last one is outside. */
const fourYears = [2023, 2024, 2025, 2026];
const signalIn = (year: number, reference: number) =>
  (4 + 0.16 * reference + (year === 2026 ? 0.1 : 0.016 * (year - 2022))).toFixed(3);
const workbook = {
  ...smallestWorkbook,
  "standards.csv": smallestWorkbook["standards.csv"].replace("2025-06-01", "2023-01-01"),
  "calibrations.csv": `calibration,tag,performed_on,performed_by,standards,adjustment\n${fourYears
    .map((year) => `C-${year},LT-1,${year}-03-04,T. Example,GB-1,none\n`)
    .join("")}`,
  "readings.csv": `calibration,phase,direction,reference,signal\n${fourYears
    .flatMap((year) =>
      [0, 25, 50, 75, 100].map((reference) => `C-${year},as_found,rising,${reference},${signalIn(year, reference)}\n`),
    )
    .join("")}`,
};

test("records made with a folder know what was filed before each of them, and verify without it", async () => {
  const folder = temporaryFolder();
  const book = written(join(folder, "book"), workbook);
  const [out, into] = [join(folder, "out"), join(folder, "filed")];
  await run("report", book, "--out", out);
  const pages = [2023, 2024, 2025].map((year) => join(out, `LT-1/C-${year}.html`));
  expect((await run("file", ...pages, "--into", into, "--signed-on-paper", "binder 7")).exitCode).toBe(0);

  const again = join(folder, "again");
  expect((await run("report", book, "--out", again, "--filed", into)).exitCode).toBe(0);
  const recordOf = (year: number) =>
    JSON.parse(readFileSync(join(again, `LT-1/C-${year}.json`), "utf8")) as SealedRecord;
  const known = fourYears.map((year) => recordOf(year).history?.map(({ calibration }) => calibration));
  expect(known).toEqual([[], ["C-2023"], ["C-2023", "C-2024"], ["C-2023", "C-2024", "C-2025"]]);
  expect(recordOf(2026).filedRate).toEqual({ inTolerance: 3, of: 3 });

  const { impact, recommendation } = recordOf(2026);
  expect(impact?.since).toEqual({ performedOn: "2025-03-04", calibration: "C-2025", revision: 1 });
  expect(recommendation?.history[0]).toMatch(/^The error at 75 mm drifts by \+0\.17 mm a year /u);
  expect(recommendation?.history[1]).toMatch(/^From C-2024 to C-2025: \+0\.1 mm at /u);
  expect((await run("verify", join(again, "LT-1/C-2026.html"))).complained).toBe("");
});

test("a folder into which nothing was filed stops the report", async () => {
  const folder = temporaryFolder();
  const book = written(join(folder, "book"), smallestWorkbook);
  const { exitCode, complained } = await run("report", book, "--out", join(folder, "out"), "--filed", folder);
  expect(exitCode).toBe(2);
  expect(complained).toContain("there is no ledger.jsonl in it");
});
