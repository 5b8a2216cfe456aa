import type { PhaseRecord } from "../record/record-schema.ts";

/** The quantity that a part of the loop ends with. */
export function stageOfPart(part: PhaseRecord["endOf"]): PhaseRecord["judged"] {
  if (part === "controller") return "value";
  return part === "input card" ? "counts" : "signal";
}
