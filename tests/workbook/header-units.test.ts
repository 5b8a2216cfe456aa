import { expect, test } from "vitest";
import { checked, withFile } from "./smallest-workbook.ts";

const rows = ["0,4.01", "25,8.01", "50,12.01", "75,16.01", "100,20.01"];
const readings = (header: string, cells: readonly string[] = rows) =>
  withFile(
    "readings.csv",
    `calibration,phase,direction,${header}\n${cells.map((cell) => `C-1,as_found,rising,${cell}\n`).join("")}`,
  );

test("the unit in brackets is that of the numbers under it, and stands in the text that is kept", async () => {
  const { workbook, sentences } = await checked(
    readings("Reference (cm),signal [mA]", ["0,4.01", "2.5,8.01", "50 mm,12.01", "7.5,16.01", "10,20.01"]),
  );
  expect(sentences).toEqual([]);
  expect(workbook.readings.map(({ row }) => row.reference)).toEqual([0, 25, 50, 75, 100]);
  expect(workbook.readings.map(({ cells }) => cells.reference)).toEqual(["0 cm", "2.5 cm", "50 mm", "7.5 cm", "10 cm"]);
});

test("a unit of another kind in the header is refused at each cell", async () => {
  const { codes } = await checked(readings("reference,signal (V)"));
  expect(codes).toEqual(Array(5).fill("tables/cell-unit-kind"));
});

test("a remark in brackets behind a column without units is no unit", async () => {
  const { codes, cases } = await checked(
    readings(
      "reference,signal,cycle (run)",
      rows.map((row) => `${row},1`),
    ),
  );
  expect(codes).toEqual([]);
  expect(cases).toHaveLength(1);
});

test("what stands under a name that is no column is kept with its row", async () => {
  const { workbook } = await checked(
    readings(
      "reference,signal,weather",
      rows.map((row) => `${row},rain`),
    ),
  );
  expect(workbook.readings[0]?.cells).toMatchObject({ weather: "rain" });
});
