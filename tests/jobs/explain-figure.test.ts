import { expect, test } from "vitest";
import { explainFigure, figureKeys } from "../../src/jobs/explain-figure.ts";
import { figureDefinition, figureDefinitions } from "../../src/record/figure-definitions.ts";

test("without a name every figure is listed, one a line", () => {
  const lines = explainFigure(undefined)?.split("\n") ?? [];
  expect(lines).toHaveLength(figureDefinitions.length);
  for (const [index, { key, name }] of figureDefinitions.entries())
    expect(lines[index]).toMatch(new RegExp(`^${key.replace(".", "\\.")} +${name}$`, "u"));
});

test.each(["zeroError", "zero error", "Zero-Error", "ZERO ERROR"])(
  "%j is the zero error, in the page's words",
  (wanted) => {
    const { key, name, meaning, formula, unit, source } = figureDefinition("zeroError");
    expect(explainFigure(wanted)).toBe(
      `${name} (${key})\n  ${meaning}\n  formula  ${formula}\n  unit     ${unit}\n  source   ${source}`,
    );
  },
);

test("the first word of a key gives all that belong to it, a name of one alone", () => {
  expect(explainFigure("linearity")?.split("\n\n")).toHaveLength(4);
  expect(explainFigure("linearity.terminal")?.split("\n\n")).toHaveLength(1);
  expect(explainFigure("Linearity, terminal-based")).toBe(explainFigure("linearity.terminal"));
});

test("a name that is none, or is empty, explains nothing", () => {
  for (const wanted of ["colour", "", " ", "zero", "__proto__", "constructor"])
    expect(explainFigure(wanted)).toBeUndefined();
});

test("the keys stand in one line, for the message that lists them", () => {
  expect(figureKeys()).toBe(figureDefinitions.map(({ key }) => key).join(", "));
});
