import { expect, test } from "vitest";
import { noEntries } from "../../../src/sheet/state/entries.ts";
import { csvText, entryTables } from "../../../src/sheet/state/entry-tables.ts";
import { judgeSheet } from "../../../src/sheet/state/judge-sheet.ts";
import { inFolder } from "../../jobs/memory-disk.ts";
import { reportedFrom } from "../../jobs/reported-records.ts";
import { sheetOf, today, typed, wholeRun } from "../sample-sheet.ts";

test("the record of a sheet is the one that the command makes of the tables that it hands back", async () => {
  const data = await sheetOf();
  const entries = wholeRun(data);
  const { record, problems } = judgeSheet(data, entries, today);
  expect(problems.filter(({ isStop }) => isStop)).toEqual([]);
  const tables = entryTables(data, entries, { typedIn: data.sheet });
  const files = Object.fromEntries(tables.map((table) => [`${table.table}.csv`, csvText(table, data.mark)]));
  const { records } = await reportedFrom(inFolder("book", files), "book", {});
  const [made] = records;
  expect(record?.phases).toEqual(made?.phases);
  expect(record?.overall).toEqual(made?.overall);
  expect(record?.recommendation).toEqual(made?.recommendation);
});

test("a problem stands at the row and the column of the sheet, in the words of the command", async () => {
  const data = await sheetOf();
  const { record, problems } = judgeSheet(data, typed(data, [["as_found/1/falling/50", "signal", "about 12"]]), today);
  expect(record).toBeUndefined();
  expect(problems).toContainEqual({
    isStop: true,
    isOfRow: true,
    row: "as_found/1/falling/50",
    column: "signal",
    place: "readings",
    says: expect.stringMatching(/"about 12"\. Accepted: /u),
  });
});

test("nothing typed is no record, and never a word", async () => {
  expect(judgeSheet(await sheetOf(), noEntries, today).record).toBeUndefined();
});

test("a pass of the loop check that its number contradicts is told at its row, as the command tells it", async () => {
  const data = await sheetOf();
  const checks = [
    ["check/low fault threshold", "result", "pass"],
    ["check/low fault threshold", "measured", "3.9"],
  ] as const;
  const { problems } = judgeSheet(
    data,
    { ...wholeRun(data), cells: { ...wholeRun(data).cells, ...typed(data, checks).cells } },
    today,
  );
  expect(problems).toContainEqual({
    isStop: false,
    isOfRow: true,
    row: "check/low fault threshold",
    column: "result",
    place: "loop check",
    says: expect.stringContaining("the result of low fault threshold is pass, and yet"),
  });
});
