import { appendFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { changeFolder, filingFolder } from "../../src/filing/filing-folder.ts";
import { type FiledLine, ledgerText } from "../../src/filing/ledger-line.ts";
import { sampleLines, textOfLines } from "./sample-lines.ts";
import { diskWith, temporaryFolder } from "./sample-pages.ts";

/** The action of the n-th sample line, as whoever files enters it. */
function openLine(number: number) {
  const { number: _, at: __, previous: ___, ...open } = sampleLines(number).at(-1) as FiledLine;
  return open;
}

const disk = diskWith({ now: () => "2026-11-25T10:00:00.000+01:00" });

test("what is entered is a line that holds on to the one before", async () => {
  const path = temporaryFolder();
  const folder = filingFolder(disk, path);
  const first = await changeFolder(folder, (enter) => enter<FiledLine>(openLine(1)));
  const second = await changeFolder(folder, (enter) => enter<FiledLine>(openLine(2)));
  expect([first, second]).toEqual(sampleLines(2));
  expect(readFileSync(join(path, "ledger.jsonl"), "utf8")).toBe(textOfLines(sampleLines(2)));
  expect(folder.ledger.lines).toEqual(sampleLines(2));
});

test("what another process entered meanwhile is read first", async () => {
  const path = temporaryFolder();
  const [mine, other] = [filingFolder(disk, path), filingFolder(disk, path)];
  await changeFolder(mine, (enter) => enter<FiledLine>(openLine(1)));
  await changeFolder(other, (enter) => enter<FiledLine>(openLine(2)));
  await changeFolder(mine, (enter) => enter<FiledLine>(openLine(3)));
  expect(readFileSync(join(path, "ledger.jsonl"), "utf8")).toBe(textOfLines(sampleLines(3)));
});

test("a last line that was not finished is taken away before the next", async () => {
  const path = temporaryFolder();
  const text = textOfLines(sampleLines(2));
  writeFileSync(join(path, "ledger.jsonl"), text.slice(0, -40));
  await changeFolder(filingFolder(disk, path), (enter) => enter<FiledLine>(openLine(2)));
  expect(readFileSync(join(path, "ledger.jsonl"), "utf8")).toBe(text);
});

test("nothing is entered into a ledger that does not hold together", async () => {
  const path = temporaryFolder();
  const [first, , third] = sampleLines(3) as [FiledLine, FiledLine, FiledLine];
  const text = textOfLines([first, third]);
  writeFileSync(join(path, "ledger.jsonl"), text);
  const entering = changeFolder(filingFolder(disk, path), (enter) => enter<FiledLine>(openLine(4)));
  await expect(entering).rejects.toMatchObject({
    code: "filing/ledger-broken",
    values: { wrong: "line 2 has the number 3" },
  });
  expect(readFileSync(join(path, "ledger.jsonl"), "utf8")).toBe(text);
});

test("a ledger that was cut under a running process is not gone on with", async () => {
  const path = temporaryFolder();
  const folder = filingFolder(disk, path);
  await changeFolder(folder, (enter) => enter<FiledLine>(openLine(1)));
  await changeFolder(folder, (enter) => enter<FiledLine>(openLine(2)));
  writeFileSync(join(path, "ledger.jsonl"), textOfLines(sampleLines(1)));
  const entering = changeFolder(folder, (enter) => enter<FiledLine>(openLine(3)));
  await expect(entering).rejects.toMatchObject({ code: "filing/ledger-broken" });
  appendFileSync(join(path, "ledger.jsonl"), `${ledgerText(sampleLines(2)[1] as FiledLine)}\n`);
  await changeFolder(folder, (enter) => enter<FiledLine>(openLine(3)));
  expect(readFileSync(join(path, "ledger.jsonl"), "utf8")).toBe(textOfLines(sampleLines(3)));
});
