import { expect, test } from "vitest";
import { meansOf } from "../../src/charts/series-means.ts";
import { frozen } from "./frozen.ts";

test("each series, shape and test point has its own mean", () => {
  const at = (x: number, y: number, shape: "rising" | "falling", series: "asFound" | "sensor") => ({
    point: 50,
    x,
    y,
    shape,
    series,
  });
  const rows = frozen([
    at(50, 1, "rising", "asFound"),
    at(51, 3, "rising", "asFound"),
    at(50, 9, "falling", "asFound"),
    at(50, 7, "rising", "sensor"),
  ]);
  expect(meansOf(rows)).toEqual([
    { x: 50.5, y: 2, shape: "rising", series: "asFound" },
    { x: 50, y: 9, shape: "falling", series: "asFound" },
    { x: 50, y: 7, shape: "rising", series: "sensor" },
  ]);
});
