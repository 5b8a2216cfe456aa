import { mkdirSync, readdirSync, readFileSync, statSync, symlinkSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { nodeFilingDisk } from "../../src/cli/node-filing-disk.ts";
import { filesBelow, temporaryFolder, written } from "./built-command.ts";

const disk = nodeFilingDisk(() => undefined);
const text = (bytes: Uint8Array | undefined) => bytes && new TextDecoder().decode(bytes);
const stray = ".0d9c6f1e-6c37-4e8e-9f4a-1a1e4a3f9b11.tmp";

test("a file is read whole or from a byte on; nothing where there is none or where it is shorter", async () => {
  const folder = written(temporaryFolder(), { a: "0123456789" });
  expect(text(await disk.read(join(folder, "a")))).toBe("0123456789");
  expect(text(await disk.readFrom(join(folder, "a"), 7))).toBe("789");
  expect(text(await disk.readFrom(join(folder, "a"), 10))).toBe("");
  expect(await disk.readFrom(join(folder, "a"), 11)).toBeUndefined();
  expect(await disk.read(join(folder, "b"))).toBeUndefined();
  expect(await disk.read(folder)).toBeUndefined();
  expect(text(await disk.readFrom(join(folder, "b"), 0))).toBe("");
  expect(await disk.readFrom(join(folder, "b"), 1)).toBeUndefined();
});

test("files below a folder are listed from there on, links and hidden ones too, folders not", async () => {
  const folder = written(temporaryFolder(), { "b/c/x": "1", a: "2", ".h": "3" });
  symlinkSync(join(folder, "a"), join(folder, "link"));
  mkdirSync(join(folder, "empty"));
  expect(await disk.filesBelow(folder)).toEqual([".h", "a", "b/c/x", "link"]);
  expect(await disk.filesBelow(`${folder}/`)).toEqual([".h", "a", "b/c/x", "link"]);
  expect(await disk.filesBelow(join(folder, "none"))).toBeUndefined();
  expect(await disk.namesIn(folder)).toEqual([".h", "a", "b", "empty", "link"]);
  expect(await disk.namesIn(join(folder, "none"))).toBeUndefined();
});

test("a file is made once, with its folders, and never over another", async () => {
  const folder = temporaryFolder();
  const path = join(folder, "x/y/a");
  expect(await disk.createOnce(path, "first", "durable")).toBe(true);
  expect(await disk.createOnce(path, "second", "durable")).toBe(false);
  expect(readFileSync(path, "utf8")).toBe("first");
  expect(filesBelow(folder)).toEqual(["x/y/a"]);
});

test("while a file is made there is nothing in its place, and then all of it", async () => {
  const path = join(temporaryFolder(), "a");
  const content = new Uint8Array(30_000_000);
  const sizes = new Set<number | undefined>();
  let isDone = false;
  const making = disk.createOnce(path, content, "derived").finally(() => {
    isDone = true;
  });
  while (!isDone) {
    sizes.add(statSync(path, { throwIfNoEntry: false })?.size);
    await new Promise((settle) => setImmediate(settle));
  }
  expect(await making).toBe(true);
  expect([...sizes].filter((size) => size !== content.length)).toEqual([undefined]);
});

test("of twenty that make the same file at once exactly one does", async () => {
  const folder = temporaryFolder();
  const path = join(folder, "a");
  const made = await Promise.all(
    Array.from({ length: 20 }, (_, index) => disk.createOnce(path, `${index}`, "derived")),
  );
  expect(made.filter((one) => one)).toHaveLength(1);
  expect(readFileSync(path, "utf8")).toBe(String(made.indexOf(true)));
  expect(readdirSync(folder)).toEqual(["a"]);
});

test("a folder in the place of a file is not written over either", async () => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, "a"));
  expect(await disk.createOnce(join(folder, "a"), "x", "durable")).toBe(false);
});

test("text is added at the end, cut off, and replaced as a whole", async () => {
  const path = join(temporaryFolder(), "a");
  await disk.append(path, "one\n", "durable");
  await disk.append(path, "two\n", "derived");
  expect(readFileSync(path, "utf8")).toBe("one\ntwo\n");
  await disk.cut(path, 4);
  expect(readFileSync(path, "utf8")).toBe("one\n");
  await disk.replace(path, "new");
  expect(readFileSync(path, "utf8")).toBe("new");
  await disk.remove(path);
  await disk.remove(path);
  expect(await disk.read(path)).toBeUndefined();
});

test("what was left unfinished is swept when it is old enough, and nothing else", async () => {
  const folder = written(temporaryFolder(), { [stray]: "half", "a.tmp": "mine", ".b.tmp": "mine" });
  await disk.sweep(folder, 60_000);
  expect(readdirSync(folder)).toHaveLength(3);
  const before = new Date(Date.now() - 61_000);
  utimesSync(join(folder, stray), before, before);
  await disk.sweep(folder, 60_000);
  expect(readdirSync(folder).toSorted()).toEqual([".b.tmp", "a.tmp"]);
  writeFileSync(join(folder, stray), "half");
  await disk.sweep(folder, 0);
  expect(readdirSync(folder).toSorted()).toEqual([".b.tmp", "a.tmp"]);
  await disk.sweep(join(folder, "none"), 0);
});

test("this process is running, and one that cannot be is not", () => {
  expect(disk.isRunning(process.pid)).toBe(true);
  expect(disk.isRunning(2 ** 30)).toBe(false);
});

test("who waits is told for whom, in a sentence", () => {
  const told: string[] = [];
  nodeFilingDisk((one) => told.push(one)).tellWaiting("process 7 on here");
  expect(told).toEqual(["waiting for process 7 on here, who files into the same folder"]);
});

test("the time has an offset, texts differ, and a pause is short", async () => {
  expect(disk.now()).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}[+-]\d\d:\d\d$/u);
  expect(disk.unique()).not.toBe(disk.unique());
  const start = disk.elapsedMilliseconds();
  await disk.pause();
  expect(disk.elapsedMilliseconds() - start).toBeLessThan(1_000);
});

test("what is no file of its own is listed: a link to a file, to a folder, to nothing", async () => {
  const folder = written(temporaryFolder(), { "b/x": "1", a: "2" });
  symlinkSync(join(folder, "a"), join(folder, "b/link"));
  symlinkSync(join(folder, "b"), join(folder, "folder"));
  symlinkSync(join(folder, "none"), join(folder, "lost"));
  expect(await disk.notFilesBelow(folder)).toEqual(["b/link", "folder", "lost"]);
  expect(await disk.notFilesBelow(join(folder, "none"))).toEqual([]);
});
