import { existsSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { streamTogether } from "../../src/cli/stream-together.ts";
import { CannotWrite } from "../../src/jobs/disk.ts";
import { temporaryFolder, written } from "./built-command.ts";

async function* partsOf(...texts: readonly string[]): AsyncGenerator<Uint8Array> {
  for (const text of texts) yield new TextEncoder().encode(text);
}

async function* failing(): AsyncGenerator<Uint8Array> {
  yield new Uint8Array(10);
  throw new RangeError("no further");
}

test("files are written part after part, over earlier ones, in folders that are made", async () => {
  const folder = written(temporaryFolder(), { "a.bin": "earlier" });
  const [one, other] = [join(folder, "a.bin"), join(folder, "below/b.bin")];
  await streamTogether([
    { path: one, parts: () => partsOf("x", "", "yz") },
    { path: other, parts: () => partsOf() },
  ]);
  expect([readFileSync(one, "utf8"), readFileSync(other, "utf8")]).toEqual(["xyz", ""]);
  expect(readdirSync(folder)).toEqual(["a.bin", "below"]);
});

test("where a part cannot be made, no file is changed, nothing is left beside, and the fault goes on", async () => {
  const folder = written(temporaryFolder(), { "a.bin": "earlier" });
  const files = [
    { path: join(folder, "a.bin"), parts: () => partsOf("later") },
    { path: join(folder, "b.bin"), parts: failing },
  ];
  await expect(streamTogether(files)).rejects.toThrow(RangeError);
  expect(readFileSync(join(folder, "a.bin"), "utf8")).toBe("earlier");
  expect(readdirSync(folder)).toEqual(["a.bin"]);
});

test("where the disk refuses, it says so: a folder in the place of a file, a file in the place of a folder", async () => {
  const folder = written(temporaryFolder(), { "a.bin": "earlier" });
  mkdirSync(join(folder, "taken"));
  const first = { path: join(folder, "a.bin"), parts: () => partsOf("later") };
  for (const path of [join(folder, "taken"), join(folder, "a.bin/b.bin")]) {
    await expect(streamTogether([first, { path, parts: () => partsOf("x") }])).rejects.toThrow(CannotWrite);
    expect(readFileSync(join(folder, "a.bin"), "utf8")).toBe("earlier");
    expect(existsSync(join(folder, "b.bin"))).toBe(false);
  }
  expect(readdirSync(folder)).toEqual(["a.bin", "taken"]);
});
