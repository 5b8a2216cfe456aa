import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { filePage } from "../../src/filing/file-page.ts";
import type { FilingDisk } from "../../src/filing/filing-disk.ts";
import { filingFolder } from "../../src/filing/filing-folder.ts";
import { ledgerText, lineHash, noLine } from "../../src/filing/ledger-line.ts";
import { sampleLines } from "./sample-lines.ts";
import { diskWith, onPaper, samplePage, temporaryFolder } from "./sample-pages.ts";

/** The ledger of a folder of so many loops. */
function ledgerOf(count: number): string {
  let previous = noLine;
  const texts = sampleLines(count).map((line) => {
    const text = ledgerText({ ...line, tag: `XT-${line.number}`, path: `XT-${line.number}/a.html`, previous });
    previous = lineHash(text);
    return `${text}\n`;
  });
  return texts.join("");
}

/** The disk, and what was read of it and written to it, by the names of files. */
function countingDisk(): { disk: FilingDisk; read: Map<string, number>; written: string[] } {
  const read = new Map<string, number>();
  const written: string[] = [];
  const nameOf = (path: string) => path.slice(path.lastIndexOf("/") + 1);
  const real = diskWith();
  const noted = (path: string, bytes: Uint8Array | undefined) => {
    read.set(nameOf(path), (read.get(nameOf(path)) ?? 0) + (bytes?.length ?? 0));
    return bytes;
  };
  const disk: FilingDisk = {
    ...real,
    read: async (path) => noted(path, await real.read(path)),
    readFrom: async (path, start) => noted(path, await real.readFrom(path, start)),
    createOnce: (path, content, keeping) => {
      written.push(`${nameOf(path)} made`);
      return real.createOnce(path, content, keeping);
    },
    append: (path, text, keeping) => {
      written.push(`${nameOf(path)} +${text.split("\n").length - 1}`);
      return real.append(path, text, keeping);
    },
    replace: (path, text) => {
      written.push(`${nameOf(path)} anew`);
      return real.replace(path, text);
    },
  };
  return { disk, read, written };
}

/** What it costs to file a page into a folder of so many records, that of a new loop or of one that is there. */
async function costOfFiling(count: number, tag: string) {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "ledger.jsonl"), ledgerOf(count));
  const { disk, read, written } = countingDisk();
  const parse = vi.spyOn(JSON, "parse");
  const { line } = await filePage(filingFolder(disk, folder), samplePage({ tag }), onPaper);
  const parsed = parse.mock.calls.length;
  parse.mockRestore();
  expect(line.number).toBe(count + 1);
  return { parsed, ledger: read.get("ledger.jsonl"), index: read.get("index.jsonl"), written };
}

test.each(["LT-1", "XT-3"])("filing a page of %s makes no more of 2000 records than of 20", async (tag) => {
  const [few, many] = [await costOfFiling(20, tag), await costOfFiling(2000, tag)];
  expect(many.parsed).toBe(few.parsed);
  expect(many.parsed).toBeLessThan(5);
  expect(many.written).toEqual(few.written);
  expect(many.written).toEqual([
    ...["filing.lock made", "2026-03-04_C-1_r1.html made"],
    ...["ledger.jsonl +1", "index.jsonl +1"],
  ]);
  expect([few.index, many.index]).toEqual([undefined, undefined]);
});

test("what grows with the folder is the ledger's bytes, each read once, for its chain is checked from its first line on", async () => {
  for (const count of [20, 2000]) {
    const { ledger } = await costOfFiling(count, "LT-1");
    expect(ledger).toBe(ledgerOf(count).length);
  }
});
