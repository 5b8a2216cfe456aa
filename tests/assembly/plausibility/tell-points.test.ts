import { expect, test } from "vitest";
import { tellPoints } from "../../../src/assembly/plausibility/tell-points.ts";
import { withCell } from "../../workbook/full-workbook.ts";
import { phaseOf } from "./measured-rows.ts";

const told = async (place: number, column: string, text: string) => {
  const { measured, told: found } = await phaseOf(withCell("readings.csv", place, column, text));
  const lines = tellPoints(measured, () => "point");
  return [...found(), ...lines];
};

test("a point up to 2 % of span from its reference is at its place; 36 mm of 1800 mm", async () => {
  expect(await told(3, "point", "1520")).toEqual([]);
  expect(await told(3, "point", "1510")).toEqual(["plausible/point-apart 5", 5]);
});
