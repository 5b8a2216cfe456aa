import { expect, test } from "vitest";
import { smallChart } from "../../src/charts/small-chart.ts";

test("each chart of each phase has ids and a class of its own", () => {
  const words = { title: "Title", caption: "Caption", description: "Description" };
  expect(smallChart("stage", "asFound", words)).toEqual({
    idPrefix: "stage-as-found",
    className: "chart stage-chart as-found",
    title: "Title",
    description: "Description",
    size: { width: 470, height: 280 },
  });
  expect(smallChart("stage", "asLeft", words).idPrefix).toBe("stage-as-left");
});
