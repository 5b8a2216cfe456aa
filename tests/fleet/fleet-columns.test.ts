import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { fleetColumns } from "../../src/fleet/fleet-columns.ts";

const parquetOf = {
  ...{ text: "text", texts: "list of text", whole: "INT32", number: "DOUBLE", day: "DATE", flag: "BOOLEAN" },
  ...{ digest: "32 bytes", standards: "list of struct" },
} as const;

test("names are those of columns, each once, and a number says its unit", () => {
  const names = fleetColumns.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  expect(names.filter((name) => !/^[a-z][a-z0-9_]*$/u.test(name))).toEqual([]);
  const numbers = fleetColumns.filter(({ kind }) => kind === "number").map(({ name }) => name);
  expect(numbers.filter((name) => !/_(?:mm|percent_span|percent_span_per_year)$/u.test(name))).toEqual([]);
});

test("docs/formats.md has a row for each, in their order", () => {
  const page = readFileSync("docs/formats.md", "utf8");
  const part = page.slice(page.indexOf("## Yearly files"), page.indexOf("## Seal, signature, ledger"));
  const rows = [...part.matchAll(/^\| `(\w+)` +\| ([^|]+?) +\| ([^|]+?) +\|$/gmu)].map(([, ...cells]) => cells);
  const ofPhases = fleetColumns
    .filter(({ name }) => name.startsWith("as_found_"))
    .map(({ name, kind, says }) => [name, parquetOf[kind], says.replace("as found: ", "")]);
  const others = fleetColumns.filter(({ name }) => !/^as_(?:found|left)_/u.test(name));
  expect(rows).toEqual([...others.map(({ name, kind, says }) => [name, parquetOf[kind], says]), ...ofPhases]);
  expect(part).toContain("`as_left_…`");
});

test("what there is of a phase as found there is as left", () => {
  const of = (phase: string) =>
    fleetColumns.filter(({ name }) => name.startsWith(phase)).map(({ name }) => name.slice(phase.length));
  expect(of("as_left_")).toEqual(of("as_found_"));
  expect(of("as_left_")).toHaveLength(16);
});
