import { webcrypto } from "node:crypto";
import { readFile } from "node:fs/promises";

/** The list that the build writes beside the command, in the form of sha256sum. */
const listName = "program.sha256";

/** The digest of the program that runs, and those of its files that are no longer as they were built. */
export type ProgramDigest = { sha256: string; changed: readonly string[] };

/**
 * The SHA-256 of the list of the program's files as they lie there now.
 *
 * @param folder URL of the folder that holds the command
 * @returns nothing where there is no such list: then the program runs from its sources, or not as it was built
 */
export async function programDigest(folder: URL): Promise<ProgramDigest | undefined> {
  const list = await readFile(new URL(listName, folder), "utf8").catch(() => undefined);
  if (list === undefined) return undefined;
  const built = list.split("\n").filter((line) => line !== "");
  const now = await Promise.all(built.map((line) => lineNow(folder, nameIn(line))));
  return {
    sha256: await sha256Of(new TextEncoder().encode(now.map((line) => `${line}\n`).join(""))),
    changed: built.filter((line, index) => line !== now[index]).map(nameIn),
  };
}

function nameIn(line: string): string {
  return line.slice("0".repeat(64).length + 2);
}

async function lineNow(folder: URL, name: string): Promise<string> {
  const bytes = await readFile(new URL(name, folder)).catch(() => undefined);
  return `${bytes === undefined ? "missing" : await sha256Of(bytes)}  ${name}`;
}

/** In a thread of Node's own, for the program has ten megabytes. */
async function sha256Of(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  return Buffer.from(await webcrypto.subtle.digest("SHA-256", bytes)).toString("hex");
}
