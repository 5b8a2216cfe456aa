import { execFileSync } from "node:child_process";
import { copyFileSync, cpSync, mkdirSync, readFileSync, renameSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeEach, describe, expect, test } from "vitest";
import { checkFolder } from "../../src/filing/check-folder.ts";
import { decideFinding } from "../../src/filing/decide-finding.ts";
import { filePage } from "../../src/filing/file-page.ts";
import { filingFolder } from "../../src/filing/filing-folder.ts";
import { type FiledLine, ledgerText, lineHash, readLedgerLine } from "../../src/filing/ledger-line.ts";
import { signingState } from "../../src/proof/signing-state.ts";
import type { SealedRecord } from "../../src/record/record-schema.ts";
import { ada, ines, signedBy } from "../proof/sample-signing.ts";
import { amended, diskWith, onPaper, pageOf, samplePage, temporaryFolder } from "./sample-pages.ts";

const disk = diskWith();
const first = samplePage();
const second = amended(first.record, "put right");
const other = samplePage({ tag: "LT-2", calibration: "C-2", isOutOfTolerance: true });

const firstPath = "LT-1/2026-03-04_C-1_r1.html";
const secondPath = "LT-1/2026-03-04_C-1_r2.html";
const otherPath = "LT-2/2026-03-04_C-2_r1.html";

let folder = "";
const at = (path: string) => join(folder, path);
const told = async () => (await checkFolder(disk, folder)).map(({ place, says }) => `${place}: ${says}`);
const ledgerTexts = () => readFileSync(at("ledger.jsonl"), "utf8").trimEnd().split("\n");
const writeLedger = (texts: readonly string[]) =>
  writeFileSync(at("ledger.jsonl"), texts.map((one) => `${one}\n`).join(""));

const textOf = (record: SealedRecord) =>
  `<!doctype html>\n<script type="application/json" id="record">${JSON.stringify(record).replaceAll("<", "\\u003c")}</script>\n`;

/** Two revisions of one calibration, another that was found out of tolerance, and what was decided about that. */
beforeEach(async () => {
  folder = temporaryFolder();
  const filing = filingFolder(disk, folder);
  for (const page of [first, second, other]) await filePage(filing, page, onPaper);
  await decideFinding(filing, { tag: "LT-2", calibration: "C-2", decision: "no impact, because …", by: "A. Example" });
});

test("a folder as it was filed gives no doubt", async () => {
  expect(await told()).toEqual([]);
});

test("a folder that is not there, or has no ledger, is told", async () => {
  expect(await checkFolder(disk, at("nowhere"))).toEqual([
    { about: "folder", place: at("nowhere"), says: "there is no such folder" },
  ]);
  rmSync(at("ledger.jsonl"));
  expect(await told()).toEqual(["ledger.jsonl: there is no ledger"]);
});

describe("found and named:", () => {
  test("a page removed", async () => {
    rmSync(at(otherPath));
    expect(await told()).toEqual([`${otherPath}: the page is missing; line 3 filed it`]);
  });

  test("a page added", async () => {
    writeFileSync(at("LT-2/2026-03-04_C-3_r1.html"), "a page");
    writeFileSync(at("notes.txt"), "a note");
    const says =
      "the ledger does not name this file: it was added by hand, or its filing was cut off; then file it again";
    expect(await told()).toEqual([`LT-2/2026-03-04_C-3_r1.html: ${says}`]);
    for (const name of ["Thumbs.db", ".DS_Store", "LT-2/page.pdf", "history.html", "register.html.1.tmp"])
      writeFileSync(at(name), "x");
    expect(await told()).toEqual([`LT-2/2026-03-04_C-3_r1.html: ${says}`]);
    writeFileSync(at("loose.html"), samplePage({ calibration: "C-9" }).bytes);
    expect(await told()).toContain(`loose.html: ${says}`);
  });

  test("a page copied", async () => {
    copyFileSync(at(otherPath), at("LT-2/copy.html"));
    expect(await told()).toEqual([`LT-2/copy.html: the ledger does not name this file: it is a copy of ${otherPath}`]);
  });

  test("a page changed by one byte", async () => {
    const bytes = readFileSync(at(otherPath));
    bytes[20] = (bytes[20] ?? 0) ^ 1;
    writeFileSync(at(otherPath), bytes);
    expect(await told()).toEqual([`${otherPath}: the page was changed after it was filed by line 3`]);
  });

  test("a page replaced by its older revision", async () => {
    copyFileSync(at(firstPath), at(secondPath));
    expect(await told()).toEqual([`${secondPath}: revision 2 was replaced by revision 1 of the same calibration`]);
  });

  test("a page replaced by that of another record", async () => {
    copyFileSync(at(otherPath), at(secondPath));
    expect(await told()).toEqual([`${secondPath}: revision 2 was replaced by the page ${otherPath}`]);
  });

  test("a page moved", async () => {
    mkdirSync(at("LT-3"));
    renameSync(at(otherPath), at("LT-3/x.html"));
    expect(await told()).toEqual([`${otherPath}: the page was moved to LT-3/x.html`]);
  });

  test("two pages exchanged", async () => {
    renameSync(at(firstPath), at("x"));
    renameSync(at(secondPath), at(firstPath));
    renameSync(at("x"), at(secondPath));
    expect(await told()).toEqual([
      `${firstPath}: revision 1 was replaced by revision 2 of the same calibration`,
      `${secondPath}: revision 2 was replaced by revision 1 of the same calibration`,
    ]);
  });

  test("a ledger's line removed, with the page that it filed left there", async () => {
    writeLedger(ledgerTexts().toSpliced(1, 1));
    expect(await told()).toEqual([
      "ledger.jsonl:2: line 2 is missing",
      `${secondPath}: the ledger does not name this file: it was added by hand, or its filing was cut off; then file it again`,
    ]);
  });

  test("a ledger's line removed together with its page", async () => {
    writeLedger(ledgerTexts().toSpliced(1, 1));
    rmSync(at(secondPath));
    expect(await told()).toEqual(["ledger.jsonl:2: line 2 is missing"]);
  });

  test("a ledger's lines exchanged", async () => {
    const [one, two, ...rest] = ledgerTexts() as [string, string, ...string[]];
    writeLedger([two, one, ...rest]);
    expect(await told()).toContain("ledger.jsonl:2: line 1 stands after line 2: they were reordered");
  });

  test("a ledger's line edited", async () => {
    const texts = ledgerTexts();
    writeLedger(texts.with(1, (texts[1] ?? "").replace('"tag":"LT-1"', '"tag":"LT-9"')));
    expect(await told()).toContain(
      "ledger.jsonl:2: line 2 is not the one that line 3 was written after: it was altered",
    );
  });

  test("the last line edited, which nothing follows, by the page that it names", async () => {
    const texts = ledgerTexts().slice(0, 3);
    writeLedger(texts.with(2, (texts[2] ?? "").replace('"tag":"LT-2"', '"tag":"LT-9"')));
    expect(await told()).toContain(`${otherPath}: line 3 of the ledger says of it what its record does not`);
  });

  test("a line added at the end that files a page a second time, or decides about none", async () => {
    const texts = ledgerTexts();
    const again = { ...(readLedgerLine(texts[2] ?? "") as FiledLine), number: 5, previous: lineHash(texts[3] ?? "") };
    writeLedger([...texts, ledgerText(again)]);
    expect(await told()).toEqual(["ledger.jsonl: line 5 files revision 1 of C-2 of LT-2 a second time"]);
    const { paper: _, rowSha256: __, ...page } = again;
    const decided = { ...page, action: "decided" as const, by: "A. Example", decision: "none", revision: 7 };
    writeLedger([...texts, ledgerText(decided)]);
    expect(await told()).toEqual(["ledger.jsonl: line 5 decides about a page that no line before it files"]);
  });

  test("an index that says otherwise than the pages", async () => {
    const index = readFileSync(at("index.jsonl"), "utf8");
    writeFileSync(at("index.jsonl"), index.replace('"statement":"fail"', '"statement":"pass"'));
    expect(await told()).toEqual([
      `${otherPath}: index.jsonl says otherwise than the page; delete index.jsonl, it is made anew`,
    ]);
    rmSync(at("index.jsonl"));
    expect(await told()).toEqual([]);
  });

  test("an index that holds what canonical JSON cannot", async () => {
    const index = readFileSync(at("index.jsonl"), "utf8");
    writeFileSync(at("index.jsonl"), index.replace('"tag":"LT-2"', '"tag":"\\ud800"'));
    expect(await told()).toEqual([
      `${otherPath}: index.jsonl says otherwise than the page; delete index.jsonl, it is made anew`,
    ]);
  });

  const link = "this is a link, a pipe or a device: what it shows lies elsewhere, and may change there";

  test("a page, and a folder of pages, that are links to where they can be exchanged", async () => {
    const elsewhere = temporaryFolder();
    renameSync(at(otherPath), join(elsewhere, "x.html"));
    symlinkSync(join(elsewhere, "x.html"), at(otherPath));
    expect(await told()).toEqual([`${otherPath}: ${link}`]);
    cpSync(at("LT-1"), join(elsewhere, "LT-1"), { recursive: true });
    rmSync(at("LT-1"), { recursive: true });
    symlinkSync(join(elsewhere, "LT-1"), at("LT-1"));
    expect(await told()).toEqual([`LT-1: ${link}`, `${otherPath}: ${link}`]);
  });

  test.skipIf(process.platform === "win32")("a pipe, on which one would wait for ever", async () => {
    execFileSync("mkfifo", [at("LT-2/x.html")]);
    rmSync(at(otherPath));
    execFileSync("mkfifo", [at(otherPath)]);
    const says = `the page cannot be read: ${at(otherPath)} is a pipe or a device, and no file`;
    expect(await told()).toEqual([`${otherPath}: ${link}`, `LT-2/x.html: ${link}`, `${otherPath}: ${says}`]);
  });

  test("a file that may not be read, and the others are checked all the same", async () => {
    writeFileSync(at("LT-1/x.html"), "x");
    rmSync(at(secondPath));
    const refusing = diskWith({
      read: (path) =>
        path.endsWith("/x.html") || path.endsWith(otherPath) ? Promise.reject(new Error("EACCES")) : disk.read(path),
    });
    expect((await checkFolder(refusing, folder)).map(({ place, says }) => `${place}: ${says}`)).toEqual([
      "LT-1/x.html: the ledger does not name this file, and it cannot be read: EACCES",
      `${secondPath}: the page is missing; line 2 filed it`,
      `${otherPath}: the page cannot be read: EACCES`,
    ]);
  });

  test("what hides under a name that only begins like that of the lock", async () => {
    mkdirSync(at("filing.lock.d"));
    writeFileSync(at("filing.lock.d/x.html"), samplePage({ calibration: "C-9" }).bytes);
    writeFileSync(at("filing.lock.0123456789abcdef"), "a marker that was left behind");
    expect((await checkFolder(disk, folder)).map(({ place }) => place)).toEqual(["filing.lock.d/x.html"]);
  });
});

test("a revision whose list of changes is not what differs is told with the first place", async () => {
  const path = temporaryFolder();
  const filing = filingFolder(disk, path);
  await filePage(filing, first, onPaper);
  const { amendment, ...rest } = second.record;
  if (amendment === undefined) throw new TypeError("the second revision amends the first");
  await filePage(filing, pageOf({ ...rest, amendment: { ...amendment, changes: [] } }), onPaper);
  expect((await checkFolder(disk, path)).map(({ says }) => says)).toEqual([
    "its list of changes is not what differs from revision 1: 0 are listed, 1 were found, the first that differs is calibration.remarks",
  ]);
});

test("what is made from the pages, and the table of signers, lie beside them by right", async () => {
  for (const name of ["register.html", "register.csv", "due.ics", "signers.csv"]) writeFileSync(at(name), "x");
  mkdirSync(at("register-parts"));
  writeFileSync(at("register-parts/loops-001.html"), "x");
  expect(await told()).toEqual([]);
  writeFileSync(at("LT-2/register.html"), samplePage({ calibration: "C-9" }).bytes);
  expect(await told()).toHaveLength(1);
});

test("files that a process left unfinished are no records, and no doubt", async () => {
  writeFileSync(at("LT-2/.0d9c6f1e-6c37-4e8e-9f4a-1a1e4a3f9b11.tmp"), "half a page");
  expect(await told()).toEqual([]);
  writeFileSync(at("LT-2/.hidden.html"), samplePage({ calibration: "C-9" }).bytes);
  expect(await told()).toHaveLength(1);
});

test("somebody answers for each page: by signatures given before it was filed, or on a paper that is named", async () => {
  const signed = signedBy(samplePage({ calibration: "C-9" }).record, [ines, "performed"], [ada, "authorised"]);
  const page = { bytes: new TextEncoder().encode(textOf(signed)), record: signed };
  const early = diskWith({ now: () => "2026-11-20T10:00:00.000+01:00" });
  const path = temporaryFolder();
  await filePage(filingFolder(early, path), samplePage(), {});
  await filePage(filingFolder(early, path), page, {});
  expect((await checkFolder(disk, path)).map(({ place, says }) => `${place}: ${says}`)).toEqual([
    `${firstPath}: nobody answers for it: it is not signed as performed and authorised, and line 1 names no paper with the signatures`,
    ...["Ines Example", "Ada Specimen"].map((name) => {
      const { signedAt } = signingState(signed).given.find((one) => one.name === name) ?? {};
      return `LT-1/2026-03-04_C-9_r1.html: ${name} signed it at ${signedAt}, after line 2 filed it at 2026-11-20T10:00:00.000+01:00`;
    }),
  ]);
});

test("a folder on a disk that cannot be written to is checked all the same", async () => {
  const refusing = diskWith({
    createOnce: () => Promise.reject(Object.assign(new Error("read-only"), { code: "EROFS" })),
  });
  expect(await checkFolder(refusing, folder)).toEqual([]);
});
