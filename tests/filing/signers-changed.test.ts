import { expect, test } from "vitest";
import { signersChanged } from "../../src/filing/signers-changed.ts";
import { fileDigest } from "../../src/record/file-digest.ts";
import { sampleLines, textOfLines } from "./sample-lines.ts";

const table: Uint8Array = new TextEncoder().encode("name,role\n");
const other = "a".repeat(64);

const changed = (digests: readonly (string | undefined)[], now: Uint8Array | undefined = table) => {
  const lines = sampleLines(digests.length).map((line, place) => {
    const signersSha256 = digests[place];
    return signersSha256 === undefined ? line : { ...line, signersSha256 };
  });
  const files = new Map<string, Uint8Array>([["f/ledger.jsonl", new TextEncoder().encode(textOfLines(lines))]]);
  if (now !== undefined) files.set("f/signers.csv", now);
  return signersChanged({ read: async (path) => files.get(path) }, "f");
};

test("a change between two filings, and one after the last, is told; nothing where nothing was noted or changed", async () => {
  const { sha256 } = fileDigest(table);
  expect(await changed([undefined, undefined])).toBeUndefined();
  expect(await changed([sha256, undefined, sha256])).toBeUndefined();
  expect(await changed([other, undefined, sha256])).toBe("the table of signers changed between lines 1 and 3");
  expect(await changed([sha256, other])).toBe("the table of signers changed between lines 1 and 2, after line 2");
});
