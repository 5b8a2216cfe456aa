import { expect, test } from "vitest";
import { causeOf, namedCause } from "../../../src/verdict/causes/cause-of.ts";

test("an id that no cause has is refused", () => {
  expect(causeOf("datum-shifted").place).toBe("sensor");
  expect(namedCause("reference-moved").title).toBe("a reference, a bracket or a target that moved");
  expect(namedCause("curved-characteristic").title).toBe("curved characteristic");
  expect(() => causeOf("reference-moved")).toThrow(RangeError);
  expect(() => namedCause("gremlin")).toThrow(RangeError);
});
