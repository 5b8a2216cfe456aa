import { chmodSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { runCommandLine } from "../../src/cli/command-line.ts";
import { filePage } from "../../src/filing/file-page.ts";
import { filingFolder } from "../../src/filing/filing-folder.ts";
import { diskWith, onPaper, samplePage, temporaryFolder } from "../filing/sample-pages.ts";
import { smallestWorkbook } from "../workbook/smallest-workbook.ts";
import { filesBelow, written } from "./built-command.ts";
import { recordingConsole } from "./recording-console.ts";

const lost = "LT-2/2025-03-04_C-2_r1.html";

async function run(...words: readonly string[]) {
  const console = recordingConsole();
  const exitCode = await runCommandLine(words, console);
  return { exitCode, printed: console.printed.join("\n"), complained: console.complained.join("\n") };
}

/** A folder of three records and everything that is made from them, and a workbook of LT-1 beside it. */
async function plant(more: readonly ReturnType<typeof samplePage>[] = []): Promise<string> {
  const root = temporaryFolder();
  written(root, Object.fromEntries(Object.entries(smallestWorkbook).map(([name, text]) => [`book/${name}`, text])));
  const folder = filingFolder(diskWith(), join(root, "filed"));
  const pages = [
    samplePage({ calibration: "C-0", performedOn: "2025-03-04" }),
    samplePage({ tag: "LT-2", calibration: "C-2", performedOn: "2025-03-04" }),
    samplePage({ calibration: "C-00", performedOn: "2024-03-04" }),
  ];
  for (const page of [...pages, ...more]) await filePage(folder, page, onPaper);
  return root;
}

const commands = {
  due: (root: string) => ["due", `${root}/filed`, "--within", "999w", "--calendar", `${root}/filed/due.ics`],
  register: (root: string) => ["register", `${root}/filed`],
  "history of another loop": (root: string) => [
    ...["history", `${root}/filed`, "--tag", "LT-1", "--out", `${root}/LT-1.html`],
  ],
  "report --filed of another loop": (root: string) => [
    ...["report", `${root}/book`, "--filed", `${root}/filed`, "--out", `${root}/out`],
  ],
} as const;

const damages: Readonly<Record<string, (page: string) => void>> = {
  "is gone": (page) => rmSync(page),
  "has damaged JSON": (page) => writeFileSync(page, readFileSync(page, "utf8").replace('"revision":1', '"revision"1')),
  "is cut off": (page) => writeFileSync(page, readFileSync(page, "utf8").slice(0, 2000)),
  "is of a form to come": (page) =>
    writeFileSync(page, readFileSync(page, "utf8").replace("spanwright-record/2", "spanwright-record/99")),
  "is a folder": (page) => {
    rmSync(page);
    mkdirSync(page);
  },
};

/** Every file with its content: what a command that ends with 2 leaves as it was. */
function contents(root: string) {
  const kept = filesBelow(root).filter((name) => !name.endsWith(lost));
  return kept.map((name) => [name, readFileSync(join(root, name), "utf8")]);
}

describe.each(Object.entries(commands))("%s", (_, wordsOf) => {
  test("ends with 0 over a folder that can be read, with its index and without it", async () => {
    const root = await plant();
    const first = await run(...wordsOf(root));
    expect(first).toMatchObject({ exitCode: 0, complained: "" });
    const index = join(root, "filed/index.jsonl");
    const whole = readFileSync(index, "utf8");
    for (const spoil of [
      () => rmSync(index),
      () => writeFileSync(index, "nonsense\n"),
      () => writeFileSync(index, ""),
    ]) {
      spoil();
      expect(await run(...wordsOf(root))).toEqual(first);
      expect(readFileSync(index, "utf8")).toBe(whole);
    }
  });

  test.each(Object.entries(damages))(
    "where a page %s it is named, and everything stays as it was",
    async (__, damage) => {
      const root = await plant();
      for (const words of Object.values(commands)) await run(...words(root));
      damage(join(root, "filed", lost));
      for (const withoutIndex of [false, true]) {
        if (withoutIndex) rmSync(join(root, "filed/index.jsonl"));
        const before = contents(root);
        const { exitCode, printed, complained } = await run(...wordsOf(root));
        expect(exitCode).toBe(2);
        expect(printed).toBe("");
        expect(complained).toContain(`${root}/filed/${lost}`);
        expect(contents(root)).toEqual(before);
      }
    },
  );

  test("a page that was filed by a later version in a form to come is named, though its digest is the ledger's", async () => {
    const later = samplePage({ tag: "LT-3", calibration: "C-3" });
    const bytes = new TextDecoder().decode(later.bytes).replace("spanwright-record/2", "spanwright-record/99");
    const root = await plant([{ ...later, bytes: new TextEncoder().encode(bytes) }]);
    // As that version would have written it.
    const index = join(root, "filed/index.jsonl");
    writeFileSync(index, readFileSync(index, "utf8").replace('"records":2', '"records":99'));
    const before = contents(root);
    const { exitCode, complained } = await run(...wordsOf(root));
    expect(exitCode).toBe(2);
    expect(complained).toContain("LT-3/2026-03-04_C-3_r1.html: the record is of form 99");
    expect(contents(root)).toEqual(before);
  });

  test("every page that cannot be read is named, and a line of the ledger that is none", async () => {
    const root = await plant();
    rmSync(join(root, "filed", lost));
    rmSync(join(root, "filed/LT-1/2024-03-04_C-00_r1.html"));
    const ledger = join(root, "filed/ledger.jsonl");
    writeFileSync(ledger, `${readFileSync(ledger, "utf8")}{}\n`);
    const { exitCode, complained } = await run(...wordsOf(root));
    expect(exitCode).toBe(2);
    for (const name of [lost, "LT-1/2024-03-04_C-00_r1.html", "ledger.jsonl:4"]) expect(complained).toContain(name);
  });

  test.skipIf(process.getuid?.() === 0)("a page that may not be read is named", async () => {
    const root = await plant();
    chmodSync(join(root, "filed", lost), 0);
    expect((await run(...wordsOf(root))).complained).toContain(`${root}/filed/${lost}: the page cannot be read`);
  });
});
