import { expect, test } from "vitest";
import { plateausOf } from "../../../src/analysis/figures/plateau.ts";
import { expectNear } from "../sample-loop.ts";

const inputs = [0, 20, 40, 60, 80, 100];
const pointsOf = (outputAt: (input: number, copy: number) => number, places = inputs) =>
  places.map((input, place) => ({
    input,
    outputs: [0, 1, 2].map((copy) => outputAt(input, copy)),
    members: [0, 1, 2].map((copy) => 3 * place + copy),
  }));

test("an output that stops at 70 stands still at the upper end, with the knee at 70", () => {
  const [plateau, ...others] = plateausOf(
    inputs.map((input, index) => ({ input, outputs: [Math.min(input, 70)], members: [index] })),
    1,
    0,
  );
  expect(others).toEqual([]);
  expect(plateau).toEqual({ end: "upper", level: 70, knee: 70, deviation: -30, members: [4, 5] });
});

test("a blind zone stands still at the lower end, whatever the gain and offset of the rest", () => {
  const [plateau] = plateausOf(
    pointsOf((input, copy) => Math.max(33, 1.1 * input + 2) + 0.01 * copy),
    1,
    0,
  );
  expect(plateau?.end).toBe("lower");
  expect(plateau?.members).toEqual([3, 4, 5, 0, 1, 2]);
  // 33 = 1.1 x + 2; the copies scatter over 0.02.
  expectNear(plateau?.level, 33.01, 0.01);
  expectNear(plateau?.knee, 31 / 1.1, 0.05);
});

test("both ends are found where enough of the line is left between them", () => {
  const places = [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100];
  const both = plateausOf(
    pointsOf((input) => Math.min(75, Math.max(25, input)), places),
    1,
    0,
  );
  expect(both.map(({ end, level }) => [end, level]).sort()).toEqual([
    ["lower", 25],
    ["upper", 75],
  ]);
});

test("a long plateau does not make one of the rest at the other end", () => {
  const places = [0, 12.5, 25, 37.5, 50, 62.5, 75, 87.5, 100];
  expect(
    plateausOf(
      pointsOf((input) => Math.max(49.7, input), places),
      1,
      0,
    ).map(({ end }) => end),
  ).toEqual(["lower"]);
});

test("a straight line, a bow, noise and an output that follows now and then stand still nowhere", () => {
  expect(
    plateausOf(
      pointsOf((input) => input),
      0.25,
      0,
    ),
  ).toEqual([]);
  expect(
    plateausOf(
      pointsOf((input) => input + (input * (100 - input)) / 800),
      0.25,
      0,
    ),
  ).toEqual([]);
  expect(
    plateausOf(
      pointsOf((input, copy) => input + Math.sin(7 * input + 3 * copy)),
      0.25,
      0,
    ),
  ).toEqual([]);
  expect(
    plateausOf(
      pointsOf((input, copy) => (copy === 2 ? input : Math.min(input, 70))),
      0.25,
      0,
    ),
  ).toEqual([]);
});

test("two points that read alike about their line are a step in it, not a plateau", () => {
  expect(
    plateausOf(
      pointsOf((input) => (input > 70 ? 90 : input)),
      1,
      0,
    ),
  ).toEqual([]);
});

test("fewer than five points have no room for a plateau and a line", () => {
  expect(
    plateausOf(
      pointsOf((input) => Math.min(input, 20), [0, 20, 40, 60]),
      1,
      0,
    ),
  ).toEqual([]);
});

test("of many test points the longest plateau is found, and the fits do not grow with them", () => {
  let looks = 0;
  const counted = (inputs: readonly number[]) =>
    inputs.map((input, index) => ({
      input,
      members: [index],
      get outputs() {
        looks += 1;
        return [Math.min(input, 70)];
      },
    }));
  const points = (count: number) => counted(Array.from({ length: count }, (_, place) => (100 * place) / (count - 1)));
  // From where it stands still to the end, and of the rise before it as much as a tenth of the line would have moved.
  for (const count of [101, 601]) {
    const [found] = plateausOf(points(count), 1, 0);
    expect(found).toMatchObject({ end: "upper", level: 70 });
    expect(Math.abs(found!.members.length / count - 1 / 3)).toBeLessThan(0.005);
  }
  looks = 0;
  plateausOf(points(601), 1, 0);
  expect(looks).toBeLessThan(1000 * 601);
});
