import { existsSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { makeFolder } from "../../src/cli/make-folder.ts";
import { temporaryFolder } from "./built-command.ts";

test("missing folders are made from above, and the topmost new one is given", async () => {
  const root = temporaryFolder();
  expect(await makeFolder(join(root, "a", "b", "c"))).toBe(join(root, "a"));
  expect(statSync(join(root, "a/b/c")).isDirectory()).toBe(true);
  expect(await makeFolder(join(root, "a", "b", "d"))).toBe(join(root, "a/b/d"));
  expect(await makeFolder(join(root, "a"))).toBeUndefined();
});

test("several that make the same folder at once all have it", async () => {
  const root = temporaryFolder();
  await Promise.all(Array.from({ length: 20 }, () => makeFolder(join(root, "x", "y", "z"))));
  expect(existsSync(join(root, "x/y/z"))).toBe(true);
});

test("a file in the way is a fault", async () => {
  const root = temporaryFolder();
  writeFileSync(join(root, "file"), "");
  await expect(makeFolder(join(root, "file"))).rejects.toMatchObject({ code: "EEXIST" });
  await expect(makeFolder(join(root, "file", "below"))).rejects.toMatchObject({ code: "ENOTDIR" });
});

test.skipIf(!existsSync("/proc/self"))("a place where the system makes no folder is a fault, at once", async () => {
  await expect(makeFolder("/proc/spanwright/below")).rejects.toMatchObject({ code: "ENOENT" });
});
