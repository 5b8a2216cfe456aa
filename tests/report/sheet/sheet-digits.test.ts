import { expect, test } from "vitest";
import type { UnletteredColumn } from "../../../src/report/sheet/sheet-column.ts";
import { fixedText } from "../../../src/report/sheet/sheet-column.ts";
import { type SheetDigits, sheetDigitsOf } from "../../../src/report/sheet/sheet-digits.ts";
import { numberStyleOf } from "../../../src/report/style/number-style.ts";
import { sampleRecord } from "../../charts/sample-record.ts";

const record = sampleRecord({ phases: ["asFound"] });
const style = numberStyleOf(record);

/** Two columns: a third of a number, and three times what is printed of it. */
const columns = (value: number, { distance, share }: SheetDigits): readonly UnletteredColumn[] => [
  { key: "third", title: "third", unit: "", isNumber: true, cell: () => fixedText(value / 3, distance) },
  {
    ...{ key: "whole", title: "whole", unit: "", isNumber: true, cell: () => fixedText(value, share) },
    work: (printed) => 3 * printed("third"),
  },
];

test("one digit more than the page, where that is enough", () => {
  expect(sheetDigitsOf(record, style, (_, digits) => columns(3, digits))).toEqual({
    distance: style.distance + 1,
    share: style.distance + 1,
    percent: style.percent + 1,
  });
});

test("as many more as it takes for the printed result to follow from the printed number", () => {
  // A third of 1 to three digits is 0.333, and three times that is 0.999: with one digit more, 0.9999, it reads 1.000.
  const digits = sheetDigitsOf(record, style, (_, given) => columns(1, given));
  expect(digits.distance).toBe(style.distance + 2);
});
