import { type FigureDefinition, figureDefinitions, figureSubjects } from "../../record/figure-definitions.ts";
import { nearestWord } from "../../workbook/nearest-word.ts";

/**
 * What a figure is, in the words that the pages use; without a name, the names of all figures by subject.
 * A figure is found by its key or its name, whatever the capitals, or by its symbol; nothing where there is none.
 */
export function explainFigure(wanted: string | undefined): string | undefined {
  if (wanted === undefined) return figureSubjects.map(listOf).join("\n\n");
  const found = figuresMeant(wanted);
  return found.length === 0 ? undefined : found.map(explanation).join("\n\n");
}

/** The definitions of the figures that a name or a symbol means; all of them without one. */
export function figuresMeant(wanted: string | undefined): readonly FigureDefinition[] {
  if (wanted === undefined) return figureDefinitions;
  const bySymbol = figureDefinitions.filter(({ symbol }) => symbol === wanted.trim());
  return bySymbol.length > 0 ? bySymbol : figureDefinitions.filter((definition) => isMeant(definition, wanted));
}

/** Names that were probably meant: the nearest one, or else those that hold what was written. */
export function figuresNear(wanted: string): readonly string[] {
  const asked = folded(wanted);
  const byWord = new Map(figureDefinitions.flatMap(({ key, name }) => wordsFor(key, name)));
  const nearest = byWord.get(nearestWord(asked, [...byWord.keys()]) ?? "");
  if (nearest !== undefined) return [nearest];
  if (asked.length < shortestPart) return [];
  return figureDefinitions.filter(({ key, name }) => folded(key + name).includes(asked)).map(({ name }) => name);
}

/** A shorter part of a name fits too many of them. */
const shortestPart = 3;

function listOf({ subject, figures }: (typeof figureSubjects)[number]): string {
  return [subject, ...figures.map(({ key, name }) => `  ${key.padEnd(27)} ${name}`)].join("\n");
}

function wordsFor(key: string, name: string): readonly (readonly [string, string])[] {
  return [
    [folded(key), name],
    [folded(name), name],
  ];
}

function isMeant({ key, name }: FigureDefinition, wanted: string): boolean {
  const asked = folded(wanted);
  return [key, name, key.split(".")[0] ?? ""].some((known) => folded(known) === asked);
}

function folded(text: string): string {
  return text.toLowerCase().replace(/[^a-z0-9]/gu, "");
}

function explanation({ key, name, symbol, unit, meaning, formula, source, fields }: FigureDefinition): string {
  return [
    `${name}${symbol === undefined ? "" : `, ${symbol}`} (${key})`,
    `  ${meaning}`,
    `  formula  ${formula}`,
    `  unit     ${unit}`,
    `  source   ${source}`,
    `  in JSON  ${fields.join(", ")}`,
  ].join("\n");
}
