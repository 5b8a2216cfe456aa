import { expect, test } from "vitest";
import type { ReportOptions } from "../../../src/jobs/records/report-calibrations.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { withPlainRecord } from "../../../src/record/record-element.ts";
import { sealedRecordSchema } from "../../../src/record/record-schema.ts";
import { smallestWorkbook, type Texts, withText } from "../../workbook/smallest-workbook.ts";
import { inFolder, memoryDisk } from "../memory-disk.ts";
import { reportKept } from "../reported-records.ts";

/** Two loops and three calibrations. */
const twoLoops = Object.freeze({
  ...smallestWorkbook,
  "instruments.csv": `${smallestWorkbook["instruments.csv"]}LT-2,0,100,mm,4,20,mA,0.5,percent of span\n`,
  "calibrations.csv": `${smallestWorkbook["calibrations.csv"]}C-2,LT-2,2026-03-05,T. Example,GB-1
C-3,LT-2,2026-06-05,T. Example,GB-1
`,
  "readings.csv": ["C-2", "C-3"].reduce(
    (text, name) => text + smallestWorkbook["readings.csv"].split("\n").slice(1).join("\n").replaceAll("C-1", name),
    smallestWorkbook["readings.csv"],
  ),
});

async function reported(texts: Texts, options: Partial<ReportOptions> = {}, refuses?: (path: string) => boolean) {
  const disk = memoryDisk(inFolder("book", texts), refuses);
  const { written, reading } = await reportKept(disk, "book", {
    out: "out",
    today: "2026-11-25",
    firstLook: {},
    softwareVersion: "0.0.0",
    ...options,
  });
  return { disk, written, told: reading.problems.all.map(sentence) };
}

const pagesOf = ({ written }: { written: readonly { page: string }[] }) => written.map(({ page }) => page);

test("a calibration gives a page for people and a file for machines that hold the same record", async () => {
  const { disk, written, told } = await reported(smallestWorkbook);
  expect(told).toEqual([]);
  expect([...disk.written.keys()]).toEqual(["out/LT-1/C-1.html", "out/LT-1/C-1.json"]);
  const json = disk.written.get("out/LT-1/C-1.json") ?? "";
  const embedded = /<script type="application\/json" id="record">(.*)<\/script>/u.exec(
    withPlainRecord(disk.written.get("out/LT-1/C-1.html") ?? ""),
  )?.[1];
  expect(JSON.parse(embedded ?? "")).toEqual(JSON.parse(json));
  expect(JSON.parse(json)).toEqual(written[0]?.record);
  expect(sealedRecordSchema.parse(JSON.parse(json)).phases.asFound?.verdict).toBe("pass");
  expect(json.endsWith("}\n")).toBe(true);
});

test("a guard factor that the rule of an instrument would pass over is refused", async () => {
  const { written, told } = await reported(smallestWorkbook, { decision: { guardFactor: "0.5" } });
  expect(written).toEqual([]);
  expect(told).toEqual([
    'command line: the option --guard-factor would change nothing: the decision rule of LT-1 is simple acceptance; read "0.5"; accepted: the option with --rule guard band',
  ]);
  const withRule = await reported(smallestWorkbook, { decision: { guardFactor: "0.5", rule: "guard band" } });
  expect(withRule.told).toEqual([]);
});

test("a draft is written over, a signed record never, and the others are written all the same", async () => {
  const signed = '{"signOff":{"signatures":[{}]}}';
  const disk = memoryDisk({ ...inFolder("book", twoLoops), "out/LT-1/C-1.json": "{}", "out/LT-2/C-2.json": signed });
  const options = { out: "out", today: "2026-11-25", firstLook: {}, softwareVersion: "0.0.0" };
  const { written, reading } = await reportKept(disk, "book", options);
  expect(pagesOf({ written })).toEqual(["out/LT-1/C-1.html", "out/LT-2/C-3.html"]);
  expect(reading.problems.all.map(({ code, place }) => [code, place.file])).toEqual([
    ["signing/would-overwrite", "out/LT-2/C-2.html"],
  ]);
});

test("the same workbook gives the same bytes", async () => {
  const [first, second] = [await reported(twoLoops), await reported(twoLoops)];
  expect(first.disk.written.size).toBe(6);
  expect([...second.disk.written]).toEqual([...first.disk.written]);
});

test("a tag and a calibration may be asked for", async () => {
  expect(pagesOf(await reported(twoLoops))).toEqual(["out/LT-1/C-1.html", "out/LT-2/C-2.html", "out/LT-2/C-3.html"]);
  expect(pagesOf(await reported(twoLoops, { tag: "LT-2" }))).toEqual(["out/LT-2/C-2.html", "out/LT-2/C-3.html"]);
  expect(pagesOf(await reported(twoLoops, { calibration: "C-3" }))).toEqual(["out/LT-2/C-3.html"]);
  expect(pagesOf(await reported(twoLoops, { tag: "LT-2", calibration: "C-2" }))).toEqual(["out/LT-2/C-2.html"]);
});

test.each([
  [
    { tag: "LT-3" },
    'command line: no calibration of the workbook belongs to this tag; read "LT-3"; accepted: LT-1, LT-2',
  ],
  [
    { calibration: "C-9" },
    'command line: no calibration of the workbook is called so; read "C-9"; accepted: C-1, C-2, C-3',
  ],
  [
    { tag: "LT-1", calibration: "C-2" },
    'command line: the calibration does not belong to the tag LT-1; read "C-2"; accepted: a calibration of the tag, or one of the two options alone',
  ],
])("%j names nothing in the workbook: it is told and nothing is written", async (options, sentenceTold) => {
  const { disk, told } = await reported(twoLoops, options);
  expect(told).toEqual([sentenceTold]);
  expect(disk.written.size).toBe(0);
});

test("a problem of one calibration leaves the others alone", async () => {
  const readings = twoLoops["readings.csv"].replace("C-2,as_found,rising,50,12.01", "C-2,as_found,rising,fifty,12.01");
  const { written, told } = await reported({ ...twoLoops, "readings.csv": readings });
  expect(pagesOf({ written })).toEqual(["out/LT-1/C-1.html", "out/LT-2/C-3.html"]);
  expect(told[0]).toBe(
    'readings.csv:9:reference: this is not a number; read "fifty"; accepted: a number such as 12.02',
  );
});

test("a name that the workbook does not have is told whatever else is wrong, a stopped one is not", async () => {
  const readings = twoLoops["readings.csv"].replace("C-2,as_found,rising,50,12.01", "C-2,as_found,rising,fifty,12.01");
  const broken = { ...twoLoops, "readings.csv": readings };
  const unknown = await reported(broken, { tag: "LT-3" });
  expect(unknown.told.filter((text) => text.includes("belongs to this tag"))).toHaveLength(1);
  expect(unknown.told.some((text) => text.includes("fifty"))).toBe(true);
  const stopped = await reported(broken, { tag: "LT-2", calibration: "C-2" });
  expect(stopped.told.some((text) => text.startsWith("command line"))).toBe(false);
  expect(stopped.disk.written.size).toBe(0);
});

test("of a workbook without the table of calibrations no name is called unknown", async () => {
  const { "calibrations.csv": _, ...without } = twoLoops;
  const { told } = await reported(without, { tag: "LT-3" });
  expect(told.some((text) => text.includes("the table calibrations is not there"))).toBe(true);
  expect(told.some((text) => text.startsWith("command line"))).toBe(false);
});

test("a problem that belongs to no calibration stops all of them", async () => {
  const { disk } = await reported({ ...twoLoops, "readings.csv": "no table" });
  expect(disk.written.size).toBe(0);
});

test("a warning stands on the record that it touches", async () => {
  const { written } = await reported(withText("calibrations.csv", "GB-1", ""));
  expect(written[0]?.record.warnings.map(({ code }) => code)).toEqual(["model/no-standard"]);
});

test("a disk that refuses one record is told, and the others are written", async () => {
  const { disk, written, told } = await reported(twoLoops, {}, (path) => path.includes("C-2"));
  expect(pagesOf({ written })).toEqual(["out/LT-1/C-1.html", "out/LT-2/C-3.html"]);
  expect(disk.written.size).toBe(4);
  expect(told).toEqual([
    "out/LT-2/C-2.html: nothing could be written there: no room for out/LT-2/C-2.html; accepted: a folder in which this user may write",
  ]);
});

test("progress counts every calibration once", async () => {
  const seen: string[] = [];
  await reported(twoLoops, { onWritten: (done, all) => seen.push(`${done}/${all}`) });
  expect(seen).toEqual(["1/3", "2/3", "3/3"]);
});
