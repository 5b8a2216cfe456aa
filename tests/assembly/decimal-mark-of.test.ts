import { expect, test } from "vitest";
import { decimalMarkOf } from "../../src/assembly/decimal-mark-of.ts";
import type { InputFile } from "../../src/model/calibration-case.ts";

const file = (name: string, decimalMark: "point" | "comma", ...tables: InputFile["tables"]): InputFile => ({
  ...{ name, encoding: "xlsx", delimiter: null, decimalMark, tables },
});

test("two sheets of one spreadsheet may differ, and a file that was not described has points", () => {
  const rows = { files: [file("a.xlsx", "point", "instruments"), file("a.xlsx", "comma", "readings", "trips")] };
  expect(decimalMarkOf(rows, "readings")("a.xlsx")).toBe("comma");
  expect(decimalMarkOf(rows, "trips")("a.xlsx")).toBe("comma");
  expect(decimalMarkOf(rows, "instruments")("a.xlsx")).toBe("point");
  expect(decimalMarkOf(rows, "readings")("b.xlsx")).toBe("point");
});
