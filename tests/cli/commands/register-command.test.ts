import { cpSync, existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { runCommandLine } from "../../../src/cli/command-line.ts";
import { madeDemo } from "../../made-demo.ts";
import { temporaryFolder } from "../built-command.ts";
import { recordingConsole } from "../recording-console.ts";

async function run(...words: readonly string[]) {
  const console = recordingConsole();
  const exitCode = await runCommandLine(words, console);
  return { exitCode, printed: console.printed.join("\n"), complained: console.complained.join("\n") };
}

test("a register is written into the folder, page and table, and told in numbers", async () => {
  const folder = temporaryFolder();
  cpSync(join(madeDemo(), "filed"), folder, { recursive: true });
  const { exitCode, printed, complained } = await run("register", folder);
  expect([exitCode, complained]).toEqual([0, ""]);
  const [numbers, page, table] = printed.split("\n");
  expect(numbers).toBe("5 loops, 24 records; 2 overdue, 1 to be decided");
  expect([page, table]).toEqual([`${folder}/register.html`, `${folder}/register.csv`]);
  expect(readFileSync(join(folder, "register.html"), "utf8")).toContain("<title>Register of calibrations, 2026-11-25");
  expect(readFileSync(join(folder, "register.csv"), "utf8").trimEnd().split("\r\n")).toHaveLength(6);
  expect((await run("verify", folder)).printed).not.toMatch(/folder, (?:register|due)\./u);
});

test("of a folder that keeps no records there is no register", async () => {
  const folder = temporaryFolder();
  const { exitCode, printed, complained } = await run("register", folder);
  expect([exitCode, printed]).toEqual([2, ""]);
  expect(complained).toContain("there is no ledger.jsonl in it");
  expect(existsSync(join(folder, "register.html"))).toBe(false);
});

test("page and table have decimal commas where they are asked for; another mark is told, and nothing is written", async () => {
  const folder = temporaryFolder();
  cpSync(join(madeDemo(), "filed"), folder, { recursive: true });
  expect((await run("register", folder, "--decimal-mark", "comma")).exitCode).toBe(0);
  const [head, ...rows] = readFileSync(join(folder, "register.csv"), "utf8").trimEnd().split("\r\n");
  const place = head?.split(";").indexOf("as_found_error_percent_span") ?? -1;
  expect(rows.map((row) => row.split(";")[place]).filter((cell) => /^-?\d+,\d+$/u.test(cell ?? ""))).not.toEqual([]);
  const page = readFileSync(join(folder, "register.html"), "utf8");
  const body = page.slice(page.indexOf("<main>"), page.indexOf("</main>")).replace(/<[^>]*>/gu, "\n");
  expect(body).toMatch(/\d,\d+ %/u);
  expect(body.match(/.*\d\.\d.*/gu)).toBeNull();
  const before = readFileSync(join(folder, "register.csv"), "utf8");
  const { exitCode, complained } = await run("register", folder, "--decimal-mark", "dot");
  expect(exitCode).toBe(2);
  expect(complained).toContain('read "dot"; accepted: point, comma');
  expect(readFileSync(join(folder, "register.csv"), "utf8")).toBe(before);
});

test("yearly files are written where they are asked for, instead of page and table, and told one by one", async () => {
  const folder = join(temporaryFolder(), "filed");
  cpSync(join(madeDemo(), "filed"), folder, { recursive: true });
  const out = join(temporaryFolder(), "fleet");
  const before = readFileSync(join(folder, "register.html"), "utf8");
  const { exitCode, printed, complained } = await run("register", folder, "--parquet", out);
  expect([exitCode, complained]).toEqual([0, ""]);
  const told = printed.split("\n").map((line) => /^(\d+) records?: (.+\/calibrations-\d{4}\.parquet)$/u.exec(line));
  expect(told.map((found) => Number(found?.[1])).reduce((sum, one) => sum + one, 0)).toBe(24);
  for (const found of told) expect(existsSync(found?.[2] ?? "")).toBe(true);
  expect(readFileSync(join(folder, "register.html"), "utf8")).toBe(before);
  const asJson = JSON.parse((await run("register", folder, "--parquet", out, "--json")).printed);
  expect(asJson.parquet).toEqual(told.map((found) => ({ path: found?.[2], records: Number(found?.[1]) })));
  const both = await run("register", folder, "--parquet", out, "--on", "2025-01-01");
  expect(both.exitCode).toBe(2);
  expect(both.complained).toContain("--on would change nothing");
});
