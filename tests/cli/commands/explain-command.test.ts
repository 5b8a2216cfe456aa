import { expect, test } from "vitest";
import { spanwright } from "../built-command.ts";

test("explain says meaning, formula, unit and source of a figure, however its name is written", () => {
  const byName = spanwright("explain", "Zero error");
  expect(byName.exitCode).toBe(0);
  for (const part of ["Zero error (zeroError)", "formula", "unit     % of span", "source"]) {
    expect(byName.output).toContain(part);
  }
  expect(spanwright("explain", "zero-ERROR")).toEqual(byName);
});

test("explain without a name lists every figure, and refuses one that is none", () => {
  expect(spanwright("explain").output).toContain("hysteresis.withinOneCycle");
  const unknown = spanwright("explain", "beauty");
  expect(unknown.exitCode).toBe(2);
  expect(unknown.output).toBe("");
  expect(unknown.complaints).toContain('no figure of a record is called so; read "beauty"');
  expect(spanwright("explain", "guard bnad").complaints).toContain("is called so; did you mean Guard band?");
});
