import { expect, test } from "vitest";
import { scatterContributions } from "../../src/analysis/uncertainty/scatter-contributions.ts";
import { cyclesOf, cyclesSource } from "../../src/model/scatter-source.ts";

test("what was measured and what was taken have names of their own, and are told apart by them", () => {
  expect(cyclesSource(3)).toBe("differences between cycles, mean of 3");
  expect(cyclesSource(1, { scatter: "the repeatability" })).toBe(
    "differences between cycles, not measured: taken as large as the repeatability",
  );
  expect(cyclesSource(2, { scatter: "x", agreeing: 3 })).toBe(
    "differences between cycles, not shown: taken as x/√3, mean of 2",
  );
  const sources = [
    cyclesSource(3),
    ...[1, 2].map((cycles) => cyclesSource(cycles, { scatter: "x" })),
    cyclesSource(2, { scatter: "x", agreeing: 2 }),
    "repeatability, mean of 3",
  ];
  expect(sources.map(cyclesOf)).toEqual(["measured", "not measured", "not measured", "not shown", undefined]);
});

test("a budget names them so", () => {
  const scatter = { pooledStdDev: 0.3, degreesOfFreedom: 20 };
  const known = { standardDeviation: 0.3, degreesOfFreedom: 20 };
  const assumed = { ...known, isAssumed: true as const };
  const named = [known, assumed, { ...assumed, agreeing: 2 }].flatMap((betweenCycles) =>
    scatterContributions(
      { repeatability: { ...scatter, betweenCycles }, distanceUnit: "mm" },
      { readings: 2, cycles: 2 },
    ).own.map(({ source }) => cyclesOf(source)),
  );
  expect(named).toEqual([undefined, "measured", undefined, "not measured", undefined, "not shown"]);
});
