import { readdirSync, utimesSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { removeLeftOvers, temporaryBeside } from "../../src/cli/left-overs.ts";
import { nodeDisk } from "../../src/cli/node-disk.ts";
import { replaceSecretFile } from "../../src/cli/secret-file.ts";
import { filesBelow, temporaryFolder, written } from "./built-command.ts";

const anHourAgo = new Date(Date.now() - 3_600_000);

/** A folder in which an ended process left the files, begun an hour ago. */
function left(...names: readonly string[]): string {
  const folder = written(temporaryFolder(), Object.fromEntries(names.map((name) => [name, "half"])));
  for (const name of readdirSync(folder)) utimesSync(join(folder, name), anHourAgo, anHourAgo);
  return folder;
}

test("what an ended process left beside a file goes when the file is written once more", async () => {
  const folder = left(
    temporaryBeside("a.html"),
    temporaryBeside("a.json"),
    temporaryBeside("b.html"),
    "a.html.old.tmp",
  );
  const files = ["a.html", "a.json"].map((name) => ({ path: join(folder, name), text: "whole" }));
  await nodeDisk.writeTogether(files);
  expect(filesBelow(folder)).toEqual([
    ...["a.html", "a.html.old.tmp", "a.json"],
    expect.stringMatching(/^b\.html\.[0-9a-f-]{36}\.tmp$/u),
  ]);
});

test("the same of a key", async () => {
  const folder = left(temporaryBeside("ines.key"), "ines.key");
  await replaceSecretFile(join(folder, "ines.key"), "whole");
  expect(filesBelow(folder)).toEqual(["ines.key"]);
});

test("what is being written by another process now stays, and so does what lies in a folder that is not there", async () => {
  const folder = written(temporaryFolder(), { [temporaryBeside("a.html")]: "half" });
  await removeLeftOvers([join(folder, "a.html"), join(folder, "none/b.html")]);
  expect(filesBelow(folder)).toHaveLength(1);
});
