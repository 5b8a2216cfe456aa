import { expect, test } from "vitest";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { buildWorkbook } from "../../src/workbook/build-workbook.ts";
import { casesOf } from "../../src/workbook/calibration-case.ts";
import type { RawRows } from "../../src/workbook/files/raw-table.ts";
import { KeptRows } from "../../src/workbook/kept-rows.ts";
import { readTables } from "../../src/workbook/read-tables.ts";
import { RowsByOwner } from "../../src/workbook/rows-by-owner.ts";
import { checked, filesOf, smallestWorkbook, type Texts, withFile } from "./smallest-workbook.ts";

const options = Object.freeze({ today: "2026-11-25" });

const pairs = [
  ["C-2", "LT-2", "GB-2"],
  ["C-1", "LT-1", "GB-1"],
] as const;

/** Two loops, two standards, two calibrations, the second calibration first; readings taken in turn. */
const twoLoops: Texts = {
  "instruments.csv": `${smallestWorkbook["instruments.csv"]}LT-2,0,100,mm,0,10,V,0.5,signal\n`,
  "standards.csv": `${smallestWorkbook["standards.csv"]}GB-2,K-8,2025-06-01,2027-06-01,0.02,mm\n`,
  "calibrations.csv": `calibration,tag,performed_on,performed_by,standards\n${pairs
    .map(([calibration, tag, standard]) => `${calibration},${tag},2026-03-04,T. Example,${standard}\n`)
    .join("")}`,
  "readings.csv": `calibration,phase,direction,reference,signal\n${[0, 25, 50, 75, 100]
    .flatMap((reference) =>
      pairs.map(([calibration]) => `${calibration},as_found,rising,${reference},${4 + reference / 20}\n`),
    )
    .join("")}`,
};

const changed = (file: string, from: string, to: string): Texts => {
  const text = String(twoLoops[file]);
  expect(text).toContain(from);
  return { ...twoLoops, [file]: text.replace(from, to) };
};
const names = async (texts: Texts) =>
  (await checked(texts)).cases.map(({ calibration }) => calibration.row.calibration);

test("a case holds the rows of its calibration and no others, in the order of the calibrations table", async () => {
  const { cases, sentences } = await checked(twoLoops);
  expect(sentences).toEqual([]);
  expect(
    cases.map(({ calibration, instrument, standards }) => [
      calibration.row.calibration,
      instrument.row.tag,
      ...standards.map(({ row }) => row.standard),
    ]),
  ).toEqual(pairs);
  expect(cases.map(({ readings }) => readings.map(({ line }) => line))).toEqual([
    [2, 4, 6, 8, 10],
    [3, 5, 7, 9, 11],
  ]);
});

test.each([
  ["its own row", "calibrations.csv", "C-2,LT-2,2026-03-04", "C-2,LT-2,04.03.2026"],
  ["its instrument", "instruments.csv", "LT-2,0,100", "LT-2,0,ten"],
  ["a standard that it names", "standards.csv", "GB-2,K-8,2025-06-01,2027-06-01", "GB-2,K-8,2025-06-01,soon"],
  ["one of its readings", "readings.csv", "C-2,as_found,rising,0,4", "C-2,as_found,rising,0,four"],
])("a stop in %s stops this calibration and not the other", async (_, file, from, to) => {
  expect(await names(changed(file, from, to))).toEqual(["C-1"]);
});

test("a stop that belongs to nothing stops them all", async () => {
  expect(await names(changed("readings.csv", "reference,signal", "distance,signal"))).toEqual([]);
  expect(await names(changed("readings.csv", "C-2,as_found,rising,0,4", "C-3,as_found,rising,0,4"))).toEqual([]);
});

test("a warning goes to the calibration that it touches, one that belongs to nothing goes to each", async () => {
  const own = await checked(
    changed("standards.csv", "GB-2,K-8,2025-06-01,2027-06-01", "GB-2,K-8,2025-06-01,2026-01-01"),
  );
  expect(own.cases.map(({ warnings }) => warnings.map(({ code }) => code))).toEqual([["model/standard-overdue"], []]);
  const unit = await checked(
    changed("standards.csv", "GB-2,K-8,2025-06-01,2027-06-01,0.02", "GB-2,K-8,2025-06-01,2027-06-01,"),
  );
  expect(unit.cases.map(({ warnings }) => warnings.map(({ code }) => code))).toEqual([
    ["model/standard-without-uncertainty"],
    [],
  ]);
  const coloured = String(twoLoops["instruments.csv"]).replaceAll("\n", ",\n").replace("basis,", "basis,colour");
  const all = await checked({ ...twoLoops, "instruments.csv": coloured });
  expect(all.cases.map(({ warnings }) => warnings.map(({ code }) => code))).toEqual([
    ["tables/column-unknown"],
    ["tables/column-unknown"],
  ]);
});

test("a warning about the run goes to no record", async () => {
  const { cases, codes } = await checked(withFile("notes.csv", "x"));
  expect(codes).toEqual(["tables/file-unknown"]);
  expect(cases[0]?.warnings).toEqual([]);
});

test("a case describes the files that its rows come from, and no others", async () => {
  const unused = await checked({ ...smallestWorkbook, "trips.csv": "calibration,phase,output,direction,reference\n" });
  expect(unused.workbook.files).toHaveLength(5);
  expect(unused.cases[0]?.files.map(({ name }) => name)).toEqual(Object.keys(smallestWorkbook));
});

test("an instrument that is not there without a problem that says so is a mistake of the code", async () => {
  const problems = new ProblemList();
  const workbook = buildWorkbook(await readTables(filesOf(smallestWorkbook), problems), options, problems);
  const [found] = casesOf({ ...workbook, instruments: new KeptRows(new RowsByOwner(), () => void 0 as never) }, []);
  expect(() => found?.read()).toThrow("no instrument LT-1");
});

/** So many calibrations of five readings, which stand together or in turn, and how often a row of them was asked for. */
function watched(count: number, areInTurn = false) {
  const ids = Array.from({ length: count }, (_, index) => index);
  const [instruments = "", loop = ""] = smallestWorkbook["instruments.csv"].split("\n");
  const [calibrations = "", event = ""] = smallestWorkbook["calibrations.csv"].split("\n");
  const [readings = "", ...rows] = smallestWorkbook["readings.csv"].trimEnd().split("\n");
  const named = (row: string, id: number) => row.replace("C-1", `C-${id}`);
  const lines = areInTurn
    ? rows.flatMap((row) => ids.map((id) => named(row, id)))
    : ids.flatMap((id) => rows.map((row) => named(row, id)));
  const asked = { times: 0 };
  const read = async () => {
    const problems = new ProblemList();
    const texts = {
      "standards.csv": smallestWorkbook["standards.csv"],
      "instruments.csv": [instruments, ...ids.map((id) => loop.replace("LT-1", `LT-${id}`))].join("\n"),
      "calibrations.csv": [calibrations, ...ids.map((id) => event.replace("C-1,LT-1", `C-${id},LT-${id}`))].join("\n"),
      "readings.csv": [readings, ...lines].join("\n"),
    };
    const tables = (await readTables(filesOf(texts), problems)).map((table) => ({ ...table, rows: told(table.rows) }));
    const workbook = buildWorkbook(tables, options, problems);
    return { cases: casesOf(workbook, problems.all), problems: problems.all };
  };
  const told = (of: RawRows): RawRows => ({
    length: of.length,
    at(index) {
      asked.times += 1;
      return of.at(index);
    },
    [Symbol.iterator]: () => of[Symbol.iterator](),
  });
  return { asked, read };
}

test("a row is asked for as often whatever the number of calibrations, and those of a case when the case is", async () => {
  const timesARow = async (count: number) => {
    const { asked, read } = watched(count);
    const { cases } = await read();
    expect(cases).toHaveLength(count);
    const before = asked.times;
    cases.at(-1)?.read();
    // Its own row, that of its instrument, and its five readings; the standard is held.
    expect(asked.times - before).toBe(7);
    // The standard is asked for once.
    return (before - 1) / count;
  };
  const few = await timesARow(10);
  // A walk over all rows for each calibration would ask 20 times as often.
  expect(await timesARow(200)).toBe(few);
});

test("the rows of a calibration may stand apart in their table", async () => {
  const [together, inTurn] = await Promise.all([watched(30).read(), watched(30, true).read()]);
  const rowsOf = (found: typeof inTurn) => found.cases.map(({ read }) => read().readings.map(({ row }) => row));
  expect(inTurn.problems).toEqual([]);
  expect(rowsOf(inTurn)).toEqual(rowsOf(together));
  expect(inTurn.cases[1]?.read().readings.map(({ line }) => line)).toEqual([3, 33, 63, 93, 123]);
});

test("a case holds the candidates that are considered for its tag, in the order of their table, and their file", async () => {
  const candidates = "candidate,tags\nA,LT-2\nB,\nC,LT-1;LT-2\nD,LT-1\n";
  const { cases } = await checked({ ...twoLoops, "candidates.csv": candidates });
  expect(cases.map(({ candidates: considered }) => considered.map(({ row }) => row.candidate))).toEqual([
    ["A", "B", "C"],
    ["B", "C", "D"],
  ]);
  const onlyOne = await checked({ ...twoLoops, "candidates.csv": "candidate,tags\nA,LT-2\n" });
  expect(onlyOne.cases.map(({ files }) => files.map(({ name }) => name).includes("candidates.csv"))).toEqual([
    true,
    false,
  ]);
});
