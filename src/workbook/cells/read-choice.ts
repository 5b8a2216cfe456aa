import { unitOf } from "../../units/unit-table.ts";
import type { CellResult } from "./cell-result.ts";

const choiceByFoldOfChoices = new WeakMap<readonly string[], ReadonlyMap<string, string>>();

/**
 * One of the words that a column takes. Capitals, spaces, hyphens and underscores do not matter ("As found",
 * "percent_of_span"), "%" is percent, and a unit may be spelled as the unit table knows it ("inches").
 */
export function readChoice(text: string, choices: readonly string[]): CellResult<string> {
  const value =
    byFold(choices).get(folded(text)) ??
    unitAmong(text, choices) ??
    otherName(text, choices) ??
    wordOfToday(text, choices);
  return value === undefined ? { code: "tables/cell-not-choice", values: { choices: choices.join(", ") } } : { value };
}

function byFold(choices: readonly string[]): ReadonlyMap<string, string> {
  const known = choiceByFoldOfChoices.get(choices);
  if (known !== undefined) return known;
  const built = new Map(choices.map((choice) => [folded(choice), choice]));
  choiceByFoldOfChoices.set(choices, built);
  return built;
}

function folded(text: string): string {
  return text
    .replace(/%/gu, "percent")
    .replace(/[\s_-]+/gu, "")
    .toLowerCase();
}

/** What the trade calls some of the words too. */
const otherNames: Readonly<Record<string, string>> = {
  ...{ percentspan: "percent of span", percentfs: "percent of span", percentoffs: "percent of span" },
  ...{ percentfullscale: "percent of span", percentoffullscale: "percent of span", percentofrange: "percent of span" },
  ...{ percentreading: "percent of reading", percentrdg: "percent of reading", percentofrdg: "percent of reading" },
};

function otherName(text: string, choices: readonly string[]): string | undefined {
  const name = otherNames[folded(text)];
  return name !== undefined && choices.includes(name) ? name : undefined;
}

/** What an earlier version called a word, by the word of today. */
const oldNames: Readonly<Record<string, string>> = { fourwords: "non-binary guard band" };

/** The word of today for one that an earlier version used. */
export function wordOfToday(text: string, choices: readonly string[]): string | undefined {
  const name = oldNames[folded(text)];
  return name !== undefined && choices.includes(name) ? name : undefined;
}

function unitAmong(text: string, choices: readonly string[]): string | undefined {
  const unit = unitOf(text);
  return unit !== undefined && choices.includes(unit) ? unit : undefined;
}
