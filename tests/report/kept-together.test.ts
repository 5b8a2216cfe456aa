import { expect, test } from "vitest";
import { keptTogether } from "../../src/report/kept-together.ts";

test("a number stays with its unit, and a value with its uncertainty", () => {
  expect(keptTogether("+22.8 ± 2.6 mm at 3000 mm, 190 % of it")).toBe(
    "+22.8\u00a0±\u00a02.6\u00a0mm at 3000\u00a0mm, 190\u00a0% of it",
  );
});

test("words of other texts break where they did", () => {
  expect(keptTogether("5 test points, row 7 lies outside")).toBe("5 test points, row 7 lies outside");
});
