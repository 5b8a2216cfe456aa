import { expect, test } from "vitest";
import { lonePoints } from "../../../../src/verdict/causes/evidence/lone-points.ts";
import { planted } from "../planted.ts";

test("a point is looked for in every stage that follows its input, and in its own readings only", () => {
  const off = planted({ value: (part, { part: place }) => (place > 0.75 && place < 0.85 ? part + 0.02 : part) });
  expect(lonePoints(off).map(({ stage, lone }) => [stage.stage, Math.round(lone.point), lone.members.length])).toEqual([
    ["input card and scaling", 80, 4],
  ]);
  expect(lonePoints(planted({}))).toEqual([]);
  expect(lonePoints(planted({ signal: () => 12 }))).toEqual([]);
});
