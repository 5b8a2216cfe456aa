import { expect, test } from "vitest";
import { allLonePoints, lonePoints } from "../../../../src/verdict/causes/evidence/lone-points.ts";
import { planted } from "../planted.ts";

test("a point is looked for in every stage that follows its input, and in its own readings only", () => {
  const off = planted({ value: (part, { part: place }) => (place > 0.75 && place < 0.85 ? part + 0.02 : part) });
  expect(lonePoints(off).map(({ stage, lone }) => [stage.stage, Math.round(lone.point), lone.members.length])).toEqual([
    ["input card and scaling", 80, 4],
  ]);
  expect(lonePoints(planted({}))).toEqual([]);
  expect(lonePoints(planted({ signal: () => 12 }))).toEqual([]);
});

test("an end at which the controller stops a signal beyond the range is no point that is off", () => {
  const stopped = planted({ seen: (part) => part + 0.03, value: (part) => Math.min(1, Math.max(0, part)) });
  expect(lonePoints(stopped)).toEqual([]);
  expect(allLonePoints(stopped).map(({ lone }) => lone.end)).toEqual(["upper"]);
  const inside = planted({ value: (part) => Math.min(0.95, part) });
  expect(lonePoints(inside).map(({ lone }) => lone.end)).toEqual(["upper"]);
});

test("where most readings of a point are explained otherwise, the few that are left are no point that is off", () => {
  const mixed = planted(
    {
      signal: (signal, { part, cycle }) => (part > 0.35 && part < 0.45 ? (cycle < 3 ? 3.4 : signal + 0.4) : signal),
    },
    { cycles: 3 },
  );
  expect(lonePoints(mixed)).toEqual([]);
});

test("a square root in a stage is no point that is off in it", () => {
  const points = { points: [0, 0.25, 0.5, 0.75, 1] };
  expect(lonePoints(planted({ value: (part) => Math.sqrt(Math.max(0, part)) }, points))).toEqual([]);
});
