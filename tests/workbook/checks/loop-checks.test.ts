import { expect, test } from "vitest";
import { checked, smallestWorkbook, withColumn, withFile } from "../smallest-workbook.ts";
import { told } from "./told.ts";

const header = "calibration,item,result,measured,unit,low,high\n";

test("a safety function without a permit is a warning; with one, or for another loop, it is none", async () => {
  expect(await told(withColumn("instruments.csv", "criticality", "safety"))).toEqual([
    "model/permit-missing calibrations:2",
  ]);
  expect(await told(withColumn("instruments.csv", "criticality", "quality"))).toEqual([]);
  const permitted = {
    ...withColumn("instruments.csv", "criticality", "safety"),
    "calibrations.csv": withColumn("calibrations.csv", "bypass_permit", "EX-1")["calibrations.csv"] ?? "",
  };
  expect(await told(permitted)).toEqual([]);
  const none = withColumn("calibrations.csv", "bypass_permit", "none")["calibrations.csv"] ?? "";
  expect(await told({ ...permitted, "calibrations.csv": none })).toEqual(["model/permit-missing calibrations:2"]);
});

test("items without a result are told once a calibration, at the first of them", async () => {
  const texts = withFile("loop_checks.csv", `${header}C-1,shield,pass,,,,\nC-1,burden,,,,,\nC-1,restored,,,,,\n`);
  expect(await told(texts)).toEqual(["model/loop-check-open loop_checks:3:result"]);
});

test("a limit stands on its side; both may be one number", async () => {
  const limits = (low: string, high: string) =>
    told(withFile("loop_checks.csv", `${header}C-1,wires,pass,2,wires,${low},${high}\n`));
  expect(await limits("3", "2")).toEqual(["model/limits-reversed loop_checks:2:high"]);
  expect(await limits("2", "2")).toEqual([]);
  expect(await limits("two", "1")).toEqual([]);
});

test("numbers of a loop check are read with the decimal mark of their file, in the unit that the row names", async () => {
  const rows =
    "calibration;item;result;measured;unit;low\nC-1;supply;pass;23,8 V;V;12,5\nC-1;burden;pass;0,5 kΩ;Ω;\nC-1;x;pass;3 of 4;;\n";
  const { workbook, codes } = await checked({ ...smallestWorkbook, "loop_checks.csv": rows });
  expect(codes).toEqual([]);
  expect(workbook.loopChecks.map(({ row }) => [row.measured, row.low])).toEqual([
    [23.8, 12.5],
    [500, undefined],
    ["3 of 4", undefined],
  ]);
});

test("words with commas or full stops in a loop check do not settle the decimal mark", async () => {
  const rows = `${header}C-1,a,pass,2. channel,,,\nC-1,b,pass,"pin 1, pin 3",,,\nC-1,c,pass,"1,25",mm,,\n`;
  const { codes, workbook } = await checked({ ...smallestWorkbook, "loop_checks.csv": rows });
  expect(codes).toEqual([]);
  expect(workbook.loopChecks.map(({ row }) => row.measured)).toEqual(["2. channel", "pin 1, pin 3", 1.25]);
});
