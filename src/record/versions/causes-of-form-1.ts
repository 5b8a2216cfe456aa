import type { JsonObject } from "./changed-at.ts";

// Form 1 knew its causes by the number of a row and by their words. Both are frozen here, as the programs of that form had
// them; what the causes are called today plays no part.

/** Ids by row, 1 to 34. */
const idsByRow: readonly string[] = Object.freeze([
  "live-zero-scaled-from-zero",
  "from-zero-scaled-as-live-zero",
  "low-constant-wrong",
  "high-constant-wrong",
  "full-scale-count-wrong",
  "units-mixed-up",
  "constants-exchanged",
  "slope-turned-round",
  "offset-of-card",
  "datum-shifted",
  "shunt-or-gain-off",
  "leakage-across-loop",
  "current-limited",
  "voltage-output-overloaded",
  "blind-zone",
  "obstruction-in-beam",
  "target-beyond-range",
  "target-lost-fault",
  "target-lost-held",
  "air-temperature",
  "ends-taught-wrong",
  "output-not-settled",
  "play-in-rig",
  "axis-tilted",
  "weak-target",
  "curved-characteristic",
  "switch-point-off",
  "value-clamped-or-cut",
  "open-wire",
  "current-and-voltage-mixed-up",
  "other-channel",
  "output-and-input-unfit",
  "typing-error",
  "warm-up-or-drift",
]);

/** Ids of what had a row of another cause with words of its own, or words alone. */
const idsByWords: ReadonlyMap<string, string> = new Map([
  ["both scaling constants wrong", "both-constants-wrong"],
  ["both ends of the range taught wrong", "both-ends-taught-wrong"],
  ["hysteresis, or an output not settled when it was read", "hysteresis-of-sensor"],
  ["hysteresis of the sensor or of what guides the target", "hysteresis-of-sensor"],
  ["switch point and analog value shifted together", "output-and-value-shifted"],
  ["a slip in another column of the row", "other-column-slip"],
  ["a reference, a bracket or a target that moved", "reference-moved"],
  ["a reference position or a mark that is off", "reference-position-off"],
  ["a display with too few decimals", "display-too-coarse"],
  ["a wrong entry in the table outputs: labels of inputs differ from maker to maker", "outputs-row-wrong"],
]);

const unknownId = "not-in-the-list";

/**
 * A finding of form 1 in form 2: its cause by id in place of a row.
 *
 * @param finding as form 1 had it
 * @returns the same with `id`; its title stays as it was written
 * Source: the list of causes of form 1.
 * @example findingWithId({ row: 10, title: "datum, mount or zero shifted", rivals: [] }).id // "datum-shifted"
 */
export function findingWithId({ row, ...finding }: JsonObject): JsonObject {
  return { id: idOf(row, finding.title), ...namedIn(finding, "rivals") };
}

/**
 * A note of form 1 in form 2: its candidates by id beside their words.
 *
 * @param note as form 1 had it
 * @returns the same with candidates that have an id and a title
 * Source: the list of causes of form 1.
 * @example noteWithIds({ candidates: ["typing error (33)"] })
 *   // { candidates: [{ id: "typing-error", title: "typing error" }] }
 */
export function noteWithIds(note: JsonObject): JsonObject {
  return namedIn(note, "candidates");
}

/**
 * A step of a recommendation of form 1 in form 2: each reason an object, for a sentence says not by which finding it stands.
 *
 * @param step as form 1 had it, or another part of the recommendation
 * @returns the same with its reasons as `says`
 * Source: own choice.
 * @example stepWithReasons({ reasons: ["It passes."] }) // { reasons: [{ says: "It passes." }] }
 */
export function stepWithReasons(step: JsonObject): JsonObject {
  if (!Array.isArray(step.reasons)) return step;
  return { ...step, reasons: step.reasons.map((says: unknown) => (typeof says === "string" ? { says } : says)) };
}

function idOf(row: unknown, title: unknown): string {
  const byWords = typeof title === "string" ? idsByWords.get(title) : undefined;
  return byWords ?? (typeof row === "number" ? idsByRow[row - 1] : undefined) ?? unknownId;
}

function namedIn(found: JsonObject, field: "rivals" | "candidates"): JsonObject {
  const { [field]: names } = found;
  if (!Array.isArray(names)) return found;
  return { ...found, [field]: names.map((words: unknown) => (typeof words === "string" ? named(words) : words)) };
}

/** "curved characteristic (26)", or words alone. */
function named(words: string): { id: string; title: string } {
  const { title = words, row } = /^(?<title>.*) \((?<row>\d+)\)$/u.exec(words)?.groups ?? {};
  return { id: idOf(row === undefined ? undefined : Number(row), title), title };
}
