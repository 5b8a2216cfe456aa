import { expect, test } from "vitest";
import { explainFigure, figuresNear } from "../../../src/jobs/workbook/explain-figure.ts";
import { figureDefinition, figureSubjects } from "../../../src/record/figure-definitions.ts";

test("without a name every figure is listed under its subject, one a line", () => {
  const groups = explainFigure(undefined)?.split("\n\n") ?? [];
  expect(groups).toHaveLength(figureSubjects.length);
  for (const [index, { subject, figures }] of figureSubjects.entries()) {
    const [title, ...lines] = groups[index]?.split("\n") ?? [];
    expect(title).toBe(subject);
    const named = lines.map((line) => /^ {2}(\S+) +(.+)$/u.exec(line)?.slice(1));
    expect(named).toEqual(figures.map(({ key, name }) => [key, name]));
  }
});

test.each(["zeroError", "zero error", "Zero-Error", "ZERO ERROR"])(
  "%j is the zero error, in the page's words",
  (wanted) => {
    const { key, name, meaning, formula, unit, source, fields } = figureDefinition("zeroError");
    expect(explainFigure(wanted)).toBe(
      `${name} (${key})\n  ${meaning}\n  formula  ${formula}\n  unit     ${unit}\n  source   ${source}\n  in JSON  ${fields.join(", ")}`,
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

test("a symbol is explained as it is written: U is not u", () => {
  expect(explainFigure("U")).toMatch(/^Expanded uncertainty, U \(expandedUncertainty\)\n/u);
  expect(explainFigure("u")).toMatch(/^Standard uncertainty, u /u);
  expect(explainFigure("k")).toMatch(/^Coverage factor, k /u);
  expect(explainFigure("ν_eff")).toMatch(/^Effective degrees of freedom/u);
});

test("what issue and page call a figure is found by that name", () => {
  for (const name of [
    ...["standard uncertainty", "effective degrees of freedom", "coverage factor", "expanded uncertainty"],
    ...["acceptance limit", "guard band", "specific risk", "global false accept", "test uncertainty ratio"],
    ...[
      "statement",
      "zero crossing of a stage",
      "best two constants",
      "new constants",
      "speed of sound",
      "error of the air",
    ],
    ...[
      "operating distance",
      "release distance",
      "differential travel",
      "repeat accuracy",
      "set-point error",
      "burden",
    ],
  ]) {
    expect(explainFigure(name), name).toMatch(/^[A-Z].*\n.*\n {2}formula/u);
  }
});

test("a name that is misspelt has its nearest, a part of a name those that hold it, nonsense none", () => {
  expect(figuresNear("guard bnad")).toEqual(["Guard band"]);
  expect(figuresNear("histeresis")).toEqual(["Hysteresis"]);
  expect(figuresNear("coverage")).toEqual(["Coverage factor"]);
  expect(figuresNear("share")).toContain("Wiring share");
  expect(figuresNear("xylophone")).toEqual([]);
  expect(figuresNear("")).toEqual([]);
});
