import { expect, test } from "vitest";
import { tellPoints } from "../../../src/assembly/plausibility/tell-points.ts";
import { rowsOf, withCell, withRows } from "../../workbook/full-workbook.ts";
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

test("where the signal is that of the point no other point would fit; where it is that of the reference, one may", async () => {
  const hintOf = async (changes: (row: Record<string, string>) => Record<string, string>) => {
    const texts = withRows("readings.csv", (row, index) => (index === 3 ? { ...row, ...changes(row) } : row));
    const { measured, problems } = await phaseOf(texts);
    tellPoints(measured, () => "point");
    return String(problems.all[0]?.values.hint);
  };
  const other = rowsOf("readings.csv")[0]!;
  expect(await hintOf(() => ({ reference: other.reference! }))).not.toContain("point ");
  const ofOther = ({ reference, signal }: Record<string, string>) => ({ reference: reference!, signal: signal! });
  expect(await hintOf(() => ofOther(other))).toContain(`point ${Number(other.point)}`);
});
