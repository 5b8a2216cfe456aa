import { expect, test } from "vitest";
import { mostReadings } from "../../../src/workbook/checks/reading-count.ts";
import { checked, withFile } from "../smallest-workbook.ts";

const header = "calibration,phase,cycle,direction,point,reference,signal\n";
const references = [0, 25, 50, 75, 100];
const rows = (count: number) =>
  Array.from({ length: count }, (_, place) => {
    const reference = references[place % references.length]!;
    return `C-1,as_found,${Math.floor(place / references.length) + 1},rising,${reference},${reference},${4 + 0.16 * reference}\n`;
  }).join("");

test("a calibration with more readings than a record holds is refused at the first too many, with both numbers", async () => {
  const { problems, workbook } = await checked(withFile("readings.csv", header + rows(mostReadings + 1)));
  expect(problems.filter(({ code }) => code === "model/too-many-readings")).toMatchObject([
    { place: { line: mostReadings + 2 }, values: { readings: mostReadings + 1, most: mostReadings } },
  ]);
  expect(workbook.readings).toEqual([]);
});

test("as many as a record holds are taken", async () => {
  const { problems, workbook } = await checked(withFile("readings.csv", header + rows(mostReadings)));
  expect(problems.filter(({ severity }) => severity === "stop")).toEqual([]);
  expect(workbook.readings).toHaveLength(mostReadings);
});
