import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeDisk } from "../node-disk.ts";
import { replaceSecretFile, writeSecretFile } from "../secret-file.ts";

/** The options of `spanwright keys new` as the command line gives them. */
export type KeysNewOptions = { name: string; role: string; out?: string };

/** `spanwright keys new`: a key for one person, and its row of the table of signers. */
export async function keysNewCommand({ name, role, out }: KeysNewOptions, console: Console): Promise<0 | 2> {
  const { newKey } = await import("../../jobs/signing/new-key.ts");
  const disk = { read: nodeDisk.read, writeSecret: writeSecretFile };
  const { key, problems } = await newKey(disk, { name, role, out, today: console.today(), ask: console.askSecret });
  complainOf(problems, console);
  if (key === undefined) return 2;
  console.print(
    [
      `wrote ${key.path}: keep it, and its passphrase, to yourself; who has both signs in your name`,
      `its key id is ${key.keyId}`,
      "for whoever keeps signers.csv, the row to add, valid_to and may_sign as the site decides:",
      ...key.table,
    ].join("\n"),
  );
  return 0;
}

/** `spanwright keys passphrase`: the same key under another passphrase. */
export async function keysPassphraseCommand(path: string, console: Console): Promise<0 | 2> {
  const { changePassphrase } = await import("../../jobs/signing/change-passphrase.ts");
  const disk = { read: nodeDisk.read, replaceSecret: replaceSecretFile };
  const { keyId, problems } = await changePassphrase(disk, path, console.askSecret);
  complainOf(problems, console);
  if (keyId === undefined) return 2;
  console.print(`${path} has another passphrase; it is the same key, ${keyId}. Copies of it keep the old one`);
  return 0;
}

export const addKeysCommand: AddCommand = (program, console, settle) => {
  const keys = program.command("keys").description("keys that people sign records with");
  keys
    .command("passphrase")
    .description("give a key another passphrase; the old one and, twice, the new one are asked for")
    .requiredOption("--key <file>", "key file that spanwright keys new wrote")
    .action(async ({ key }: { key: string }) => {
      settle(await keysPassphraseCommand(key, console));
    });
  keys
    .command("new")
    .description("make a key; its passphrase is asked for twice, never taken from an option, a variable or a file")
    .requiredOption("--name <name>", "name of the person, as signatures print it")
    .requiredOption("--role <role>", "what the person is there, such as technician")
    .option("--out <file>", "file of the key; without it, the name with .key.pem")
    .action(async (options: KeysNewOptions) => {
      settle(await keysNewCommand(options, console));
    });
};
