import { expect, test } from "vitest";
import { palette } from "../../src/charts/palette.ts";

/** Relative luminance and contrast ratio as WCAG 2.2 defines them (https://www.w3.org/TR/WCAG22/#dfn-relative-luminance). */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((start) => {
    const part = Number.parseInt(colour.slice(start, start + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((left, right) => left - right);
  return (light + 0.05) / (dark + 0.05);
}

/** The band on paper: its colour at the share with which it is drawn. */
function mixed(colour: string, paper: string, share: number): string {
  const parts = [1, 3, 5].map((start) => {
    const [top, under] = [colour, paper].map((text) => Number.parseInt(text.slice(start, start + 2), 16));
    return Math.round(share * (top ?? 0) + (1 - share) * (under ?? 0))
      .toString(16)
      .padStart(2, "0");
  });
  return `#${parts.join("")}`;
}

test("black on white is 21 to 1, as WCAG 2.2 says", () => {
  expect(contrast("#000000", "#ffffff")).toBe(21);
});

test.each(["ink", "quiet", "asFound", "asLeft", "sensor", "controller"] as const)("%s can be read on paper", (name) => {
  expect(contrast(palette[name], palette.paper)).toBeGreaterThanOrEqual(4.5);
});

test.each(["asFound", "asLeft", "sensor", "controller", "limit", "quiet"] as const)(
  "%s can be seen on paper and on the tolerance band",
  (name) => {
    expect(contrast(palette[name], palette.paper)).toBeGreaterThanOrEqual(3);
    expect(contrast(palette[name], mixed(palette.band, palette.paper, 0.22))).toBeGreaterThanOrEqual(3);
  },
);
