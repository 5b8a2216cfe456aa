import { expect, test } from "vitest";
import { tellCopies } from "../../../src/assembly/plausibility/tell-copies.ts";
import { rowsOf, withRows } from "../../workbook/full-workbook.ts";
import { phaseOf } from "./measured-rows.ts";

const told = async (texts: ReturnType<typeof withRows>) => {
  const { measured, told: found } = await phaseOf(texts);
  tellCopies(measured);
  return found();
};

test("a cycle is told once, at its first reading; a row at its line", async () => {
  const rows = rowsOf("readings.csv");
  const cycle = withRows("readings.csv", (row, index) =>
    index >= 10 && index < 20 ? { ...(rows[index - 10] ?? row), cycle: "2" } : row,
  );
  expect(await told(cycle)).toEqual(["plausible/cycle-copied 12"]);
  expect(await told(withRows("readings.csv", (row, index) => (index === 3 ? [row, row] : row)))).toEqual([
    "plausible/row-copied 6",
  ]);
});
