import { expect, test } from "vitest";
import { recordSheets } from "../../src/spreadsheet/record-workbook.ts";
import { reportedRecord } from "../jobs/reported-records.ts";

test("a direction that was not read has no series, and every series is of the rows above it", async () => {
  const { record } = await reportedRecord();
  const picture = recordSheets(record).at(-1)!;
  const [chart] = picture.charts ?? [];
  expect(chart?.series.map(({ name }) => name)).not.toContain("mean error, falling");
  const points = record.phases.asFound!.points.length;
  for (const { categories, values } of chart?.series ?? []) {
    for (const range of [categories, values]) {
      const [, first, last] = /\$(\d+):\$[A-G]\$(\d+)$/u.exec(range ?? "") ?? [];
      expect(Number(last) - Number(first)).toBe(points - 1);
    }
  }
});
