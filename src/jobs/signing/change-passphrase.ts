import { ProblemList } from "../../problems/problem-list.ts";
import { keyFileText } from "../../proof/signing-key.ts";
import type { Disk } from "../disk.ts";
import { writeOrTell } from "../write-or-tell.ts";
import { newPassphrase } from "./new-key.ts";
import { type AskPassphrase, openKey } from "./open-key.ts";

/** Puts a file that its owner alone may read in the place of the one that is there, in one step. */
export type ReplacingDisk = Pick<Disk, "read"> & { replaceSecret: (path: string, text: string) => Promise<void> };

/** Gives a key another passphrase: it is the same key, and its row of the table of signers stays as it is. */
export async function changePassphrase(
  disk: ReplacingDisk,
  path: string,
  ask: AskPassphrase,
): Promise<{ keyId: string | undefined; problems: ProblemList }> {
  const problems = new ProblemList();
  const key = await openKey(disk, path, { ask }, problems);
  const passphrase = key && (await newPassphrase({ ask, path }, problems));
  if (key === undefined || passphrase === undefined) return { keyId: undefined, problems };
  const isWritten = await writeOrTell(() => disk.replaceSecret(path, keyFileText(key, passphrase)), path, problems);
  return { keyId: isWritten ? key.keyId : undefined, problems };
}
