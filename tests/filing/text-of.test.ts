import { expect, test } from "vitest";
import { textOf } from "../../src/filing/text-of.ts";

test("a file is its text with its byte order mark; one that is not there is empty", async () => {
  const bytes = new Uint8Array([0xef, 0xbb, 0xbf, 0x61]);
  expect(await textOf({ read: async () => bytes }, "x")).toBe("\ufeffa");
  expect(await textOf({ read: async () => undefined }, "x")).toBe("");
});
