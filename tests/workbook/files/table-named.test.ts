import { expect, test } from "vitest";
import { tableNamed } from "../../../src/workbook/files/table-named.ts";

test.each(["loop_checks", "Loop Checks", "LOOP-CHECKS", " loop_checks "])("%j is the table loop_checks", (name) => {
  expect(tableNamed(name)).toBe("loop_checks");
});

test.each(["loopchecks", "reading", "", "constructor", "__proto__"])("%j is no table", (name) => {
  expect(tableNamed(name)).toBeUndefined();
});
