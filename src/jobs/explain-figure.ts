import { type FigureDefinition, figureDefinitions } from "../record/figure-definitions.ts";

/**
 * What a figure is, in the words that the pages use; without a name, the list of all figures.
 * A figure is found by its key or its name, whatever the capitals; nothing where there is none.
 */
export function explainFigure(wanted: string | undefined): string | undefined {
  if (wanted === undefined) return figureDefinitions.map(({ key, name }) => `${key.padEnd(28)} ${name}`).join("\n");
  const found = figureDefinitions.filter((definition) => isMeant(definition, wanted));
  return found.length === 0 ? undefined : found.map(explanation).join("\n\n");
}

/** Names of all figures, for a message that says which there are. */
export function figureKeys(): string {
  return figureDefinitions.map(({ key }) => key).join(", ");
}

function isMeant({ key, name }: FigureDefinition, wanted: string): boolean {
  const asked = folded(wanted);
  return [key, name, key.split(".")[0] ?? ""].some((known) => folded(known) === asked);
}

function folded(text: string): string {
  return text.toLowerCase().replace(/[^a-z0-9]/gu, "");
}

function explanation({ key, name, unit, meaning, formula, source }: FigureDefinition): string {
  return [
    `${name} (${key})`,
    `  ${meaning}`,
    `  formula  ${formula}`,
    `  unit     ${unit}`,
    `  source   ${source}`,
  ].join("\n");
}
