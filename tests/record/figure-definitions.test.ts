import { expect, test } from "vitest";
import { type FigureKey, figureDefinition, figureDefinitions } from "../../src/record/figure-definitions.ts";
import { phaseSchema } from "../../src/record/phase-schema.ts";

test("zeroError is the zero error", () => {
  expect(figureDefinition("zeroError").name).toBe("Zero error");
});

test("no key and no name stands twice, and every entry says everything", () => {
  expect(new Set(figureDefinitions.map(({ key }) => key)).size).toBe(figureDefinitions.length);
  expect(new Set(figureDefinitions.map(({ name }) => name)).size).toBe(figureDefinitions.length);
  for (const definition of figureDefinitions) {
    for (const text of Object.values(definition)) expect(text.trim(), definition.key).toMatch(/./u);
    expect(definition.meaning, definition.key).toMatch(/\.$/u);
    expect(figureDefinition(definition.key)).toBe(definition);
  }
});

test("a key names a field of a phase in the record, or of its fitted line or its readings", () => {
  const fields = [...Object.keys(phaseSchema.shape), "error", "slope", "intercept", "residualStdDev"];
  for (const { key } of figureDefinitions) expect(fields, key).toContain(key.split(".")[0]);
});

test("a figure that is none is a caller's mistake", () => {
  expect(() => figureDefinition("colour" as FigureKey)).toThrow(
    new TypeError("figureDefinition: there is no figure colour"),
  );
});
