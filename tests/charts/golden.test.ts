import { expect, test } from "vitest";
import { normalised } from "./golden.ts";

test("a golden keeps two decimals, numbers its ids and has an element a line", () => {
  expect(
    normalised('<svg aria-describedby="error-wide-description"><desc id="error-wide-description">a</desc></svg>'),
  ).toBe('<svg aria-describedby="id-1">\n<desc id="id-1">a</desc>\n</svg>\n');
  expect(normalised("<text>+0.0015</text>")).toBe("<text>+0.0015</text>\n");
  expect(normalised('<path d="M1.23456,-7.5L-0.001,2"/>')).toBe('<path d="M1.23,-7.5L0,2"/>\n');
});
