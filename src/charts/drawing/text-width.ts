import advances from "./inter-advances.json" with { type: "json" };

/** What vega knows of a text that it is about to place. */
export type MeasuredText = {
  text?: unknown;
  fontSize?: number | undefined;
  fontWeight?: string | number | undefined;
  limit?: number | undefined;
};

const unknownAdvance = 0.6 * advances.unitsPerEm;
const boldFrom = 500;

const indexByCharacter: ReadonlyMap<string, number> = new Map(
  Array.from(advances.characters, (character, index) => [character, index]),
);

/**
 * How wide a text is in the embedded font, in pixels; layout is then the same on every machine.
 * The embedded font has no kerning. A character that the font lacks counts 0.6 of the size.
 * Never more than the item's `limit`, because this function stands in for the one of vega that cuts.
 */
export function textWidth(item: MeasuredText, text: unknown = item.text): number {
  const size = item.fontSize ?? 11;
  const weights = isBold(item.fontWeight) ? advances.semibold : advances.regular;
  let units = 0;
  for (const character of String(text ?? "").trim()) {
    units += weights[indexByCharacter.get(character) ?? -1] ?? unknownAdvance;
  }
  const width = (units / advances.unitsPerEm) * size;
  return item.limit !== undefined && item.limit > 0 ? Math.min(width, item.limit) : width;
}

function isBold(weight: string | number | undefined): boolean {
  return weight === "bold" || Number(weight) >= boldFrom;
}
