import { expect, test } from "vitest";
import { measuredPhase, ownUnit, shown, tellOf, writtenIn } from "../../../src/assembly/plausibility/measured-phase.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { measuredRows, phaseOf } from "./measured-rows.ts";

test("a phase is on one scale, with what matters and its steps in percent of span", async () => {
  const { measured } = await phaseOf();
  expect(measured.staged).toHaveLength(20);
  // Tolerance 0.5 % of span; 0.1 mm of 1800 mm, 0.001 mA of 16 mA, 0.1 of 100 %.
  expect(measured.mattering).toBeCloseTo(0.25, 12);
  expect(measured.steps.reference).toBeCloseTo(100 * (0.1 / 1800), 12);
  expect(measured.steps.signal).toBeCloseTo(0.00625, 12);
  expect(measured.steps.value).toBeCloseTo(0.1, 12);
});

test("a phase without readings is none", async () => {
  const rows = await measuredRows();
  const without = { ...rows, readings: rows.readings.filter(({ row }) => row.phase === "as_left") };
  expect(measuredPhase(without, "as_found", tellOf("C-1", new ProblemList()))).toBeUndefined();
});

test("units, phases and numbers in words", async () => {
  const { instrument } = (await phaseOf()).measured;
  expect(ownUnit(instrument, "reference")).toBe("mm");
  expect(ownUnit(instrument, "signalAtCard")).toBe("mA");
  expect(ownUnit(instrument, "counts")).toBe("counts");
  expect(ownUnit(instrument, "value")).toBe("%");
  expect(shown(4.90000001, 3)).toBe("4.9");
});

test("what was written counts only where it stands without a unit", () => {
  const of = (signal: string) => writtenIn({ file: "readings.csv", cells: { signal } }, "signal", () => "point");
  expect(of("4.91")).toMatchObject({ value: 4.91, decimals: 2 });
  expect(of("4.91 mA")).toBeUndefined();
  expect(of("")).toBeUndefined();
});

test("a problem belongs to its calibration and names the cell that was read", () => {
  const problems = new ProblemList();
  tellOf("C-1", problems)({ file: "readings.csv", line: 3, cells: { cycle: "2" } }, "plausible/cycle-copied", {
    column: "cycle",
    values: {},
  });
  expect(problems.all[0]).toMatchObject({
    place: { file: "readings.csv", line: 3, column: "cycle" },
    read: "2",
    belongsTo: { calibration: "C-1" },
  });
});
