import { expect, test } from "vitest";
import { scatterContributions } from "../../src/analysis/uncertainty/scatter-contributions.ts";
import { cyclesOf, cyclesSource } from "../../src/model/scatter-source.ts";

test("what was measured and what was taken have names of their own, and are told apart by them", () => {
  expect(cyclesSource(3)).toBe("differences between cycles, mean of 3");
  expect(cyclesSource(1, "repeatability")).toBe(
    "differences between cycles, not measured: taken as large as repeatability",
  );
  expect(
    [cyclesSource(3), cyclesSource(1, "x"), cyclesSource(2, "x"), "repeatability, mean of 3"].map(cyclesOf),
  ).toEqual(["measured", "assumed", "assumed", undefined]);
});

test("a budget names them so", () => {
  const scatter = { pooledStdDev: 0.3, degreesOfFreedom: 20 };
  const known = { standardDeviation: 0.3, degreesOfFreedom: 20 };
  const named = [known, { ...known, isAssumed: true as const }].flatMap((betweenCycles) =>
    scatterContributions(
      { repeatability: { ...scatter, betweenCycles }, distanceUnit: "mm" },
      { readings: 2, cycles: 2 },
    ).own.map(({ source }) => cyclesOf(source)),
  );
  expect(named).toEqual([undefined, "measured", undefined, "assumed"]);
});
