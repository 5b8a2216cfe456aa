import { expect, test } from "vitest";
import { airError } from "../../../src/analysis/air/air-error.ts";
import { expectNear } from "../sample-loop.ts";

test("343.2 taken for 330 m/s reads 1000 mm as 1040 mm", () => {
  expectNear(airError(1000, 343.2, 330), 40, 1e-10); // a few roundings of numbers near 1000
});

test("a pulse's way there and back says the same: distance from its time, with the assumed speed", () => {
  for (const [reference, assumed, actual] of [
    [0.4, 343.2, 331],
    [4, 331, 349],
    [12, 343.99, 334.2],
  ] as const) {
    const time = (2 * reference) / actual;
    expectNear(airError(reference, assumed, actual), (assumed * time) / 2 - reference, 1e-13); // roundings near 12
  }
});

test("nothing at the face, and nothing in the air in which it was taught", () => {
  expect(airError(0, 343.2, 330)).toBe(0);
  expect(airError(2000, 343.2, 343.2)).toBe(0);
});
