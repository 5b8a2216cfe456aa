import { expect, test } from "vitest";
import { strictLogger } from "../../../src/charts/drawing/strict-logger.ts";

test("a warning and an error throw with their words", () => {
  expect(() => strictLogger.warn("no domain for", "x")).toThrow("chart: no domain for x");
  expect(() => strictLogger.error(new RangeError("infinite"))).toThrow("infinite");
});

test("what is said for information is let pass", () => {
  expect(strictLogger.info("drawn")).toBe(strictLogger);
  expect(strictLogger.debug("drawn")).toBe(strictLogger);
  expect(strictLogger.level(1)).toBe(strictLogger);
});
