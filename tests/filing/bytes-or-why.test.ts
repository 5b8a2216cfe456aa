import { expect, test } from "vitest";
import { bytesOrWhy } from "../../src/filing/bytes-or-why.ts";

test("bytes are given, nothing where there is no file, and the reason where the disk refuses", async () => {
  const bytes = Uint8Array.of(1, 2);
  expect(await bytesOrWhy({ read: async () => bytes }, "x")).toBe(bytes);
  expect(await bytesOrWhy({ read: async () => undefined }, "x")).toBeUndefined();
  expect(await bytesOrWhy({ read: () => Promise.reject(new Error("EACCES")) }, "x")).toEqual({ why: "EACCES" });
});
