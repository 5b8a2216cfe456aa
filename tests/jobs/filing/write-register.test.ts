import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { nodeDisk } from "../../../src/cli/node-disk.ts";
import { filePage } from "../../../src/filing/file-page.ts";
import { filingFolder } from "../../../src/filing/filing-folder.ts";
import { CannotWrite } from "../../../src/jobs/disk.ts";
import { writeRegister } from "../../../src/jobs/filing/write-register.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { diskWith, onPaper, samplePage, temporaryFolder } from "../../filing/sample-pages.ts";

const filing = diskWith();
const options = { today: "2026-11-25", soonDays: 30 };

async function folderOf(...tags: readonly string[]): Promise<string> {
  const folder = temporaryFolder();
  for (const tag of tags)
    await filePage(filingFolder(filing, folder), samplePage({ tag, calibration: `C-${tag}` }), onPaper);
  return folder;
}

test("a register is a page and a table in the folder, and says the same in both", async () => {
  const folder = await folderOf("LT-2", "LT-1");
  const { written, problems } = await writeRegister({ filing, plain: nodeDisk }, folder, options);
  expect(problems.all).toEqual([]);
  expect(written?.register.rows.map(({ tag }) => tag)).toEqual(["LT-1", "LT-2"]);
  const page = readFileSync(join(folder, "register.html"), "utf8");
  const table = readFileSync(join(folder, "register.csv"), "utf8");
  expect(page).toContain('<a href="LT-1/2026-03-04_C-LT-1_r1.html"><bdi>LT-1</bdi></a>');
  expect(page).toContain("In 2026, 2 of 2 were found in tolerance");
  expect(
    table
      .split("\r\n")
      .slice(1, 3)
      .map((line) => line.split(",")[0]),
  ).toEqual(["LT-1", "LT-2"]);
});

test("it is written anew over the last one", async () => {
  const folder = await folderOf("LT-1");
  await writeRegister({ filing, plain: nodeDisk }, folder, options);
  await filePage(filingFolder(filing, folder), samplePage({ tag: "LT-9", calibration: "C-9" }), onPaper);
  await writeRegister({ filing, plain: nodeDisk }, folder, options);
  expect(readFileSync(join(folder, "register.csv"), "utf8")).toContain("LT-9");
});

test("a past day gets its own files, and a day that is none or to come is told", async () => {
  const folder = await folderOf("LT-1");
  const past = await writeRegister({ filing, plain: nodeDisk }, folder, { ...options, on: "2020-01-01" });
  expect(past.written).toMatchObject({ register: { on: "2020-01-01", rows: [] } });
  expect(readFileSync(join(folder, "register-of-2020-01-01.html"), "utf8")).toContain("On 2020-01-01");
  for (const on of ["2026-02-30", "yesterday", "2026-11-26"]) {
    const { written, problems } = await writeRegister({ filing, plain: nodeDisk }, folder, { ...options, on });
    expect(written).toBeUndefined();
    expect(problems.all.map(sentence)[0]).toContain("--on with a day until today, such as 2026-11-25");
  }
});

test("a folder that is none, and a disk that refuses, are told", async () => {
  const none = await writeRegister({ filing, plain: nodeDisk }, temporaryFolder(), options);
  expect(none.written).toBeUndefined();
  expect(none.problems.hasStop).toBe(true);
  const refusing = { streamTogether: () => Promise.reject(new CannotWrite("no room")) };
  const refused = await writeRegister({ filing, plain: refusing }, await folderOf("LT-1"), options);
  expect(refused.written).toBeUndefined();
  expect(refused.problems.all.map(sentence)[0]).toMatch(/register\.html: nothing could be written there: no room/u);
});

test("parts of a longer register before are removed, and nothing else that lies there", async () => {
  const folder = await folderOf("LT-1");
  const parts = join(folder, "register-parts");
  mkdirSync(parts);
  for (const name of ["loops-001.html", "due-001.html", "open-012.html", "late-001.html", "notes.html"])
    writeFileSync(join(parts, name), "");
  await writeRegister({ filing, plain: nodeDisk }, folder, options);
  expect(readdirSync(parts)).toEqual(["notes.html"]);
});
