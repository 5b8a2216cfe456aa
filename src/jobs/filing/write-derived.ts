import { indexName } from "../../filing/filing-index.ts";
import { ledgerName } from "../../filing/ledger.ts";
import { signersName } from "../../filing/signers-changed.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { looksLikeRecord } from "../../record/looks-like-record.ts";
import type { Disk } from "../disk.ts";
import { writeOrTell } from "../write-or-tell.ts";

/** What lies under these names cannot be made anew, or is asked whom to believe. */
const keptNames: readonly string[] = [ledgerName, indexName, signersName];

/** Writes what is made from records, at a path that was typed: never over a record, nor over what a folder keeps. */
export async function writeDerived(
  disk: Pick<Disk, "read" | "writeTogether">,
  path: string,
  text: string,
  problems: ProblemList,
): Promise<boolean> {
  if (await isKept(disk, path, problems)) return false;
  return writeOrTell(() => disk.writeTogether([{ path, text }]), path, problems);
}

/** Whether what lies there has to stay, which is told. */
export async function isKept(disk: Pick<Disk, "read">, path: string, problems: ProblemList): Promise<boolean> {
  const isThere = await isKeptThere(disk, path);
  if (isThere) problems.add("options/record-there", { file: path });
  return isThere;
}

async function isKeptThere(disk: Pick<Disk, "read">, path: string): Promise<boolean> {
  const there = await disk.read(path, () => false);
  if (there === undefined || there.isFolder) return false;
  const name = path.split(/[\\/]/u).at(-1) ?? "";
  return keptNames.includes(name) || there.files.some(({ bytes }) => looksLikeRecord(new TextDecoder().decode(bytes)));
}
