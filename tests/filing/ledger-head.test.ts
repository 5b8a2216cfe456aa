import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { checkLedgerHead, ledgerHead } from "../../src/filing/ledger-head.ts";
import { ledgerText, lineHash, noLine } from "../../src/filing/ledger-line.ts";
import { sampleLines, textOfLines } from "./sample-lines.ts";
import { diskWith, temporaryFolder } from "./sample-pages.ts";

const disk = diskWith();
const hashes = sampleLines(5).map((line) => lineHash(ledgerText(line)));

function folderOf(count: number): string {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "ledger.jsonl"), textOfLines(sampleLines(count)));
  return folder;
}

test("the head is the number of lines and the hash of the last, in words too", async () => {
  const head = await ledgerHead(disk, folderOf(3));
  expect(head).toMatchObject({ lines: 3, sha256: hashes[2] });
  expect(head.fingerprint).toMatch(/^\w+ \w+ \w+ \w+ · /u);
  expect(head.fingerprint.replaceAll(" ", "")).toContain((hashes[2] ?? "").slice(0, 16));
  expect(await ledgerHead(disk, temporaryFolder())).toMatchObject({ lines: 0, sha256: noLine });
});

test("a head that was noted is found again however much the ledger has grown, in full or as it was printed", async () => {
  const noted = await ledgerHead(disk, folderOf(3));
  for (const count of [3, 4, 5]) {
    for (const text of [noted.sha256, noted.fingerprint, noted.sha256.slice(0, 16).toUpperCase()]) {
      expect(await checkLedgerHead(disk, folderOf(count), text)).toEqual([]);
    }
  }
});

test("lines taken off the end are found by a head that was noted before", async () => {
  const noted = await ledgerHead(disk, folderOf(5));
  expect(await checkLedgerHead(disk, folderOf(4), noted.sha256)).toEqual([
    {
      about: "ledger",
      place: "ledger.jsonl",
      says: "no line has the noted head: lines that were there when it was noted are gone, or were altered",
    },
  ]);
});

test.each(["", "acorn actor alarm album", "0123456789abcde", "g".repeat(16), "a".repeat(65)])(
  "%j is too little to compare with",
  async (noted) => {
    const [doubt] = await checkLedgerHead(disk, folderOf(1), noted);
    expect(doubt?.says).toBe("the noted head cannot be read: at least 16 hexadecimal digits of it are needed");
  },
);
