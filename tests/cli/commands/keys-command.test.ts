import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { runCommandLine } from "../../../src/cli/command-line.ts";
import { openKeyFile } from "../../../src/proof/signing-key.ts";
import { spanwrightGiven, temporaryFolder, written } from "../built-command.ts";
import { recordingConsole } from "../recording-console.ts";

const passphrase = "twelve characters";
const who = ["--name", "Ada Specimen", "--role", "quality manager"] as const;

function keysNew(input: string, ...words: readonly string[]) {
  const folder = temporaryFolder();
  const out = join(folder, "ada.pem");
  return { ...spanwrightGiven(input, "keys", "new", "--out", out, ...words), folder, out };
}

test("two lines of the standard input make a key, and its row is printed", () => {
  const { exitCode, output, complaints, out } = keysNew(`${passphrase}\n${passphrase}\n`, ...who);
  expect({ exitCode, complaints }).toEqual({ exitCode: 0, complaints: "" });
  const key = openKeyFile(readFileSync(out, "utf8"), passphrase);
  expect(key).toBeDefined();
  expect(statSync(out).mode & 0o777).toBe(0o600);
  const today = new Intl.DateTimeFormat("sv-SE").format(new Date());
  expect(output.trimEnd().split("\n")).toEqual([
    `wrote ${out}: keep it, and its passphrase, to yourself; who has both signs in your name`,
    `its key id is ${key?.keyId}`,
    "for whoever keeps signers.csv, the row to add, valid_to and may_sign as the site decides:",
    "name,role,public_key,valid_from,valid_to,may_sign,revoked_at,revoked_reason",
    `Ada Specimen,quality manager,${key?.publicKey},${today},,,,`,
  ]);
  expect(output).not.toContain(passphrase);
});

test.each([
  ["a short passphrase", "short\nshort\n", "the passphrase has 5 characters; accepted: 12 characters or more"],
  ["two that differ", `${passphrase}\n${passphrase}s\n`, "the two passphrases differ"],
  ["one line only", `${passphrase}\n`, "the two passphrases differ"],
  ["no line at all", "", "no passphrase was given"],
])("%s: nothing is written", (_, input, told) => {
  const { exitCode, output, complaints, folder } = keysNew(input, ...who);
  expect({ exitCode, output }).toEqual({ exitCode: 2, output: "" });
  expect(complaints).toContain(told);
  expect(readdirSync(folder)).toEqual([]);
});

test("a file that is there stays as it was, and nobody is asked", () => {
  const folder = written(temporaryFolder(), { "ada.pem": "mine" });
  const run = spanwrightGiven("", "keys", "new", "--out", join(folder, "ada.pem"), ...who);
  expect(run.exitCode).toBe(2);
  expect(run.complaints).toContain("there is a file already, and a key is never written over another");
  expect(readFileSync(join(folder, "ada.pem"), "utf8")).toBe("mine");
});

test("there is no option for a passphrase, and a name is needed", async () => {
  const run = async (...words: readonly string[]) => {
    const console = recordingConsole();
    return { exitCode: await runCommandLine(["keys", "new", ...words], console), told: console.complained.join("\n") };
  };
  expect(await run(...who, "--passphrase", passphrase)).toMatchObject({
    exitCode: 2,
    told: expect.stringContaining("unknown option '--passphrase'"),
  });
  expect(await run("--role", "engineer")).toMatchObject({ exitCode: 2, told: expect.stringContaining("--name") });
});

test("no variable of the environment takes the place of a passphrase", () => {
  const names = ["SPANWRIGHT_PASSPHRASE", "PASSPHRASE", "KEY_PASSPHRASE"];
  for (const name of names) process.env[name] = passphrase;
  const { exitCode, complaints } = keysNew("", ...who);
  for (const name of names) delete process.env[name];
  expect(exitCode).toBe(2);
  expect(complaints).toContain("no passphrase was given");
});

test("a key gets another passphrase: the same key, the old passphrase opens it no more, its owner alone reads it", () => {
  const { out } = keysNew(`${passphrase}\n${passphrase}\n`, ...who);
  const before = openKeyFile(readFileSync(out, "utf8"), passphrase);
  const changed = spanwrightGiven(
    `${passphrase}\nanother passphrase\nanother passphrase\n`,
    "keys",
    "passphrase",
    "--key",
    out,
  );
  expect(changed).toMatchObject({ exitCode: 0, output: expect.stringContaining(before?.keyId ?? "no key") });
  expect(openKeyFile(readFileSync(out, "utf8"), passphrase)).toBeUndefined();
  expect(openKeyFile(readFileSync(out, "utf8"), "another passphrase")?.keyId).toBe(before?.keyId);
  expect(statSync(out).mode & 0o777).toBe(0o600);
  const wrong = spanwrightGiven("not this one\n", "keys", "passphrase", "--key", out);
  expect(wrong).toMatchObject({ exitCode: 2, complaints: expect.stringContaining("does not open the key") });
});
