import { mkdirSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { nodeDisk } from "../../src/cli/node-disk.ts";
import { CannotWrite } from "../../src/jobs/disk.ts";
import { filesBelow, temporaryFolder, written } from "./built-command.ts";

test("a folder is read as its files by name, without what lies in folders below", async () => {
  const folder = written(temporaryFolder(), { "b.csv": "2", "a.csv": "1", "below/c.csv": "3" });
  const found = await nodeDisk.read(folder);
  expect(found?.isFolder).toBe(true);
  expect(found?.files.map(({ name }) => name)).toEqual(["a.csv", "b.csv"]);
  expect(found?.files.map(({ path }) => path)).toEqual([join(folder, "a.csv"), join(folder, "b.csv")]);
  expect(new TextDecoder().decode(found?.files[1]?.bytes)).toBe("2");
});

test("a symbolic link to a file is read as that file; one that leads nowhere, or to a folder, is passed over", async () => {
  const elsewhere = written(temporaryFolder(), { "kept.csv": "2", "inner/x.csv": "3" });
  const folder = written(temporaryFolder(), { "a.csv": "1" });
  symlinkSync(join(elsewhere, "kept.csv"), join(folder, "b.csv"));
  symlinkSync(join(elsewhere, "gone.csv"), join(folder, "c.csv"));
  symlinkSync(join(elsewhere, "inner"), join(folder, "d.csv"));
  const found = await nodeDisk.read(folder);
  expect(found?.files.map(({ name }) => name)).toEqual(["a.csv", "b.csv"]);
  expect(found?.files.map(({ path }) => path)).toEqual([join(folder, "a.csv"), join(folder, "b.csv")]);
  expect(new TextDecoder().decode(found?.files[1]?.bytes)).toBe("2");
});

test("what is not wanted is not read: a file that may not be read does not stop the others", async () => {
  const folder = written(temporaryFolder(), { "a.csv": "1", "photo.jpg": "2" });
  const asked: string[] = [];
  const found = await nodeDisk.read(folder, (name) => {
    asked.push(name);
    return name.endsWith(".csv");
  });
  expect(asked.sort()).toEqual(["a.csv", "photo.jpg"]);
  expect(found?.files.map(({ name }) => name)).toEqual(["a.csv"]);
});

test("a file is read as itself, and nothing where there is none", async () => {
  const folder = written(temporaryFolder(), { "a.csv": "1" });
  expect(await nodeDisk.read(join(folder, "a.csv"))).toMatchObject({
    isFolder: false,
    files: [{ name: "a.csv", path: join(folder, "a.csv") }],
  });
  expect(await nodeDisk.read(join(folder, "b.csv"))).toBeUndefined();
  expect(await nodeDisk.namesIn(folder)).toEqual(["a.csv"]);
  expect(await nodeDisk.namesIn(join(folder, "none"))).toBeUndefined();
});

test("files are written together, over older ones, with their folders and nothing beside them", async () => {
  const folder = written(temporaryFolder(), { "x/a.json": "old" });
  await nodeDisk.writeTogether([
    { path: join(folder, "x/a.html"), text: "page" },
    { path: join(folder, "x/a.json"), text: "new" },
  ]);
  expect(filesBelow(folder)).toEqual(["x/a.html", "x/a.json"]);
  expect(readFileSync(join(folder, "x/a.json"), "utf8")).toBe("new");
});

test("where one of them cannot be written none is, and no temporary file stays", async () => {
  const folder = written(temporaryFolder(), { "x/a.html": "old", blocked: "a file where a folder should be" });
  const together = nodeDisk.writeTogether([
    { path: join(folder, "x/a.html"), text: "page" },
    { path: join(folder, "blocked/a.json"), text: "data" },
  ]);
  await expect(together).rejects.toThrow(CannotWrite);
  expect(filesBelow(folder)).toEqual(["blocked", "x/a.html"]);
  expect(readFileSync(join(folder, "x/a.html"), "utf8")).toBe("old");
});

test("a folder in the place of one of them leaves all of them alone", async () => {
  const folder = written(temporaryFolder(), { "x/a.html": "old" });
  mkdirSync(join(folder, "x/a.json"));
  const together = nodeDisk.writeTogether([
    { path: join(folder, "x/a.html"), text: "page" },
    { path: join(folder, "x/a.json"), text: "data" },
  ]);
  await expect(together).rejects.toThrow(/a folder is in the place of .*a\.json/u);
  expect(readFileSync(join(folder, "x/a.html"), "utf8")).toBe("old");
  expect(filesBelow(folder)).toEqual(["x/a.html"]);
});
