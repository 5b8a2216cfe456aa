import { expect, test } from "vitest";
import { columnsOf } from "../../../src/model/column.ts";
import { columnName } from "../../../src/model/column-name.ts";
import { instrumentSchema } from "../../../src/model/instrument.ts";
import {
  thresholdsOf,
  thresholdValues,
  usualThresholds,
} from "../../../src/verdict/recommendation/recommendation-thresholds.ts";

test("a limit of the instrument's row wins and says so; the others say that they are our own choice", () => {
  const [adjustAt, residual] = thresholdsOf({ adjustAt: 80 });
  expect(adjustAt).toMatchObject({ name: "adjustAt", value: 80, from: "instruments table" });
  expect(residual).toMatchObject({ name: "reteachResidualMax", value: 50, from: "default, own choice" });
});

test("every limit is a column of the table instruments, under the name that the page prints", () => {
  const columns = columnsOf(instrumentSchema).map(({ name }) => name);
  for (const { name, column } of thresholdsOf({})) {
    expect(columns).toContain(column);
    expect(column).toBe(columnName(name));
  }
});

test("what the table says of an empty cell is the default", () => {
  for (const { name, column, value } of thresholdsOf({})) {
    if (name === "adjustAt") continue;
    expect(columnsOf(instrumentSchema).find((one) => one.name === column)?.about).toContain(`${value} where empty`);
  }
});

test("as numbers they are the defaults of an empty row", () => {
  expect(thresholdValues(thresholdsOf({}))).toEqual(usualThresholds);
});
