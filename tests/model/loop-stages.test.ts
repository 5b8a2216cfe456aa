import { expect, test } from "vitest";
import { axes, stageBetween, stageWords } from "../../src/model/loop-stages.ts";

test("every quantity is followed by a stage to every later one, and each name is one of them", () => {
  const found = axes.flatMap((from, place) => axes.slice(place + 1).map((to) => stageBetween(from, to)));
  expect(found).toHaveLength(10);
  expect(new Set(found)).toEqual(new Set(Object.keys(stageWords)));
  expect(stageBetween("signal", "value")).toBe("inputCardAndScaling");
});

test("no stage leads back", () => {
  expect(() => stageBetween("value", "signal")).toThrow(RangeError);
  expect(() => stageBetween("counts", "counts")).toThrow(RangeError);
});
