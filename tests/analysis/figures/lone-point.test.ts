import { expect, test } from "vitest";
import { lonePoint } from "../../../src/analysis/figures/lone-point.ts";

const context = { mattering: 0.5, leastScatter: 0.001 };

/** Points along 0 to 100, read out and back so often; the error by place and by how often it was read. */
const readAt = (points: number, times: number, error: (part: number, place: number, time: number) => number) =>
  Array.from({ length: points * times }, (_, index) => {
    const place = index % points;
    const input = (100 * place) / (points - 1);
    return { index, point: input, input, error: error(input / 100, place, Math.floor(index / points)) };
  });

test("one point of six that lies 1.2 off a slope in every reading is found, with its place and its readings", () => {
  const at = (lone: number) =>
    readAt(6, 4, (part, place, time) => 0.4 * part + (place === lone ? 1.2 : 0) + 0.01 * (time % 2));
  const found = lonePoint(at(2), context)!;
  expect(found).toMatchObject({ point: 40, members: [2, 8, 14, 20], end: "none" });
  expect(found.deviation).toBeCloseTo(1.2, 12);
  expect(found.others).toBeLessThan(1e-12);
  expect(lonePoint(at(0), context)).toMatchObject({ point: 0, end: "lower" });
  expect(lonePoint(at(5), context)).toMatchObject({ point: 100, end: "upper" });
});

test("one wild reading, a point read once, two points off, and what does not matter are none", () => {
  expect(
    lonePoint(
      readAt(6, 4, (_, place, time) => (place === 2 && time === 1 ? 3 : 0)),
      context,
    ),
  ).toBeUndefined();
  expect(
    lonePoint(
      readAt(6, 1, (_, place) => (place === 2 ? 3 : 0)),
      context,
    ),
  ).toBeUndefined();
  expect(
    lonePoint(
      readAt(9, 2, (_, place) => (place > 6 ? 3 : 0)),
      context,
    ),
  ).toBeUndefined();
  expect(
    lonePoint(
      readAt(6, 4, (_, place) => (place === 2 ? 0.4 : 0)),
      context,
    ),
  ).toBeUndefined();
  expect(
    lonePoint(
      readAt(4, 4, (_, place) => (place === 1 ? 3 : 0)),
      context,
    ),
  ).toBeUndefined();
});

test("readings of the point that do not agree with each other are none", () => {
  expect(
    lonePoint(
      readAt(6, 4, (_, place, time) => (place === 2 ? 1 + time : 0)),
      context,
    ),
  ).toBeUndefined();
});

test("no end of a parabola or of a bend is a lone point, however few the points are", () => {
  for (let points = 5; points <= 21; points += 1) {
    expect(
      lonePoint(
        readAt(points, 2, (part) => 8 * (part - 0.5) ** 2),
        context,
      ),
      `${points}`,
    ).toBeUndefined();
    expect(
      lonePoint(
        readAt(points, 2, (part) => 8 * part ** 3),
        context,
      ),
      `${points}`,
    ).toBeUndefined();
    expect(
      lonePoint(
        readAt(points, 2, (part) => 8 * Math.max(0, part - 0.6)),
        context,
      ),
      `${points}`,
    ).toBeUndefined();
  }
});
