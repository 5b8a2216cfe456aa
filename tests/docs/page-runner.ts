import { spawnSync } from "node:child_process";
import { chmodSync, cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { delimiter, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { findBrowser } from "../../src/cli/find-browser.ts";
import { command, temporaryFolder } from "../cli/built-command.ts";
import { madeDemo } from "../made-demo.ts";
import { isRequired } from "../outside/needs-program.ts";
import { type Block, blocksOf, commandsOf, type DocumentedCommand, isAsDocumented } from "./console-blocks.ts";
import { renewedOutput } from "./renewed-output.ts";

export const root = fileURLToPath(new URL("../..", import.meta.url));

/** Answers whatever asks for a passphrase. */
const typed = "twelve characters\n".repeat(2);

type Fault = { line: number; says: string; renewed?: { command: DocumentedCommand; lines: readonly string[] } };

/**
 * Does what a page tells its reader to do, from top to bottom in a folder of its own, and says where the page is wrong.
 * The folder holds data-demo and, as after `npm run demo`, reports; a `csv` block with a name becomes that file. With
 * RENEW_DOCS in the environment, what a command prints now is written into the page, to be reviewed.
 */
export async function faultsOfPage(path: string): Promise<readonly string[]> {
  const page = readFileSync(join(root, path), "utf8");
  const folder = folderFor(page);
  const faults: Fault[] = [];
  for (const block of blocksOf(page)) {
    if (block.language === "csv") writeNamed(folder, block);
    else if (block.language === "console") {
      for (const documented of commandsOf(block)) faults.push(...(await faultsOf(documented, folder)));
    } else faults.push(...faultsOfOther(block));
  }
  if (process.env.RENEW_DOCS === undefined) return faults.map(({ line, says }) => `${path}:${line}: ${says}`);
  writeFileSync(join(root, path), renewedPage(page, faults));
  return faults.filter(({ renewed }) => renewed === undefined).map(({ line, says }) => `${path}:${line}: ${says}`);
}

function renewedPage(page: string, faults: readonly Fault[]): string {
  const lines = page.split("\n");
  for (const { renewed } of faults.toReversed()) {
    if (renewed !== undefined) lines.splice(renewed.command.line, renewed.command.expected.length, ...renewed.lines);
  }
  return lines.join("\n");
}

function folderFor(page: string): string {
  const folder = temporaryFolder();
  const shim = join(folder, ".bin/spanwright");
  mkdirSync(dirname(shim));
  writeFileSync(shim, `#!/bin/sh\nexec "${process.execPath}" "${command}" "$@"\n`);
  chmodSync(shim, 0o755);
  if (page.includes("data-demo")) cpSync(join(root, "data-demo"), join(folder, "data-demo"), { recursive: true });
  if (page.includes("reports/")) cpSync(madeDemo(), join(folder, "reports"), { recursive: true });
  return folder;
}

function writeNamed(folder: string, { line, name, lines }: Block): void {
  if (!/^[\w-]+(?:\/[\w-]+)*\.csv$/u.test(name)) throw new Error(`line ${line}: a csv block has the name of its file`);
  mkdirSync(dirname(join(folder, name)), { recursive: true });
  writeFileSync(join(folder, name), `${lines.join("\n")}\n`);
}

async function faultsOf(documented: DocumentedCommand, folder: string): Promise<readonly Fault[]> {
  const { line, command: words, exitCode, expected } = documented;
  if (/\bspanwright pdf\b/u.test(words) && (await findBrowser(process.env.PATH ?? "")) === undefined) {
    if (isRequired(process.env.CI))
      return [{ line, says: `${words} needs a browser; under CI nothing may be skipped` }];
    process.stderr.write(`NOT CHECKED, no browser is installed: ${words}\n`);
    return [];
  }
  const path = [join(folder, ".bin"), dirname(process.execPath), process.env.PATH].join(delimiter);
  const { status, stdout } = spawnSync("/bin/sh", ["-c", `exec 2>&1\n${words}`], {
    cwd: folder,
    encoding: "utf8",
    env: { ...process.env, PATH: path },
    input: typed,
  });
  const faults = status === exitCode ? [] : [{ line, says: `${words} ended with ${status}, not ${exitCode}` }];
  if (isAsDocumented(expected, stdout)) return faults;
  const says = `${words} does not print\n${expected.join("\n")}\nbut\n${stdout}(npm run docs writes it so)`;
  return [...faults, { line, says, renewed: { command: documented, lines: renewedOutput(expected, stdout) } }];
}

/** Blocks that are not run here: npm's own scripts, which have to exist, and programs, which tests/package runs. */
function faultsOfOther({ line, language, lines }: Block): readonly Fault[] {
  if (language === "ts" || language === "sql") return [];
  if (language !== "sh") return [{ line, says: "a block is console, csv, sh, sql or ts" }];
  const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { scripts: object };
  return lines.flatMap((text, index) => {
    const commands = text.replace(/ +#.*$/u, "").split(" && ");
    const unknown = commands.filter((words) => !isOfNpm(words, Object.keys(scripts)));
    const says = (words: string) => `${words} is not run by any test; write it as a console block`;
    return unknown.map((words) => ({ line: line + 1 + index, says: says(words) }));
  });
}

function isOfNpm(words: string, scripts: readonly string[]): boolean {
  const script = /^npm (?:run )?([\w:]+)$/u.exec(words)?.[1] ?? "";
  return script === "ci" || scripts.includes(script);
}

/** The pages that users read, from the root of the project. */
export function isThere(path: string): boolean {
  return existsSync(join(root, path));
}
