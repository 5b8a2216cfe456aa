import { type ChildProcess, spawn } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import type { SignedPage } from "../../src/filing/file-page.ts";
import { samplePage } from "./sample-pages.ts";

/** Pages of five loops on the disk, to be filed. */
export type PagesOnDisk = readonly { path: string; page: SignedPage }[];

export function pagesOnDisk(folder: string, count: number, name: string): PagesOnDisk {
  mkdirSync(folder, { recursive: true });
  return Array.from({ length: count }, (_, index) => {
    const page = samplePage({ tag: `LT-${index % 5}`, calibration: `${name}-${index}` });
    const path = join(folder, `${name}-${index}.html`);
    writeFileSync(path, page.bytes);
    return { path, page };
  });
}

/** The program of filing-process.mjs as one file that Node runs. */
export async function builtFilingProcess(folder: string): Promise<string> {
  const program = join(folder, "filing-process.mjs");
  await build({
    entryPoints: [fileURLToPath(new URL("filing-process.mjs", import.meta.url))],
    outfile: program,
    bundle: true,
    format: "esm",
    platform: "node",
    logLevel: "warning",
  });
  return program;
}

/** Begins to file pages in a process of its own; `ended` gives what it complained of, `ready` is when it begins. */
export function filingProcess(program: string, folder: string, pages: PagesOnDisk) {
  const list = join(folder, "..", `${crypto.randomUUID()}.json`);
  writeFileSync(list, JSON.stringify(pages.map(({ path }) => path)));
  const child: ChildProcess = spawn(process.execPath, [program, folder, list], { stdio: ["ignore", "pipe", "pipe"] });
  let complaints = "";
  child.stderr?.on("data", (text) => {
    complaints += String(text);
  });
  const ready = new Promise<void>((settle) => {
    child.stdout?.once("data", () => settle());
    child.once("close", () => settle());
  });
  const ended = new Promise<{ signal: string | null; complaints: string }>((settle) => {
    child.once("close", (_, signal) => settle({ signal, complaints }));
  });
  return { ready, ended, kill: () => child.kill("SIGKILL") };
}
