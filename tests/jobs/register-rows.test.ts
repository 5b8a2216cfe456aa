import { expect, test } from "vitest";
import { registerRows } from "../../src/jobs/register-rows.ts";
import { register } from "../report/sample-register.ts";

test("a register is a table: names first, numbers at full precision, what is not known empty", () => {
  const [head, first, , failed] = registerRows(register);
  expect(head).toHaveLength(first!.length);
  const cell = (row: readonly (string | number)[] | undefined, name: string) => row?.[head!.indexOf(name)];
  expect(cell(first, "drift_percent_span_per_year")).toBe(0.05);
  expect(cell(first, "as_left")).toBe("");
  expect(cell(failed, "drift_percent_span_per_year")).toBe("");
  expect(cell(failed, "as_found_error_percent_span")).toBe(-3);
  expect(cell(failed, "due_on")).toBe("");
});
