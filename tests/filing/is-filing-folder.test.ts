import { expect, test } from "vitest";
import { isFilingFolder } from "../../src/filing/is-filing-folder.ts";

const disk = (names: readonly string[] | undefined) => ({ namesIn: async () => names });

test("a folder with a ledger is one; one without, and none at all, are not", async () => {
  expect(await isFilingFolder(disk(["LT-1", "ledger.jsonl"]), "filed")).toBe(true);
  expect(await isFilingFolder(disk(["LT-1", "ledger.jsonl.old"]), "filed")).toBe(false);
  expect(await isFilingFolder(disk(undefined), "filed")).toBe(false);
});
