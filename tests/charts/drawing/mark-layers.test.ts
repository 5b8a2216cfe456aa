import { expect, test } from "vitest";
import { layersOf } from "../../../src/charts/drawing/mark-layers.ts";
import { type Outline, readPath, writePath } from "../../../src/charts/drawing/svg-path.ts";

const square = (x: number, y = 0) => readPath("M0,0h8v8h-8Z", x, y);
const written = (marks: readonly Outline[]) => layersOf(marks).map(writePath);

test("marks that are apart are one layer, one that touches another lies above it", () => {
  expect(written([square(0), square(20)])).toEqual(["M0 0h8v8h-8zm20 0h8v8h-8z"]);
  expect(written([square(0), square(4), square(40)])).toEqual(["M0 0h8v8h-8zm40 0h8v8h-8z", "M4 0h8v8h-8z"]);
});

test("a mark lies above the highest that it touches, and no lower than any after it that touches it", () => {
  const [first, second, third] = layersOf([square(0), square(4), square(8, 2)]);
  expect([first, second, third].map((layer) => layer?.length)).toEqual([1, 1, 1]);
});

test("two circles whose bows touch are two layers, though their ends are apart", () => {
  // Each 4 pixels round its middle: the outline begins and ends on the middle line.
  const circle = (y: number) => readPath("M4,0A4,4,0,1,1,-4,0A4,4,0,1,1,4,0", 0, y);
  expect(layersOf([circle(0), circle(9)])).toHaveLength(2);
  expect(layersOf([circle(0), circle(60)])).toHaveLength(1);
});

test("whatever the places, every mark is there once, and two that lie over each other are in their order", () => {
  const marks = Array.from({ length: 60 }, (_, index) => square((index * 37) % 100, (index * 53) % 90));
  const layers = layersOf(marks);
  expect(layers.flat()).toHaveLength(marks.length);
  const layerOf = (mark: Outline) => layers.findIndex((layer) => layer.includes(mark));
  for (const [place, mark] of marks.entries()) {
    for (const later of marks.slice(place + 1).filter((one) => overlaps(mark, one))) {
      expect(layerOf(later)).toBeGreaterThan(layerOf(mark));
    }
  }
});

function overlaps(one: Outline, other: Outline): boolean {
  return Math.abs(one.dx - other.dx) < 8 && Math.abs(one.dy - other.dy) < 8;
}
