import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { smallestWorkbook, type Texts, withText } from "../../workbook/smallest-workbook.ts";
import { spreadsheetOfRows } from "../../workbook/spreadsheet.ts";
import { filesBelow, type Run, spanwright, temporaryFolder, written } from "../built-command.ts";
import { spanwrightInProcess } from "../in-process.ts";

/** The smallest workbook with a second calibration of a second loop. */
const twoLoops = Object.freeze({
  ...smallestWorkbook,
  "instruments.csv": `${smallestWorkbook["instruments.csv"]}LT-2,0,100,mm,4,20,mA,0.5,percent of span\n`,
  "calibrations.csv": `${smallestWorkbook["calibrations.csv"]}C-2,LT-2,2026-03-05,T. Example,GB-1\n`,
  "readings.csv":
    smallestWorkbook["readings.csv"] +
    smallestWorkbook["readings.csv"].split("\n").slice(1).join("\n").replaceAll("C-1", "C-2"),
});

const loneReadings = `direction,reference,signal
rising,200,4.01
rising,650,8.01
rising,1100,12.01
rising,1550,16.01
rising,2000,20.01
`;
const look = ["--range", "200:2000mm", "--signal", "4:20mA", "--tolerance", "0.5%span"] as const;

type Runner = (...words: readonly string[]) => Promise<Run>;

/** The command that was built, in a process of its own. */
const asBuilt: Runner = async (...words) => spanwright(...words);

const reportOf = (texts: Texts, ...words: readonly string[]) => reportBy(spanwrightInProcess, texts, ...words);

async function reportBy(runner: Runner, texts: Texts, ...words: readonly string[]) {
  const root = written(temporaryFolder(), Object.fromEntries(Object.entries(texts).map(([n, t]) => [`book/${n}`, t])));
  const out = join(root, "out");
  const run = await runner("report", join(root, "book"), "--out", out, ...words);
  return { ...run, root, out, files: filesBelow(out).filter((name) => name !== "index.html") };
}

async function reportOfLone(...words: readonly string[]) {
  const root = written(temporaryFolder(), { "rail.csv": loneReadings });
  const out = join(root, "out");
  const run = await spanwrightInProcess("report", join(root, "rail.csv"), "--out", out, ...words);
  return { ...run, out, files: filesBelow(out).filter((name) => name !== "index.html") };
}

test("each calibration gives two files and a line of the summary", async () => {
  const { exitCode, output, complaints, files, out } = await reportBy(asBuilt, twoLoops);
  expect({ exitCode, complaints }).toEqual({ exitCode: 0, complaints: "" });
  expect(files).toEqual(["LT-1/C-1.html", "LT-1/C-1.json", "LT-2/C-2.html", "LT-2/C-2.json"]);
  const [head, , ...lines] = output.trimEnd().split("\n");
  expect(head).toMatch(
    /^tag {3}calibration {2}as found {2}as left {2}overall {2}worst error, % of span {2}to do {2}page$/u,
  );
  expect(lines).toHaveLength(2);
  expect(lines[1]).toMatch(/^LT-2 {2}C-2 +pass +– +[a-z ]+ {2}\+0\.063/u);
  expect(lines[1]?.endsWith(`${out}/LT-2/C-2.html`)).toBe(true);
});

test("the folder has a page that lists every record in it, also those of an earlier run", async () => {
  const { out } = await reportOf(twoLoops);
  const index = readFileSync(join(out, "index.html"), "utf8");
  expect(index).toContain('<a href="LT-1/C-1.html">');
  expect(index).toContain("<h1>2 records</h1>");
  const [root, book] = [dirname(out), join(dirname(out), "book")];
  expect(spanwright("report", book, "--out", join(root, "out"), "--tag", "LT-2").exitCode).toBe(0);
  expect(readFileSync(join(out, "index.html"), "utf8")).toBe(index);
});

test("a verdict of fail is a result, not a fault", async () => {
  const { exitCode, output, files } = await reportOf(withText("readings.csv", "100,20.01", "100,20.51"));
  expect(output).toMatch(/LT-1 +C-1 +fail/u);
  expect(files).toHaveLength(2);
  expect(exitCode).toBe(0);
});

test("a spreadsheet with the tables as sheets gives the same figures as the folder", async () => {
  const sheets = Object.entries(smallestWorkbook).map(([name, text]) => [
    name.replace(".csv", ""),
    text
      .trimEnd()
      .split("\n")
      .map((line) => line.split(",").map((cell) => (/^[\d.]+$/u.test(cell) ? Number(cell) : cell))),
  ]);
  const folder = temporaryFolder();
  written(folder, { "book.xlsx": await spreadsheetOfRows(Object.fromEntries(sheets)) });
  const { exitCode, complaints } = spanwright("report", join(folder, "book.xlsx"), "--out", join(folder, "out"));
  expect({ exitCode, complaints }).toEqual({ exitCode: 0, complaints: "" });
  const fromSheets = JSON.parse(readFileSync(join(folder, "out/LT-1/C-1.json"), "utf8"));
  const { out } = await reportOf(smallestWorkbook);
  const fromFolder = JSON.parse(readFileSync(join(out, "LT-1/C-1.json"), "utf8"));
  expect(fromSheets.phases).toEqual(fromFolder.phases);
  expect(fromSheets.instrument).toEqual(fromFolder.instrument);
});

test("a lone table of readings with its options gives a record under its own name", async () => {
  const { exitCode, files, output } = await reportOfLone(...look);
  expect(exitCode).toBe(0);
  expect(files).toEqual(["rail/rail.html", "rail/rail.json"]);
  expect(output).toMatch(/^rail +rail +pass/mu);
});

test("a lone table takes a tag and a number", async () => {
  expect((await reportOfLone(...look, "--tag", "LT-7", "--calibration", "C-7")).files).toEqual([
    "LT-7/C-7.html",
    "LT-7/C-7.json",
  ]);
});

test("every option of a lone table that is missing or wrong is told at once, and nothing is written", async () => {
  const missing = await reportOfLone();
  expect(missing.exitCode).toBe(2);
  for (const option of ["--range", "--signal", "--tolerance"]) {
    expect(missing.complaints).toMatch(new RegExp(`a lone table of readings needs [^;]*${option}`, "u"));
  }
  const wrong = await reportOfLone("--range", "far", "--signal", "4:20mm", "--tolerance", "0.5%");
  expect(wrong.exitCode).toBe(2);
  for (const option of ["--range", "--signal", "--tolerance"]) {
    expect(wrong.complaints).toContain(`the option ${option} cannot be read;`);
  }
  for (const { files, complaints, output } of [missing, wrong]) {
    expect(files).toEqual([]);
    expect(output).toBe("");
    expect(complaints).toContain("nothing was written; mend what is wrong and run again");
  }
});

test("a tag or a calibration may be picked out", async () => {
  expect((await reportOf(twoLoops, "--tag", "LT-2")).files).toEqual(["LT-2/C-2.html", "LT-2/C-2.json"]);
  expect((await reportOf(twoLoops, "--calibration", "C-1")).files).toEqual(["LT-1/C-1.html", "LT-1/C-1.json"]);
});

test.each([
  ["--tag", "LT-9", "no calibration of the workbook belongs to this tag"],
  ["--calibration", "C-9", "no calibration of the workbook is called so"],
])("%s %s, which the workbook does not have, is a fault", async (option, name, told) => {
  const { exitCode, complaints, files } = await reportOf(twoLoops, option, name);
  expect(exitCode).toBe(2);
  expect(complaints).toContain(told);
  expect(files).toEqual([]);
});

test("a tag and a calibration of another tag are a fault, not silence", async () => {
  const { exitCode, complaints, files } = await reportOf(twoLoops, "--tag", "LT-1", "--calibration", "C-2");
  expect(exitCode).toBe(2);
  expect(complaints).toContain("the calibration does not belong to the tag LT-1");
  expect(files).toEqual([]);
});

test("a broken row leaves out the calibration that it touches and no other", async () => {
  const readings = twoLoops["readings.csv"].replace("C-2,as_found,rising,50,12.01", "C-2,as_found,rising,50,12,01");
  const { exitCode, complaints, output, files } = await reportBy(asBuilt, { ...twoLoops, "readings.csv": readings });
  expect(exitCode).toBe(2);
  expect(files).toEqual(["LT-1/C-1.html", "LT-1/C-1.json"]);
  expect(output).toContain("LT-1");
  expect(output).not.toContain("LT-2");
  expect(complaints).toMatch(/^wrong {2}.*readings\.csv:9: /mu);
  expect(complaints).toContain("1 record was written; those that a problem touches were not");
});

test("a path at which nothing is, is a fault", () => {
  const { exitCode, complaints } = spanwright("report", join(temporaryFolder(), "nowhere"));
  expect(exitCode).toBe(2);
  expect(complaints).toContain("nowhere: there is no such file or folder");
});

test("an out folder that cannot be made is told for each record, and nothing is written", () => {
  const root = written(temporaryFolder(), { out: "a file" });
  const book = written(join(root, "book"), twoLoops);
  const { exitCode, complaints, output } = spanwright("report", book, "--out", join(root, "out"));
  expect(exitCode).toBe(2);
  expect(complaints.match(/nothing could be written there/gu)).toHaveLength(2);
  expect(complaints).toContain("nothing was written; mend what is wrong and run again");
  expect(output).toBe("");
  expect(filesBelow(root)).toEqual([...Object.keys(twoLoops).map((name) => `book/${name}`), "out"].sort());
});
