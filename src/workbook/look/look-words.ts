/** What people write for a direction and a phase, by the word of the table. */
const directionWords: Readonly<Record<string, readonly string[]>> = {
  rising: [
    "rising",
    "up",
    "u",
    "r",
    "increasing",
    "inc",
    "out",
    "outward",
    "outwards",
    "forward",
    "fwd",
    "going out",
    "+",
    "↑",
    "away",
    "receding",
  ],
  falling: [
    "falling",
    "down",
    "d",
    "f",
    "decreasing",
    "dec",
    "in",
    "inward",
    "inwards",
    "back",
    "backward",
    "coming back",
    "-",
    "−",
    "↓",
    "nearer",
    "approaching",
  ],
};

const phaseWords: Readonly<Record<string, readonly string[]>> = {
  as_found: ["as found", "as_found", "found", "before", "af", "as-found"],
  as_left: ["as left", "as_left", "left", "after", "al", "as-left"],
};

/** The word of the table for one that people use; the text itself where it is none. */
export function wordOfTable(column: "direction" | "phase", text: string): string {
  const words = column === "direction" ? directionWords : phaseWords;
  const written = text.trim().toLowerCase();
  const found = Object.entries(words).find(([, spellings]) => spellings.includes(written));
  return found?.[0] ?? text;
}
