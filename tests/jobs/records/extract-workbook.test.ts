import { expect, test } from "vitest";
import { extractWorkbook } from "../../../src/jobs/records/extract-workbook.ts";
import type { ReportOptions } from "../../../src/jobs/records/report-calibrations.ts";
import { recordJson } from "../../../src/jobs/records/write-record.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { compareRecords } from "../../../src/proof/compare-records.ts";
import type { SealedRecord } from "../../../src/record/record-schema.ts";
import { smallestWorkbook, type Texts, withText } from "../../workbook/smallest-workbook.ts";
import { memoryDisk } from "../memory-disk.ts";
import { recordFrom, recordsFrom, reportedDemo } from "../reported-records.ts";

/** The tables of a record, and what the command says of them. */
async function extracted(record: SealedRecord) {
  const disk = memoryDisk({ "record.json": recordJson(record) });
  const problems = new ProblemList();
  const found = await extractWorkbook(disk, "record.json", "book", problems);
  expect(problems.all).toEqual([]);
  return { texts: Object.fromEntries(disk.written), ...found };
}

/** Names, digests and lines of other files are not those of the first workbook, and draws start from the digests. */
const ofFiles =
  /^(?:inputs\.files|inputs\.rows\..*\.(?:line|file)$|seal\.|warnings\[|monteCarloSeed$)|\.(?:row|line)$|\.monteCarlo\./u;

async function differencesOf(record: SealedRecord, options: Partial<ReportOptions> = {}) {
  const { texts } = await extracted(record);
  const records = await recordsFrom(texts as Texts, "book", options);
  expect(records).toHaveLength(1);
  const codes = ({ warnings }: SealedRecord) => warnings.map(({ code }) => code);
  expect(codes(records[0]!).filter((code) => !codes(record).includes(code))).toEqual([]);
  return compareRecords(record, records[0]).filter(({ place }) => !ofFiles.test(place));
}

const demo = await reportedDemo();

test.each(demo.map((record) => [record.instrument.tag, record] as const))(
  "the tables extracted from the record of %s give the same figures, to the last digit",
  async (_, record) => {
    expect(await differencesOf(record)).toEqual([]);
  },
);

test("cells stay as they were typed: quotation marks, line breaks, separators, formulas, apostrophes, decimal commas", async () => {
  const hostile = `"a ""b""; c, d\n=1+1\t'e' | @x"`;
  const texts: Texts = {
    ...smallestWorkbook,
    "calibrations.csv": `calibration;tag;performed_on;performed_by;standards;remarks;shift of\n=C-1;LT-1;2026-03-04;'=1+1;GB-1;${hostile};${hostile}\n`,
    "readings.csv": smallestWorkbook["readings.csv"]
      .replaceAll(",", ";")
      .replaceAll(".", ",")
      .replaceAll("C-1", "=C-1"),
  };
  const record = await recordFrom(texts);
  expect(record.inputs.rows.calibrations[0]?.cells).toMatchObject({ calibration: "=C-1", performed_by: "=1+1" });
  const { texts: written } = await extracted(record);
  expect(written["book/readings.csv"]).toMatch(/^'=C-1;as_found;rising;0;4,01\r$/mu);
  expect(await differencesOf(record)).toEqual([]);
});

test("what it takes to make the same record is said: the rule, draws, the options of a first look", async () => {
  const options = { decision: { rule: "guard band", guardFactor: "0.5", monteCarlo: "250000" } };
  const record = await recordFrom(smallestWorkbook, options);
  const { options: words } = await extracted(record);
  expect(words).toEqual(["--rule 'guard band'", "--guard-factor 0.5", "--monte-carlo 250000"]);
  expect(await differencesOf(record, options)).toEqual([]);
  const firstLook = { range: "0:100mm", signal: "4:20mA", tolerance: "0.5%span", tag: "LT 7" };
  const [alone] = await recordsFrom({ "readings.csv": smallestWorkbook["readings.csv"] }, "readings.csv", {
    firstLook,
  });
  const look = await extracted(alone!);
  expect(look.files).toEqual(["book/readings.csv"]);
  expect(look.options).toEqual(["--tag 'LT 7'", "--range 0:100mm", "--signal 4:20mA", "--tolerance 0.5%span"]);
});

test("a record that was changed, a file that is none, and a folder that holds something are refused, and nothing is written", async () => {
  const record = await recordFrom(withText("readings.csv", "50,12.01", "50,12.02"));
  const changed = structuredClone(record);
  changed.instrument.tag = "LT-2";
  const codesOf = async (texts: Texts) => {
    const [disk, problems] = [memoryDisk(texts), new ProblemList()];
    expect(await extractWorkbook(disk, "a.json", "book", problems)).toBeUndefined();
    expect([...disk.written]).toEqual([]);
    return problems.all.map(({ code }) => code);
  };
  expect(await codesOf({ "a.json": recordJson(changed) })).toEqual(["filing/seal-broken"]);
  expect(await codesOf({ "a.json": "{}" })).toEqual(["options/not-a-record"]);
  expect(await codesOf({ "a.json": recordJson(record), "book/x": "" })).toEqual(["options/folder-not-empty"]);
});
