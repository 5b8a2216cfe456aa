import { expect, test } from "vitest";
import { smallestWorkbook } from "../../workbook/smallest-workbook.ts";
import { spanwright, temporaryFolder, written } from "../built-command.ts";

test("rows prints the readings to be taken, and writes nothing", () => {
  const folder = written(temporaryFolder(), smallestWorkbook);
  const { exitCode, output } = spanwright("rows", folder, "--tag", "LT-1", "--points", "2", "--cycles", "1");
  expect(exitCode).toBe(0);
  expect(output.split("\n")[1]).toBe("C-1,as_found,1,rising,0,,,expected 4 mA");
  expect(spanwright("rows", folder, "--tag", "LT-9").exitCode).toBe(2);
});
