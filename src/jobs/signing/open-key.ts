import type { ProblemList } from "../../problems/problem-list.ts";
import { keyFileFault } from "../../proof/key-file.ts";
import { openKeyFile, type SigningKey } from "../../proof/signing-key.ts";
import type { Disk } from "../disk.ts";

/** Asks for a passphrase; nothing where none is given. */
export type AskPassphrase = (question: string) => Promise<string | undefined>;

/** The rights of a file as octal digits where others than its owner may read it; nothing where they may not. */
export type OpenTo = (path: string) => Promise<string | undefined>;

/** The key of a file, opened with its passphrase; nothing, and a problem, where that does not work. */
export async function openKey(
  disk: Pick<Disk, "read">,
  path: string,
  { ask, openTo }: { ask: AskPassphrase; openTo?: OpenTo | undefined },
  problems: ProblemList,
): Promise<SigningKey | undefined> {
  const found = await disk.read(path);
  const [file] = found?.isFolder === false ? found.files : [];
  const text = file === undefined ? undefined : new TextDecoder().decode(file.bytes);
  const why = text === undefined ? "there is no such file" : keyFileFault(text);
  if (text === undefined || why !== undefined) {
    problems.add("signing/key-file", { file: path }, { values: { why: why ?? "" } });
    return undefined;
  }
  const mode = await openTo?.(path);
  if (mode !== undefined) {
    problems.add("signing/key-file-open", { file: path }, { values: { mode } });
    return undefined;
  }
  const passphrase = await ask(`passphrase of ${path}: `);
  if (passphrase === undefined) {
    problems.add("signing/passphrase-missing", { file: path });
    return undefined;
  }
  const key = openKeyFile(text, passphrase);
  if (key === undefined) problems.add("signing/passphrase-wrong", { file: path });
  return key;
}
