import { expect, test } from "vitest";
import { readPath, short, writePath } from "../../../src/charts/drawing/svg-path.ts";

const written = (d: string, dx = 0, dy = 0) => writePath([readPath(d, dx, dy)]);

const places = (d: string) => readPath(d).subpaths.map(({ steps }) => steps.map(({ x, y }) => [x, y]));

test("places are absolute, whatever the command, and moved", () => {
  // Worked by hand from SVG 2, 9.3: a relative step counts from where the last one ended, z goes back to the start.
  expect(places("M1,2L4,6h2v-3l-1,1Zm10,0H0V5")).toEqual([
    [
      [1, 2],
      [4, 6],
      [6, 6],
      [6, 3],
      [5, 4],
    ],
    [
      [11, 2],
      [0, 2],
      [0, 5],
    ],
  ]);
  expect(written("M1,2l1,1", 10, 20)).toBe("M11 22l1 1");
  expect(places("M0,0A2,2,0,1,1,4,0")).toEqual([
    [
      [0, 0],
      [4, 0],
    ],
  ]);
});

test("a path is written with relative steps of one decimal, the shortest command, and is read back", () => {
  const d = written("M61.5,28.5h782v267h-782Z");
  expect(d).toBe("M61.5 28.5h782v267h-782z");
  expect(places(d)).toEqual(places("M61.5,28.5h782v267h-782Z"));
  expect(written("M0.123456,5L0.3,-5.987")).toBe("M.1 5l.2-11");
});

test("rounding does not add up along a path", () => {
  const far = Array.from({ length: 1000 }, (_, index) => `${index * 0.0149},${index % 2}`);
  const {
    subpaths: [subpath],
  } = readPath(written(`M${far.join("L")}`));
  const last = subpath?.steps.at(-1);
  expect(Math.abs((last?.x ?? 0) - 999 * 0.0149)).toBeLessThanOrEqual(0.051);
});

test("a point on the line between its neighbours goes, a corner stays", () => {
  expect(written("M0,0L1,1L2,2L3,3L3,0")).toBe("M0 0l3 3v-3");
  expect(written("M0,0L5,5L2,2")).toBe("M0 0l5 5-3-3");
});

test("an arc keeps its shape, and subpaths begin where the last one ended", () => {
  expect(written("M2,0A2,2,0,1,1,-2,0A2,2,0,1,1,2,0M5,5h1")).toBe("M2 0a2 2 0 1 1-4 0 2 2 0 1 1 4 0m3 5h1");
  expect(written("M1,1h1v1ZM4,4h1")).toBe("M1 1h1v1zm3 3h1");
});

test("a command is said once for the steps that follow each other, and two fractions need no blank between them", () => {
  // SVG 2, 9.3.9: the second point of "1.6.6" begins another number; a place behind an m would be a line to it.
  const d = "M0,0l.5,8l.5,-1.6l.6,.8m1,1m.2,.3";
  expect(written(d)).toBe("M0 0l.5 8 .5-1.6.6.8m1 1m.2.3");
  expect(written(written(d))).toBe(written(d));
});

test("numbers have no zero that says nothing", () => {
  expect([0.5, -0.2, 10, -0.0001, 2.71459, 0.05, 0.05 - 1e-12].map(short)).toEqual([
    ".5",
    "-.2",
    "10",
    "0",
    "2.7",
    ".1",
    ".1",
  ]);
});

test("a command that vega does not write is refused", () => {
  expect(() => readPath("M0,0T1,1")).toThrow("T is not known");
});
