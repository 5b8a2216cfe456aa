import { expect, test } from "vitest";
import { type ReadingRowsOptions, readingRows } from "../../../src/jobs/workbook/reading-rows.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { judged } from "../../workbook/full-workbook.ts";
import { smallestWorkbook, type Texts, withColumn, withFile } from "../../workbook/smallest-workbook.ts";
import { inFolder, memoryDisk } from "../memory-disk.ts";

const today = "2026-11-25";
const unread = withFile("readings.csv", "calibration,phase,direction,reference,signal\n");

async function rows(texts: Texts, options: Partial<ReadingRowsOptions> = {}) {
  const { text, problems } = await readingRows(memoryDisk(inFolder("book", texts)), "book", { today, ...options });
  return { text, lines: text.split("\n"), told: problems.all.map(sentence) };
}

test("phases, cycles, directions and points of a tag, with what the signal should be", async () => {
  const { lines, told } = await rows(unread, { points: "3", cycles: "1", phase: "as found" });
  expect(told).toEqual([]);
  expect(lines).toEqual([
    "calibration,phase,cycle,direction,point,reference,signal,remark",
    "C-1,as_found,1,rising,0,,,expected 4 mA",
    "C-1,as_found,1,rising,50,,,expected 12 mA",
    "C-1,as_found,1,rising,100,,,expected 20 mA",
    "C-1,as_found,1,falling,100,,,expected 20 mA",
    "C-1,as_found,1,falling,50,,,expected 12 mA",
    "C-1,as_found,1,falling,0,,,expected 4 mA",
  ]);
  // Both phases, three cycles, five points, two directions.
  expect((await rows(unread)).lines).toHaveLength(1 + 2 * 3 * 5 * 2);
});

test("a loop that asks for commas has them, and semicolons between the cells", async () => {
  const asking = withColumn("instruments.csv", "decimal_mark", "comma");
  const { lines } = await rows(
    { ...asking, "readings.csv": "calibration,phase,direction,reference,signal\n" },
    { points: "9", cycles: "1", phase: "as found" },
  );
  expect(lines.slice(0, 3)).toEqual([
    "calibration;phase;cycle;direction;point;reference;signal;remark",
    "C-1;as_found;1;rising;0;;;expected 4 mA",
    "C-1;as_found;1;rising;12,5;;;expected 6 mA",
  ]);
});

test("filled in, they are accepted by check as they are", async () => {
  const { lines } = await rows(unread, { phase: "as_found" });
  const filled = lines.map((line, index) => {
    const cells = line.split(",");
    const [point, wobble] = [Number(cells[4]), ((index * 7) % 11) / 1000];
    return index === 0
      ? line
      : cells
          .with(5, String(point + wobble * 10))
          .with(6, (4 + 0.16 * point + wobble).toFixed(3))
          .join(",");
  });
  const { sentences, cases } = await judged({ ...unread, "readings.csv": `${filled.join("\n")}\n` });
  expect(sentences).toEqual([]);
  expect(cases[0]?.readings).toHaveLength(30);
});

test("counts and the controller's value have a column where the loop says what they should be", async () => {
  const scaled = String(unread["instruments.csv"])
    .replace("tolerance_basis", "tolerance_basis,counts_lower,counts_upper,value_lower,value_upper,value_unit")
    .replace("of span", "of span,0,27648,-50,50,kg");
  const { lines } = await rows(
    { ...unread, "instruments.csv": scaled },
    { points: "2", cycles: "1", phase: "as_left" },
  );
  expect(lines.slice(0, 2)).toEqual([
    "calibration,phase,cycle,direction,point,reference,signal,counts,value,remark",
    'C-1,as_left,1,rising,0,,,,,"expected 4 mA, 0 counts, −50 kg"',
  ]);
});

test("calibrations without readings come first; a number may be given, and without any the cell is empty", async () => {
  const two = `${unread["calibrations.csv"]}C-2,LT-1,2026-03-05,T. Example,GB-1\n`;
  const names = async (texts: Texts, options: Partial<ReadingRowsOptions> = {}) => [
    ...new Set((await rows(texts, options)).lines.slice(1).map((line) => line.split(",")[0])),
  ];
  expect(await names({ ...smallestWorkbook, "calibrations.csv": two })).toEqual(["C-2"]);
  expect(await names(smallestWorkbook)).toEqual(["C-1"]);
  expect(await names(smallestWorkbook, { calibration: "C-9" })).toEqual(["C-9"]);
  expect(await names({ "instruments.csv": smallestWorkbook["instruments.csv"] })).toEqual([""]);
});

test.each<[Partial<ReadingRowsOptions>, string]>([
  [{ points: "1" }, "--points cannot be read"],
  [{ cycles: "2.5" }, "--cycles cannot be read"],
  [{ phase: "later" }, "--phase cannot be read"],
  [{ tag: "LT-9" }, "no instrument of the workbook has this tag"],
])("%j is told, and nothing is printed", async (options, words) => {
  const { text, told } = await rows(unread, options);
  expect(text).toBe("");
  expect(told[0]).toContain(words);
});

test("a loop that is wrong is told; what else is wrong with the workbook is not asked", async () => {
  const spoiled = String(unread["instruments.csv"]).replace("0,100", "100,100");
  expect((await rows({ ...unread, "instruments.csv": spoiled })).told[0]).toContain("it has no span");
  expect((await rows({ ...unread, "standards.csv": "x" })).told).toEqual([]);
});
