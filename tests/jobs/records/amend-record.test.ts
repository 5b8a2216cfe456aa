import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { nodeDisk } from "../../../src/cli/node-disk.ts";
import { fileRecords } from "../../../src/jobs/filing/file-records.ts";
import { type AmendOptions, amendRecord } from "../../../src/jobs/records/amend-record.ts";
import { rebuildRecord } from "../../../src/jobs/records/rebuild-record.ts";
import { reportCalibrations } from "../../../src/jobs/records/report-calibrations.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { recordChanges } from "../../../src/proof/record-changes.ts";
import { sealOf } from "../../../src/proof/seal-record.ts";
import { readSealedRecord } from "../../../src/record/read-sealed-record.ts";
import { withPlainRecord } from "../../../src/record/record-element.ts";
import type { SealedRecord } from "../../../src/record/record-schema.ts";
import { filesBelow, written } from "../../cli/built-command.ts";
import { diskWith, temporaryFolder } from "../../filing/sample-pages.ts";
import { smallestWorkbook, type Texts, withText } from "../../workbook/smallest-workbook.ts";
import { bySignatures } from "../filing/by-signatures.ts";

const disks = { disk: nodeDisk, filing: diskWith() };
const putRight = withText("readings.csv", "50,12.01", "50,12.10");

/** The smallest workbook reported and filed with its signatures on paper. */
async function filedPage(asked: { decimalMark?: string } = {}) {
  const folder = temporaryFolder();
  written(join(folder, "book"), smallestWorkbook);
  const options = { out: join(folder, "out"), today: "2026-11-25", firstLook: {}, softwareVersion: "0.0.0", ...asked };
  await reportCalibrations(nodeDisk, join(folder, "book"), options);
  const draft = join(folder, "out/LT-1/C-1.html");
  await fileRecords(disks.filing, [draft], { ...bySignatures, into: join(folder, "filed"), paper: "binder 7" });
  return { folder, draft, page: join(folder, "filed/LT-1/2026-03-04_C-1_r1.html") };
}

async function amended(folder: string, page: string, texts: Texts, changes: Partial<AmendOptions> = {}) {
  written(join(folder, "mended"), texts);
  const { written: result, problems } = await amendRecord(disks, page, {
    ...{ workbook: join(folder, "mended"), reason: "two digits were exchanged", by: "T. Example" },
    ...{ out: join(folder, "out"), today: "2026-11-25", now: "2026-11-25T14:05:00+01:00", softwareVersion: "0.0.0" },
    ...changes,
  });
  return { result, told: problems.all.map(sentence).join("\n"), codes: problems.all.map(({ code }) => code) };
}

async function recordIn(path: string): Promise<SealedRecord> {
  const found = readSealedRecord(new TextDecoder().decode(await disks.filing.read(path)), path);
  if ("doubts" in found) throw new TypeError(found.doubts[0]?.says);
  return found.record;
}

test("the next revision says what it replaces, why, by whom, when, and all that differs; it is a draft of its own", async () => {
  const { folder, page } = await filedPage();
  const { result, codes } = await amended(folder, page, putRight);
  expect(codes).toEqual([]);
  const [before, after] = [await recordIn(page), await recordIn(result?.page ?? "")];
  expect(after.revision).toBe(2);
  expect(after.amendment).toMatchObject({
    replaces: { calibration: "C-1", revision: 1, sha256: before.seal.sha256 },
    ...{ reason: "two digits were exchanged", by: "T. Example", at: "2026-11-25T14:05:00+01:00" },
  });
  expect(after.amendment?.changes).toEqual(recordChanges(before, after));
  expect(after.amendment?.changes[0]).toEqual({
    place: "inputs.rows.readings[2].cells.signal",
    before: '"12.01"',
    after: '"12.10"',
  });
  expect(after.signOff.signatures).toEqual([]);
  expect(after.seal).toEqual(sealOf(after));
  expect(filesBelow(join(folder, "out"))).toEqual([
    "LT-1/C-1.html",
    "LT-1/C-1.json",
    "LT-1/C-1_r2.html",
    "LT-1/C-1_r2.json",
  ]);
});

test("a decimal mark that an option gave is kept, and what changed is told with it", async () => {
  const { folder, page } = await filedPage({ decimalMark: "comma" });
  const { result } = await amended(folder, page, putRight);
  const { instrument, amendment } = await recordIn(result?.page ?? "");
  expect(instrument.decimalMark).toBe("comma");
  expect(amendment?.changes.filter(({ place }) => place.includes("decimal"))).toEqual([]);
  const html = new TextDecoder().decode(await disks.filing.read(result?.page ?? ""));
  const part = html.slice(html.indexOf('id="amendment-title"'), html.indexOf('id="annex-j"'));
  // Places in a list, such as 1.4:, are no decimal numbers, and a cell stands as it was typed.
  const told = part
    .replace(/<[^>]*>/gu, "\n")
    .replace(/\d+\.\d+:/gu, "")
    .split("\n");
  expect(told.filter((text) => /\d\.\d/u.test(text) && !/^“?"?12\.[01]\d?"?”?$/u.test(text.trim()))).toEqual([]);
  expect(told.filter((text) => /\d,\d/u.test(text))).not.toEqual([]);
});

test("it can be made again from its own rows, byte for byte", async () => {
  const { folder, page } = await filedPage();
  const { result } = await amended(folder, page, putRight);
  const record = await recordIn(result?.page ?? "");
  const again = rebuildRecord(record);
  expect(JSON.stringify("record" in again && again.record)).toBe(JSON.stringify(record));
});

test("it is filed after the one that it replaces, which cannot be amended again then", async () => {
  const { folder, page } = await filedPage();
  const { result } = await amended(folder, page, putRight);
  const into = join(folder, "filed");
  const { rows } = await fileRecords(disks.filing, [result?.page ?? ""], { ...bySignatures, into, paper: "binder 7" });
  expect(rows.map(({ path }) => path)).toEqual([join(into, "LT-1/2026-03-04_C-1_r2.html")]);
  const { told } = await amended(folder, page, putRight);
  expect(told).toContain("revision 1 is replaced already by revision 2");
  const third = await amended(folder, rows[0]?.path ?? "", withText("readings.csv", "50,12.01", "50,12.11"));
  expect(third.result?.record.revision).toBe(3);
});

test("a workbook that says the same is refused, wherever it lies and whatever else is in it", async () => {
  const { folder, page } = await filedPage();
  expect((await amended(folder, page, smallestWorkbook)).codes).toEqual(["filing/nothing-differs"]);
  const other = {
    ...smallestWorkbook,
    "instruments.csv": `${smallestWorkbook["instruments.csv"]}LT-2,0,9,mm,4,20,mA,1,distance\n`,
  };
  expect((await amended(folder, page, other)).codes).toContain("filing/nothing-differs");
});

test("a draft that no folder has is refused, and so is a page that was changed", async () => {
  const { folder, draft, page } = await filedPage();
  expect((await amended(folder, draft, putRight)).codes).toEqual(["filing/amends-draft"]);
  const text = new TextDecoder().decode(await disks.filing.read(page));
  writeFileSync(page, text.replace("calibration record", "calibration  record"));
  expect((await amended(folder, page, putRight)).codes).toEqual(["filing/amends-draft"]);
  writeFileSync(page, withPlainRecord(text).replace('"figureBasis":"', '"figureBasis":"x'));
  expect((await amended(folder, page, putRight)).codes).toEqual(["filing/seal-broken"]);
});

test("what is missing is told: the page, the words, the calibration in the workbook", async () => {
  const { folder, page } = await filedPage();
  expect((await amended(folder, "/nowhere/x.html", putRight)).codes).toEqual(["options/no-such-record"]);
  expect((await amended(folder, page, putRight, { reason: "", by: " " })).codes).toEqual([
    "filing/words-missing",
    "filing/words-missing",
  ]);
  const without = Object.fromEntries(
    Object.entries(putRight).map(([name, text]) => [name, String(text).replaceAll("C-1,", "C-7,")]),
  );
  expect((await amended(folder, page, without)).told).toContain("the workbook has no calibration C-1 of the tag LT-1");
});

test("a workbook in which something stops the calibration gives no revision", async () => {
  const { folder, page } = await filedPage();
  const { result, codes } = await amended(folder, page, withText("readings.csv", "50,12.01", "50,12.o1"));
  expect(result).toBeUndefined();
  expect(codes).toEqual(["tables/cell-not-number"]);
});
