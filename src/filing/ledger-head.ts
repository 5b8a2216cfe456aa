import { fingerprintOf } from "../proof/fingerprint-words.ts";
import type { Doubt } from "../record/doubt.ts";
import { checkLedger } from "./check-ledger.ts";
import type { FilingDisk } from "./filing-disk.ts";
import { type Ledger, ledgerName } from "./ledger.ts";
import { noLine } from "./ledger-line.ts";
import { textOf } from "./text-of.ts";

/** How many lines a ledger has, the hash of the last, and its short form in words and digits. */
export type LedgerHead = { lines: number; sha256: string; fingerprint: string };

/** Fewer digits of a hash could be met by trying. */
const fewestDigits = 16;

/**
 * The head of a folder's ledger, to be noted elsewhere: on paper, in the log of another system.
 *
 * A chain shows every change inside it. That its last lines were taken off together with their files, or that all of it
 * was written anew, shows only against a head that was noted before.
 */
export async function ledgerHead(disk: Pick<FilingDisk, "read">, folder: string): Promise<LedgerHead> {
  const { hashes } = await readLedger(disk, folder);
  return headOf({ count: hashes.length, head: hashes.at(-1) ?? noLine });
}

/** The head of a ledger as far as this process has read or written it. */
export function headOf({ count, head }: Pick<Ledger, "count" | "head">): LedgerHead {
  return { lines: count, sha256: head, fingerprint: fingerprintOf(head) };
}

/**
 * Doubts about a ledger against a head that was noted before: it has to be the hash of one of its lines, for a ledger
 * only grows.
 *
 * @param noted the 64 hexadecimal digits, or at least the first 16 as the fingerprint prints them, with or without its
 *   words
 */
export async function checkLedgerHead(
  disk: Pick<FilingDisk, "read">,
  folder: string,
  noted: string,
): Promise<readonly Doubt[]> {
  const digits = notedDigits(noted);
  const doubt = (says: string): readonly Doubt[] => [{ about: "ledger", place: ledgerName, says }];
  if (digits === undefined) {
    return doubt(`the noted head cannot be read: at least ${fewestDigits} hexadecimal digits of it are needed`);
  }
  const { hashes } = await readLedger(disk, folder);
  if (digits === noLine || hashes.some((hash) => hash.startsWith(digits))) return [];
  return doubt("no line has the noted head: lines that were there when it was noted are gone, or were altered");
}

/**
 * The line of a ledger whose hash was noted; nothing where none has it, and where the ledger is in doubt.
 *
 * @param noted as for `checkLedgerHead`
 */
export async function lineOfHead(
  disk: Pick<FilingDisk, "read">,
  folder: string,
  noted: string,
): Promise<number | undefined> {
  const digits = notedDigits(noted);
  const { hashes, doubts } = await readLedger(disk, folder);
  const place = digits === undefined ? -1 : hashes.findIndex((hash) => hash.startsWith(digits));
  return place === -1 || doubts.length > 0 ? undefined : place + 1;
}

function notedDigits(noted: string): string | undefined {
  const digits = (noted.split("·").at(-1) ?? "").replace(/\s/gu, "").toLowerCase();
  return /^[0-9a-f]+$/u.test(digits) && digits.length >= fewestDigits && digits.length <= 64 ? digits : undefined;
}

async function readLedger(disk: Pick<FilingDisk, "read">, folder: string) {
  return checkLedger(await textOf(disk, `${folder}/${ledgerName}`));
}
