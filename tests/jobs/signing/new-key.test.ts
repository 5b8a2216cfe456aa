import { expect, test } from "vitest";
import { CannotWrite } from "../../../src/jobs/disk.ts";
import { newKey } from "../../../src/jobs/signing/new-key.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { openKeyFile } from "../../../src/proof/signing-key.ts";
import { readSigners } from "../../../src/workbook/read-signers.ts";
import { memoryDisk } from "../memory-disk.ts";

async function made(who: { name?: string; role?: string; out?: string }, refuses = false) {
  const secrets = new Map<string, string>();
  const disk = {
    ...memoryDisk({}),
    writeSecret: async (path: string, text: string) => {
      if (refuses) throw new CannotWrite("no room");
      secrets.set(path, text);
    },
  };
  const options = { name: "Ada Specimen", role: "engineer", out: undefined, today: "2026-11-25", ...who };
  const { key, problems } = await newKey(disk, { ...options, ask: async () => "twelve characters" });
  return { key, secrets, told: problems.all.map(sentence) };
}

test("a key file is written, and its row of the table of signers can be read as it is", async () => {
  const { key, secrets, told } = await made({ out: "ada.pem" });
  expect(told).toEqual([]);
  expect([...secrets.keys()]).toEqual(["ada.pem"]);
  const opened = openKeyFile(secrets.get("ada.pem") ?? "", "twelve characters");
  expect(opened?.keyId).toBe(key?.keyId);
  const problems = new ProblemList();
  const bytes = new TextEncoder().encode(key?.table.join("\n"));
  expect(readSigners({ name: "signers.csv", bytes }, problems).map(({ row }) => row)).toEqual([
    { name: "Ada Specimen", role: "engineer", publicKey: opened?.publicKey, validFrom: "2026-11-25" },
  ]);
  expect(problems.all).toEqual([]);
});

test("a name with a comma or a quotation mark survives in the row", async () => {
  const { key } = await made({ name: ' Ada "Addy" Specimen, Dr ', role: "head; quality" });
  const problems = new ProblemList();
  const bytes = new TextEncoder().encode(key?.table.join("\n"));
  const [signer] = readSigners({ name: "signers.csv", bytes }, problems);
  expect(signer?.row).toMatchObject({ name: 'Ada "Addy" Specimen, Dr', role: "head; quality" });
});

test("without a path the file is called after the person, never outside the folder", async () => {
  expect((await made({})).key?.path).toMatch(/^Ada-Specimen-[0-9a-f]{8}\.key\.pem$/u);
  expect((await made({ name: "../../ada" })).key?.path).toMatch(/^ada-[0-9a-f]{8}\.key\.pem$/u);
});

test("a name or a role of blanks is none", async () => {
  const { key, told } = await made({ name: " ", role: "" });
  expect(key).toBeUndefined();
  expect(told).toEqual([
    "command line: the option --name cannot be read; accepted: --name with a text",
    "command line: the option --role cannot be read; accepted: --role with a text",
  ]);
});

test("where the disk refuses there is no key", async () => {
  const { key, told } = await made({ out: "ada.pem" }, true);
  expect(key).toBeUndefined();
  expect(told[0]).toContain("ada.pem: nothing could be written there: no room");
});
