import { expect, test } from "vitest";
import { isDetermined, notDetermined } from "../../../src/analysis/figures/figure.ts";

test("a reason is told from a value", () => {
  expect(notDetermined("one cycle only")).toEqual({ notDetermined: "one cycle only" });
  expect(isDetermined(notDetermined("one cycle only"))).toBe(false);
});

test.each([[0], ["pass"], [null], [{ percentSpan: 0 }]])("%j is a value", (figure) => {
  expect(isDetermined<unknown>(figure)).toBe(true);
});

test("a record's map of reasons, which has the same name and holds no sentence, is a value", () => {
  expect(isDetermined<unknown>({ notDetermined: { hysteresis: "one direction" } })).toBe(true);
});
