import { createHash } from "node:crypto";
import { rmSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { expect, test } from "vitest";
import { programDigest } from "../../src/cli/program-digest.ts";
import { temporaryFolder, written } from "./built-command.ts";

const sha256 = (text: string) => createHash("sha256").update(text).digest("hex");
const list = `${sha256("one")}  cli.js\n${sha256("two")}  part.js\n`;

function program() {
  const folder = written(temporaryFolder(), { "cli.js": "one", "part.js": "two", "program.sha256": list });
  return { folder, url: pathToFileURL(`${folder}/`) };
}

test("the digest is that of the list, as sha256sum gives both", async () => {
  expect(await programDigest(program().url)).toEqual({ sha256: sha256(list), changed: [] });
});

test("a file that was changed, or is gone, makes another digest and is named", async () => {
  const { folder, url } = program();
  writeFileSync(`${folder}/part.js`, "three");
  const changed = await programDigest(url);
  expect(changed?.changed).toEqual(["part.js"]);
  expect(changed?.sha256).toBe(sha256(list.replace(sha256("two"), sha256("three"))));
  rmSync(`${folder}/cli.js`);
  expect((await programDigest(url))?.changed).toEqual(["cli.js", "part.js"]);
});

test("without a list there is no digest", async () => {
  const { folder, url } = program();
  rmSync(`${folder}/program.sha256`);
  expect(await programDigest(url)).toBeUndefined();
});
