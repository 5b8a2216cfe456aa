import type { Signer } from "../model/signer.ts";
import { ProblemList } from "../problems/problem-list.ts";
import type { Disk } from "./disk.ts";
import { findSigners } from "./find-signers.ts";

/** The signers by which a record's signatures are checked; nothing where no table was found. */
export type FindSigners = (record: string) => Promise<readonly Signer[] | undefined>;

/**
 * Finds the signers of each record: those of the table that was given, which has to be faultless, or those of a table
 * beside the record, where a row that cannot be read names nobody. A folder is searched once.
 */
export async function signersFor(
  disk: Pick<Disk, "read">,
  given: string | undefined,
  problems: ProblemList,
): Promise<FindSigners> {
  if (given !== undefined) {
    const table = await findSigners(disk, given, given, problems);
    return async () => table?.signers;
  }
  const byFolder = new Map<string, readonly Signer[] | undefined>();
  return async (record) => {
    const folder = record.replace(/[^\\/]*$/u, "");
    if (!byFolder.has(folder)) {
      const table = await findSigners(disk, record, undefined, new ProblemList());
      byFolder.set(folder, table?.signers);
    }
    return byFolder.get(folder);
  };
}
