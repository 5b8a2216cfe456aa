import { unzipSync } from "fflate";
import { expect, test } from "vitest";
import { packed, takenIn } from "../../src/sheet/hand-back.ts";
import { noEntries, textAt } from "../../src/sheet/state/entries.ts";
import { entryTables } from "../../src/sheet/state/entry-tables.ts";
import { at, rowOf, sheetOf, typed, wholeRun } from "./sample-sheet.ts";

const bytes = (text: string) => new TextEncoder().encode(text);

test("one package holds the tables as files, and taken into an empty sheet it is the same sheet", async () => {
  const data = await sheetOf();
  const whole = wholeRun(data);
  const zip = packed(entryTables(data, whole, { typedIn: "S-1" }), data.mark);
  expect(Object.keys(unzipSync(zip))).toEqual(["instruments.csv", "standards.csv", "calibrations.csv", "readings.csv"]);
  const { entries, taken, refused } = takenIn(data, noEntries, { name: "back.zip", bytes: zip }, at);
  expect([taken, refused]).toEqual([10, []]);
  expect(textAt(entries, rowOf(data, "as_found/1/rising/25"), "signal")).toBe("8.01");
  expect(takenIn(data, entries, { name: "back.zip", bytes: zip }, at)).toMatchObject({
    taken: 0,
    same: 11,
    refused: [],
  });
});

test("what stands here is never written over; another calibration, another table and no package are told", async () => {
  const data = await sheetOf();
  const entries = typed(data, [["as_found/1/rising/25", "signal", "8.01"]]);
  const header = "calibration,phase,cycle,direction,point,reference,signal\n";
  const taken = (name: string, text: string) => takenIn(data, entries, { name, bytes: bytes(text) }, at).refused;
  expect(taken("readings.csv", `${header}C-1,as_found,1,rising,25,25,8.02\n`)).toEqual([
    "readings.csv:2: signal is 8.02 there and 8.01 here, which is kept",
  ]);
  expect(taken("readings.csv", `${header}C-9,as_found,1,rising,25,25,8.02\n`)).toEqual([
    "readings.csv:2: belongs to the calibration C-9",
  ]);
  expect(taken("notes.csv", "a\n1\n")).toEqual(["notes.csv: no table is called so"]);
  expect(taken("back.zip", "no zip")[0]).toContain("cannot be unpacked");
});
