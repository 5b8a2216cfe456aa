import { expect, test } from "vitest";
import * as z from "zod";
import {
  type FigureKey,
  figureDefinition,
  figureDefinitions,
  figureSubjects,
} from "../../src/record/figure-definitions.ts";
import { recordSchema } from "../../src/record/record-schema.ts";
import { fieldPaths } from "./field-paths.ts";

/** Numbers of a record that no definition explains, each with the reason; a path as `fieldPaths` writes it. */
const unexplained: readonly (readonly [path: RegExp, reason: string])[] = [
  [
    /^(?:instrument|calibration|standards\[\]|outputs\[\]|switching\[\]\.output)\./u,
    "typed; `new` explains the columns",
  ],
  [/^candidates\.fits\[\]\.supply\.leadTime$/u, "typed, as the table has it"],
  [/^controllerLimits\[\]\.(?:value|delay|deadBand)$/u, "typed, as the table has it"],
  [/^history\[\]\.range/u, "typed, as of the earlier record"],
  [/^inputs\./u, "places and sizes of the files that were read"],
  [/setAside\[\]\.reading$/u, "a place in the list of readings"],
  [/(?:^|\.)row$|worstPoint\.index$|\.number$/u, "a place in a table or a list"],
  [/(?:^|\.)(?:cycle|point)$/u, "which cycle, which test point: where a figure was found, not a figure"],
  [/readings\[\]\.(?:reference|signal|signalAtCard|counts|value)$|trips\[\]\.reference$/u, "as it was typed"],
  [/(?:history\[\]\.\*\.worst|points\[\]|ndPoints\[\])\.reference$/u, "where the test point lies"],
  [/\.counted\.|\.fit\.n$/u, "how many readings, points, cycles"],
  [/decimals(?:\.\w+)?$/u, "how many decimals were typed"],
  [/\.fit\.rSquared$/u, "for machines; it says nothing of an error and stands on no page"],
  [/\.uncertainLine\.(?:slope|intercept|slope\w+|intercept\w+|covariance)$/u, "for machines; the page has distances"],
  [/evidence\[\]\./u, "each carries its own name and unit"],
  [/loopChecks\.items\[\]\.(?:measured|low|high|computed)$/u, "each item carries its own name and unit"],
  [/^filedRate\./u, "how many results a folder holds"],
  [/^software\.selfTest\./u, "how many published examples the program computed"],
  [/^impact\.faults$/u, "how many readings reported a fault"],
  [/^overTheYears\.leading$/u, "a place in a list"],
  [/^overTheYears\.places\[\]\.distance$/u, "where the place lies"],
  [/^recommendation\.thresholds\[\]\.value$/u, "each carries its own name and unit"],
  [
    /^(?:revision$|impact\.since\.revision|history\[\]\.revision|overTheYears\.records\[\]\.revision|amendment\.)/u,
    "how often a record was issued",
  ],
];

const paths = fieldPaths(z.toJSONSchema(recordSchema));
const numbers = paths.filter(({ isNumber }) => isNumber).map(({ path }) => path);

/** The definitions whose longest field ends a path: one of them, or none. */
function definitionsOf(path: string): readonly string[] {
  const fitting = figureDefinitions.flatMap(({ key, fields }) =>
    fields.filter((field) => endsWith(path, field)).map((field) => ({ key, length: field.split(".").length })),
  );
  const longest = Math.max(...fitting.map(({ length }) => length));
  return fitting.filter(({ length }) => length === longest).map(({ key }) => key);
}

function endsWith(path: string, field: string): boolean {
  return path === field || path.endsWith(`.${field}`);
}

test("zeroError is the zero error", () => {
  expect(figureDefinition("zeroError").name).toBe("Zero error");
});

test("no key, no name and no symbol stands twice, and every entry says everything", () => {
  const symbols = figureDefinitions.flatMap(({ symbol }) => symbol ?? []);
  for (const words of [figureDefinitions.map(({ key }) => key), figureDefinitions.map(({ name }) => name), symbols]) {
    expect(new Set(words).size).toBe(words.length);
  }
  for (const definition of figureDefinitions) {
    for (const text of [definition.name, definition.unit, definition.formula, definition.source]) {
      expect(text.trim(), definition.key).toMatch(/./u);
    }
    expect(definition.meaning, definition.key).toMatch(/^[A-Z].*\.$/u);
    // Each is read alone, by `spanwright explain`.
    expect(definition.meaning, definition.key).not.toMatch(/^The same|\bthat line\b/u);
    expect(figureDefinition(definition.key)).toBe(definition);
  }
  expect(figureSubjects.flatMap(({ figures }) => [...figures])).toEqual(figureDefinitions);
});

test("every number of a record has one definition, or stands among the exceptions with its reason", () => {
  expect(numbers.length).toBeGreaterThan(150);
  const excepted = (path: string) => unexplained.some(([exception]) => exception.test(path));
  const undefinedOnes = numbers.filter((path) => definitionsOf(path).length !== 1 && !excepted(path));
  expect(undefinedOnes).toEqual([]);
  const ambiguous = numbers.filter((path) => definitionsOf(path).length > 1);
  expect(ambiguous).toEqual([]);
});

test("no exception is idle", () => {
  for (const [exception, reason] of unexplained) {
    const excepted = numbers.filter((path) => exception.test(path) && definitionsOf(path).length === 0);
    expect(excepted, `${exception}: ${reason}`).not.toEqual([]);
  }
});

test("a definition's fields stand in the form of a record", () => {
  for (const { key, fields } of figureDefinitions) {
    expect(fields, key).not.toEqual([]);
    for (const field of fields) {
      expect(
        paths.filter(({ path }) => endsWith(path, field)),
        `${key}: ${field}`,
      ).not.toEqual([]);
    }
  }
});

test("a number without definition would be told", () => {
  expect(definitionsOf("phases.*.points[].specificRisk")).toEqual(["specificRisk"]);
  expect(definitionsOf("phases.*.points[].beauty")).toEqual([]);
});

test("a figure that is none is a caller's mistake", () => {
  expect(() => figureDefinition("colour" as FigureKey)).toThrow(
    new TypeError("figureDefinition: there is no figure colour"),
  );
});
