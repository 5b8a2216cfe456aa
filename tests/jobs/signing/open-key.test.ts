import { generateKeyPairSync } from "node:crypto";
import { expect, test } from "vitest";
import { openKey } from "../../../src/jobs/signing/open-key.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { ada, keyFiles } from "../../proof/sample-signing.ts";
import { memoryDisk } from "../memory-disk.ts";

const text = keyFiles["ada.pem"];

async function opened(content: string | undefined, passphrase: string | undefined) {
  const problems = new ProblemList();
  const asked: string[] = [];
  const ask = async (question: string) => {
    asked.push(question);
    return passphrase;
  };
  const disk = memoryDisk(content === undefined ? { "a.pem/inside": "" } : { "a.pem": content });
  const key = await openKey(disk, "a.pem", { ask }, problems);
  return { keyId: key?.keyId, asked, told: problems.all.map(sentence) };
}

test("the passphrase opens the key", async () => {
  expect(await opened(text, "twelve characters")).toEqual({
    keyId: ada.key.keyId,
    asked: ["passphrase of a.pem: "],
    told: [],
  });
});

test.each([
  ["no file", undefined, "there is no such file"],
  ["a table", "name,role\n", "there is no private key in it"],
  [
    "a key in clear",
    String(generateKeyPairSync("ed25519").privateKey.export({ type: "pkcs8", format: "pem" })),
    "the key in it is not encrypted",
  ],
])("%s is refused before anybody is asked for a passphrase", async (_, content, why) => {
  expect(await opened(content, "twelve characters")).toEqual({
    keyId: undefined,
    asked: [],
    told: [`a.pem: this cannot be signed with: ${why}; accepted: a key file that spanwright keys new wrote`],
  });
});

test("a wrong passphrase, and none, are told", async () => {
  expect((await opened(text, "twelve Characters")).told[0]).toContain("the passphrase does not open the key");
  expect((await opened(text, undefined)).told[0]).toContain("no passphrase was given");
});
