import { expect, test } from "vitest";
import { registerColumns } from "../../../src/report/columns/register-columns.tsx";
import { namedRows } from "../../../src/report/table/column.ts";
import { register } from "../sample-register.ts";

const registerRows = ({ rows }: Pick<typeof register, "rows">) => namedRows(registerColumns, rows);

test("a register is a table: names first, numbers to six digits, what is not known empty", () => {
  const [head, first, , failed] = registerRows(register);
  expect(head).toHaveLength(first!.length);
  const cell = (row: readonly (string | number)[] | undefined, name: string) => row?.[head!.indexOf(name)];
  expect(cell(first, "drift_percent_span_per_year")).toBe(0.05);
  expect(cell(first, "as_left")).toBe("");
  expect(cell(failed, "drift_percent_span_per_year")).toBe("");
  expect(cell(failed, "as_found_error_percent_span")).toBe(-3);
  expect(cell(failed, "due_on")).toBe("");
});

test("digits that only the computer made are not in the table", () => {
  const rows = register.rows.map((row) => ({
    ...row,
    worstAsFound: { errorPercentSpan: 1.0199999999999818, errorDistance: 20.4 },
  }));
  const [head, first] = registerRows({ ...register, rows });
  expect(first?.[head!.indexOf("as_found_error_percent_span")]).toBe(1.02);
});
