import { ProblemList } from "../../problems/problem-list.ts";
import type { Disk } from "../disk.ts";
import { findSigners, type SignersTable } from "./find-signers.ts";

/** The table by which a record's signatures are checked; nothing where none was found. */
export type FindSigners = (record: string) => Promise<SignersTable | undefined>;

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
    return async () => table;
  }
  const byFolder = new Map<string, SignersTable | undefined>();
  return async (record) => {
    const folder = record.replace(/[^\\/]*$/u, "");
    if (!byFolder.has(folder)) {
      byFolder.set(folder, await findSigners(disk, record, undefined, new ProblemList()));
    }
    return byFolder.get(folder);
  };
}
