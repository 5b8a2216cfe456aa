import { safeFileName } from "../../filing/safe-file-name.ts";
import { columnName } from "../../model/column-name.ts";
import { tableColumns } from "../../model/table-columns.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { keyFileText, newSigningKey } from "../../proof/signing-key.ts";
import { weakPassphrase } from "../../proof/weak-passphrase.ts";
import type { Disk } from "../disk.ts";
import { writeOrTell } from "../write-or-tell.ts";
import type { AskPassphrase } from "./open-key.ts";

const leastCharacters = 12;

export type NewKeyOptions = {
  name: string;
  role: string;
  out: string | undefined;
  /** First day on which the key may sign. */
  today: string;
  ask: AskPassphrase;
};

/** Writes a file that only its owner may read, whole, and never over another. */
export type KeyDisk = Pick<Disk, "read"> & { writeSecret: (path: string, text: string) => Promise<void> };

/** A key that was made, where it lies, and its row of the table of signers, below the header. */
export type NewKey = { path: string; keyId: string; table: readonly [header: string, row: string] };

/** Makes a key for one person, encrypted with a passphrase that is asked for twice. */
export async function newKey(
  disk: KeyDisk,
  { name: typedName, role: typedRole, out, today, ask }: NewKeyOptions,
): Promise<{ key: NewKey | undefined; problems: ProblemList }> {
  const problems = new ProblemList();
  const [name, role] = [typedName.trim(), typedRole.trim()];
  const path = out ?? `${safeFileName(name)}.key.pem`;
  for (const [option, text] of Object.entries({ "--name": name, "--role": role })) {
    const accepted = `${option} with a text`;
    if (text === "") problems.add("options/not-understood", { file: "command line" }, { values: { option, accepted } });
  }
  if ((await disk.read(path)) !== undefined) problems.add("signing/key-file-there", { file: path });
  const passphrase = problems.hasStop ? undefined : await newPassphrase({ ask, path, name }, problems);
  if (passphrase === undefined) return { key: undefined, problems };
  const key = newSigningKey();
  const isWritten = await writeOrTell(() => disk.writeSecret(path, keyFileText(key, passphrase)), path, problems);
  if (!isWritten) return { key: undefined, problems };
  const row = { name, role, publicKey: key.publicKey, validFrom: today };
  return { key: { path, keyId: key.keyId, table: tableOf(row) }, problems };
}

/** A passphrase for a key, typed twice; nothing, and a problem, where it is none or would be guessed soon. */
export async function newPassphrase(
  { ask, path, name }: { ask: AskPassphrase; path: string; name?: string },
  problems: ProblemList,
): Promise<string | undefined> {
  const first = await ask(`passphrase for ${path}, ${leastCharacters} characters or more: `);
  if (first === undefined) return refused("signing/passphrase-missing");
  const length = [...first.normalize("NFC")].length;
  if (length < leastCharacters) return refused("signing/passphrase-short", { length, least: leastCharacters });
  const why = weakPassphrase(first, name);
  if (why !== undefined) return refused("signing/passphrase-weak", { why });
  const second = await ask("the same once more: ");
  return second === first ? first : refused("signing/passphrases-differ");

  function refused(code: Parameters<ProblemList["add"]>[0], values: Record<string, number | string> = {}): undefined {
    problems.add(code, { file: path }, { values });
  }
}

function tableOf(row: Readonly<Record<string, string>>): readonly [string, string] {
  const columns = tableColumns("signers");
  const cells = new Map(Object.entries(row).map(([key, text]) => [columnName(key), text]));
  return [
    columns.map(({ name }) => name).join(","),
    columns.map(({ name }) => quoted(cells.get(name) ?? "")).join(","),
  ];
}

function quoted(text: string): string {
  return /[",;\t\r\n]/u.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
