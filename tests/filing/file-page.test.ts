import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { checkFolder } from "../../src/filing/check-folder.ts";
import { filePage, type SignedPage } from "../../src/filing/file-page.ts";
import type { FilingDisk } from "../../src/filing/filing-disk.ts";
import { filingFolder } from "../../src/filing/filing-folder.ts";
import { filesBelow } from "../cli/built-command.ts";
import { amended, diskWith, onPaper, pageOf, samplePage, temporaryFolder } from "./sample-pages.ts";

const disk = diskWith();
const file = (path: string, page: SignedPage, filedWith: { paper?: string; by?: string } = onPaper) =>
  filePage(filingFolder(disk, path), page, filedWith);

test("a page is filed byte for byte, and its line says what it is", async () => {
  const path = temporaryFolder();
  const page = samplePage();
  const { outcome, line } = await file(path, page, { by: "A. Example", paper: "binder 7" });
  expect(outcome).toBe("filed");
  expect(line).toMatchObject({
    ...{
      number: 1,
      action: "filed",
      tag: "LT-1",
      calibration: "C-1",
      revision: 1,
      by: "A. Example",
      paper: "binder 7",
    },
    ...{ path: "LT-1/2026-03-04_C-1_r1.html", sealSha256: page.record.seal.sha256 },
  });
  expect(readFileSync(join(path, line.path)).equals(page.bytes)).toBe(true);
  expect(filesBelow(path)).toEqual(["LT-1/2026-03-04_C-1_r1.html", "index.jsonl", "ledger.jsonl"]);
  expect(await checkFolder(disk, path)).toEqual([]);
});

test("the same bytes once more are filed already, and the ledger stays as it is", async () => {
  const path = temporaryFolder();
  await file(path, samplePage());
  const ledger = readFileSync(join(path, "ledger.jsonl"), "utf8");
  expect((await file(path, samplePage())).outcome).toBe("filed already");
  expect(readFileSync(join(path, "ledger.jsonl"), "utf8")).toBe(ledger);
});

test.each([
  ["the same record on another page", samplePage({}, "another word")],
  ["another record of that number", pageOf({ ...samplePage().record, figureBasis: "another" })],
  ["the same number performed on another day", samplePage({ performedOn: "2026-03-05" })],
])("other bytes never go over an issued page: %s", async (_, page) => {
  const path = temporaryFolder();
  const first = samplePage();
  await file(path, first);
  await expect(file(path, page)).rejects.toMatchObject({
    code: "filing/issued-already",
    values: { path: "LT-1/2026-03-04_C-1_r1.html" },
  });
  expect(readFileSync(join(path, "LT-1/2026-03-04_C-1_r1.html")).equals(first.bytes)).toBe(true);
  expect(await checkFolder(disk, path)).toEqual([]);
});

test("a file that lies under the name, and is in no ledger, stays", async () => {
  const path = temporaryFolder();
  mkdirSync(join(path, "LT-1"));
  writeFileSync(join(path, "LT-1/2026-03-04_C-1_r1.html"), "somebody's own");
  await expect(file(path, samplePage())).rejects.toMatchObject({ code: "filing/issued-already" });
  expect(readFileSync(join(path, "LT-1/2026-03-04_C-1_r1.html"), "utf8")).toBe("somebody's own");
});

test("a page that was lost is put back by filing the same bytes", async () => {
  const path = temporaryFolder();
  await file(path, samplePage());
  rmSync(join(path, "LT-1/2026-03-04_C-1_r1.html"));
  expect((await file(path, samplePage())).outcome).toBe("put back");
  expect(await checkFolder(disk, path)).toEqual([]);
});

describe("a later revision", () => {
  const first = samplePage();
  const second = amended(first.record, "put right");

  test("follows the one before it, which stays", async () => {
    const path = temporaryFolder();
    await file(path, first);
    expect((await file(path, second)).line).toMatchObject({ revision: 2, path: "LT-1/2026-03-04_C-1_r2.html" });
    expect((await file(path, amended(second.record, "again"))).line.revision).toBe(3);
    expect(readdirSync(join(path, "LT-1"))).toHaveLength(3);
    expect(await checkFolder(disk, path)).toEqual([]);
  });

  test("needs the one before it there", async () => {
    const path = temporaryFolder();
    await expect(file(path, second)).rejects.toMatchObject({
      code: "filing/revision-missing",
      values: { revision: 2, before: 1 },
    });
    await file(path, first);
    await expect(file(path, amended(second.record, "again"))).rejects.toMatchObject({
      code: "filing/revision-missing",
    });
  });

  test("needs the very record there that it replaces", async () => {
    const path = temporaryFolder();
    await file(path, pageOf({ ...first.record, figureBasis: "another" }));
    await expect(file(path, second)).rejects.toMatchObject({ code: "filing/replaces-another", values: { before: 1 } });
  });

  test.each([
    ["does not say what it amends", pageOf({ ...first.record, revision: 2 })],
    ["amends another revision", pageOf({ ...amended(second.record, "x").record, revision: 2 })],
  ])("that %s is not filed", async (_, page) => {
    const path = temporaryFolder();
    await file(path, first);
    await expect(file(path, page)).rejects.toMatchObject({ code: "filing/replaces-nothing" });
  });
});

test("a first revision amends nothing", async () => {
  const page = pageOf({ ...amended(samplePage().record, "x").record, revision: 1 });
  await expect(file(temporaryFolder(), page)).rejects.toMatchObject({ code: "filing/replaces-nothing" });
});

/** A disk that stops for good at a step that changes something: before it, after it, or half-way through an append. */
function stoppingDisk(at: number, where: "before" | "after" | "half-way") {
  const real = diskWith({ host: "here", process: 2 ** 30 });
  let step = 0;
  const changing = async <Result>(act: () => Promise<Result>, half?: () => Promise<void>): Promise<Result> => {
    step += 1;
    if (step < at) return act();
    if (step === at && where === "after") await act();
    if (step === at && where === "half-way") await half?.();
    throw new Error("ended");
  };
  const disk: FilingDisk = {
    ...real,
    createOnce: (...words) => changing(() => real.createOnce(...words)),
    append: (path, text, keeping) =>
      changing(
        () => real.append(path, text, keeping),
        () => real.append(path, text.slice(0, Math.ceil(text.length / 2)), keeping),
      ),
    cut: (...words) => changing(() => real.cut(...words)),
    replace: (...words) => changing(() => real.replace(...words)),
    remove: (...words) => changing(() => real.remove(...words)),
    sweep: (...words) => changing(() => real.sweep(...words)),
  };
  return { disk, reached: () => step };
}

describe.each(["before", "after", "half-way"] as const)("ended %s any step", (where) => {
  test("filing again completes what was begun, and nothing doubtful is left", async () => {
    const pages = [samplePage(), samplePage({ calibration: "C-2" })];
    let steps = 0;
    for (let at = 1; at <= 20; at += 1) {
      const path = temporaryFolder();
      const stopping = stoppingDisk(at, where);
      const folder = filingFolder(stopping.disk, path);
      const ends = (async () => {
        for (const page of pages) await filePage(folder, page, onPaper);
      })().catch((fault: unknown) => fault);
      if ((await ends) === undefined) break;
      steps = Math.max(steps, stopping.reached());
      const again = filingFolder(diskWith({ host: "here" }), path);
      for (const page of pages) expect((await filePage(again, page, onPaper)).outcome).toMatch(/^filed/u);
      expect([at, await checkFolder(disk, path)]).toEqual([at, []]);
      expect([at, filesBelow(path)]).toEqual([
        at,
        ["LT-1/2026-03-04_C-1_r1.html", "LT-1/2026-03-04_C-2_r1.html", "index.jsonl", "ledger.jsonl"],
      ]);
      expect(again.ledger.lines).toHaveLength(2);
    }
    // A lock, a sweep, a page, a line, an index with its first line, and the lock's end; then all but that first line.
    expect(steps).toBeGreaterThanOrEqual(13);
  });
});
