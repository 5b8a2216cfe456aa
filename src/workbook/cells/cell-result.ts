import type { ProblemCode } from "../../problems/catalogue.ts";
import type { Problem } from "../../problems/problem.ts";

/** What one cell says, or what is wrong with it. */
export type CellResult<Value = CellValue> = { value: Value } | { code: ProblemCode; values: Problem["values"] };

export type CellValue = string | number | boolean | readonly string[];
