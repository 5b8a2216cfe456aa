import { expect, test } from "vitest";
import { howMany } from "../how-many.ts";
import { judgeSpoiled, type Outcome } from "./spoiled/judge-spoiled.ts";
import { ways } from "./spoiled/spoil.ts";

/** Another first seed: SPOILED_FROM=50000 npx vitest run tests/properties/spoiled-workbooks.test.ts. */
const first = Number(process.env.SPOILED_FROM ?? 1);
/** Of a way of spoiling that is silent in one workbook of a hundred, 240 workbooks show one in 91 runs of 100. */
const tried = howMany(240, 3200);
const seeds = Array.from({ length: tried }, (_, index) => first + index);

test("of some hundred spoiled workbooks, or some thousand, none is silent: it is told, or read as its cells say", async () => {
  const outcomes: Outcome[] = [];
  let good = 0;
  for (const seed of seeds) {
    const outcome = await judgeSpoiled(seed);
    if (outcome !== "not good") good += 1;
    if (typeof outcome === "object") outcomes.push(outcome);
  }
  const count = (wanted: Outcome["outcome"]) => outcomes.filter(({ outcome }) => outcome === wanted).length;
  const silent = outcomes.filter(({ outcome }) => outcome === "silent");
  process.stdout.write(
    `spoiled workbooks, seeds ${first} to ${seeds.at(-1)}: ${outcomes.length} spoiled, ${count("told")} told, ${count("harmless")} harmless, ${silent.length} silent, ${good} of ${seeds.length} good\n`,
  );
  expect(silent).toEqual([]);
  expect(outcomes.length).toBeGreaterThan(0.93 * tried);
  // A good workbook is one of which nothing is told; a word on one in two hundred would be too many.
  expect(good / seeds.length).toBeGreaterThan(0.995);
  expect(new Set(outcomes.map(({ way }) => way))).toEqual(new Set(Object.keys(ways)));
});
