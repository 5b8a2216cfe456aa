import { fileDigest } from "../record/file-digest.ts";
import { bytesOrWhy } from "./bytes-or-why.ts";
import { filedPages } from "./filed-lines.ts";
import type { FilingDisk } from "./filing-disk.ts";

/** The table of signers inside a folder of filed records. */
export const signersName = "signers.csv";

/**
 * When the table of signers changed, as far as the ledger noted by which one the signatures of each page were checked;
 * nothing where it did not. People come and go: that is no doubt, and yet to be known.
 */
export async function signersChanged(disk: Pick<FilingDisk, "read">, folder: string): Promise<string | undefined> {
  const { standing } = await filedPages(disk, folder);
  const noted = standing.flatMap(({ number, signersSha256 }) =>
    signersSha256 === undefined ? [] : [{ number, signersSha256 }],
  );
  const changes = noted.flatMap(({ number, signersSha256 }, place) => {
    const before = noted[place - 1];
    if (before === undefined || before.signersSha256 === signersSha256) return [];
    return [`between lines ${before.number} and ${number}`];
  });
  const bytes = await bytesOrWhy(disk, `${folder}/${signersName}`);
  const now = bytes === undefined || "why" in bytes ? undefined : fileDigest(bytes).sha256;
  const last = noted.at(-1);
  if (last !== undefined && now !== undefined && now !== last.signersSha256) changes.push(`after line ${last.number}`);
  return changes.length === 0 ? undefined : `the table of signers changed ${changes.join(", ")}`;
}
