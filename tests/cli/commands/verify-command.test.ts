import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { version } from "../../../package.json";
import { verifyCommand } from "../../../src/cli/commands/verify-command.ts";
import { reportedRecord } from "../../jobs/reported-records.ts";
import { smallestWorkbook } from "../../workbook/smallest-workbook.ts";
import { temporaryFolder, written } from "../built-command.ts";
import { recordingConsole } from "../recording-console.ts";

const { page, json } = await reportedRecord(smallestWorkbook, { softwareVersion: version });
const { page: pageOfBefore } = await reportedRecord();
const register = "<!doctype html><title>Register of calibrations</title>";

async function run(paths: readonly string[], options = {}) {
  const console = recordingConsole();
  const exitCode = await verifyCommand(paths, options, console);
  return { exitCode, printed: console.printed, complained: console.complained };
}

describe("verify", () => {
  test("ends with 0 where there is no doubt: a line a file, and a count", async () => {
    const folder = written(temporaryFolder(), { "a.html": page, "a.json": json, "register.html": register });
    expect(await run([folder])).toEqual({
      exitCode: 0,
      printed: [
        `ok           ${folder}/a.html  LT-1, C-1, revision 1, not signed`,
        `ok           ${folder}/a.json  LT-1, C-1, revision 1, not signed`,
        `passed over  ${folder}/register.html  no record in it`,
        "2 files verified: no doubt; 1 other file passed over",
      ],
      complained: [],
    });
  });

  test("ends with 1 on any doubt, and says what differs, where", async () => {
    const folder = written(temporaryFolder(), { "a.html": page, "b.html": page.replace("Pass ", "Fail ") });
    const { exitCode, printed } = await run([folder]);
    expect(exitCode).toBe(1);
    expect(printed[1]).toMatch(
      /^doubt {8}\S+\/b\.html {2}LT-1, C-1, revision 1, not signed\n {2}page, (?:under ".*"|top of the page): the record gives "Pass /u,
    );
    expect(printed[2]).toBe("2 files verified: 1 with doubts");
  });

  test("ends with 2 where the command line is wrong, and verifies nothing", async () => {
    const folder = written(temporaryFolder(), { "a.html": page });
    for (const [paths, options] of [
      [[`${folder}/a.html`, `${folder}/gone.html`], {}],
      [[folder], { signers: `${folder}/gone.csv` }],
    ] as const) {
      const { exitCode, printed, complained } = await run(paths, options);
      expect([exitCode, printed, complained.length]).toEqual([2, [], 1]);
    }
  });

  test("says in one more line how far a record of another version could be verified", async () => {
    const folder = written(temporaryFolder(), { "a.html": pageOfBefore });
    const { exitCode, printed } = await run([folder]);
    expect(exitCode).toBe(0);
    expect(printed[0]).toMatch(
      /^ok {11}\S+a\.html {2}LT-1, C-1, revision 1, not signed\n {2}written by spanwright 0\.1\.0 /u,
    );
  });

  test("says of other JSON what it is", async () => {
    const folder = written(temporaryFolder(), { "a.json": "{}" });
    const { exitCode, printed } = await run([join(folder, "a.json")]);
    expect(exitCode).toBe(1);
    expect(printed[0]).toMatch(/\n {2}file, this is JSON, but no record: it is an object without any field$/u);
  });

  test("a name with a line break in it is no line of its own", async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, "a\nok b.html"), page);
    const { printed } = await run([folder]);
    expect(printed[0]?.split("\n")).toHaveLength(1);
  });
});
