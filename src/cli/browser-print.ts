import { spawn } from "node:child_process";
import { mkdtemp, readFile, rename, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { type Attached, attachJson } from "./attach-json.ts";
import { removeLeftOvers, temporaryBeside } from "./left-overs.ts";
import type { Paper } from "./paper.ts";

const longestPrintMilliseconds = 60_000;

export type PrintSettings = { paper: Paper /** The first sheet alone. */; isCertificate: boolean };

/**
 * Printing the text of a page with a browser of the Chromium family, without scripts and without a network, with a profile
 * that is thrown away, and the record inside as JSON; a
 * file is whole or not there.
 */
export function browserPrint(browser: string, settings: PrintSettings) {
  return async (page: string, target: string, attached: Attached): Promise<{ why: string } | undefined> => {
    const temporary = resolve(temporaryBeside(target));
    const profile = await mkdtemp(join(tmpdir(), "spanwright-print-"));
    const styled = join(profile, "page.html");
    try {
      await writeFile(styled, styledPage(page, settings));
      const why = await ended(browser, words(styled, temporary, profile));
      if (!(await isPdf(temporary))) return { why: why ?? "the browser wrote no PDF" };
      await attachJson(temporary, attached);
      await rename(temporary, target);
      await removeLeftOvers([target]);
      return undefined;
    } finally {
      await rm(temporary, { force: true });
      await rm(profile, { recursive: true, force: true, maxRetries: 3 }).catch(() => undefined);
    }
  };
}

/** Browsers print nothing where an option turns scripts off altogether. */
const noScripts = `<meta http-equiv="Content-Security-Policy" content="script-src 'none'; connect-src 'none'">`;

/** The page with the size of its paper, which no option of a browser gives. */
function styledPage(page: string, { paper, isCertificate }: PrintSettings): string {
  const style = `@page{size:${paper}}${isCertificate ? ".annex{display:none!important}" : ""}`;
  return page.replace("</head>", `${noScripts}<style>${style}</style></head>`);
}

function words(page: string, target: string, profile: string): readonly string[] {
  return [
    "--headless",
    "--disable-gpu",
    "--disable-background-networking",
    // A page of ours names no address; if one ever did, nothing would be found there.
    "--host-resolver-rules=MAP * ~NOTFOUND",
    "--no-first-run",
    "--no-pdf-header-footer",
    "--export-tagged-pdf",
    "--generate-pdf-document-outline",
    `--user-data-dir=${profile}`,
    // A browser refuses its sandbox to the system's administrator; a record's page runs no script.
    ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
    `--print-to-pdf=${target}`,
    pathToFileURL(resolve(page)).href,
  ];
}

function ended(browser: string, options: readonly string[]): Promise<string | undefined> {
  return new Promise((settle) => {
    const child = spawn(browser, options, { stdio: "ignore" });
    const timer = setTimeout(() => child.kill("SIGKILL"), longestPrintMilliseconds);
    const end = (why?: string) => {
      clearTimeout(timer);
      settle(why);
    };
    child.on("error", (fault) => end(fault.message));
    child.on("close", (code) => end(code === 0 ? undefined : `the browser ended with code ${code ?? "none"}`));
  });
}

function isPdf(path: string): Promise<boolean> {
  return readFile(path).then(
    (bytes) => bytes.subarray(0, 5).toString("latin1") === "%PDF-",
    () => false,
  );
}
