import { expect, test } from "vitest";
import { smallestWorkbook } from "../../workbook/smallest-workbook.ts";
import { spanwright, temporaryFolder, written } from "../built-command.ts";

test("loop-checks prints rows to fill in, and nothing but them", () => {
  const folder = written(temporaryFolder(), smallestWorkbook);
  const { exitCode, output, complaints } = spanwright("loop-checks", folder, "--tag", "LT-1");
  expect({ exitCode, complaints }).toEqual({ exitCode: 0, complaints: "" });
  expect(output).toMatch(/^calibration,item,result,.*\nC-1,identity,,/u);
  expect(spanwright("loop-checks", folder, "--guide").output).toContain("    accept  one and the same everywhere.");
});

test("loop-checks of a tag that is not there says which are, and exits with 2", () => {
  const folder = written(temporaryFolder(), smallestWorkbook);
  const { exitCode, output, complaints } = spanwright("loop-checks", folder, "--tag", "LT-9");
  expect({ exitCode, output }).toEqual({ exitCode: 2, output: "" });
  expect(complaints).toContain('no instrument of the workbook has this tag; read "LT-9"; accepted: LT-1');
});
