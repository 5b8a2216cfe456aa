import type { CalibrationRecord } from "../record/record-schema.ts";
import type { DecisionSheet } from "./decision-sheet.ts";
import { worstWordOf } from "./worst-word.ts";

/** What the record says of the loop, below its decisions: the worst of loop, outputs, loop check and completeness. */
export function overallCells({ overall }: CalibrationRecord, { grid, phases }: DecisionSheet, outputs: string): void {
  if (overall === undefined) return;
  grid.begin("What the record says of the loop");
  const put = (label: string, cell: string | { formula: string; is: string }, how: string) =>
    grid.at("C", grid.add([label, null, cell, how]));
  const of = (phase: string | null) => phases.find(({ name }) => name === phase)?.word;
  const word = of(overall.of) ?? (overall.loop === null ? undefined : of("asFound"));
  const loop = word === undefined ? "not determined" : { formula: word, is: overall.loop ?? "not determined" };
  const cells = [
    put("loop", loop, "as it was left, or found where nothing was done"),
    put("outputs", { formula: outputs, is: overall.outputs ?? "not determined" }, "Outputs"),
    put("loop check", overall.loopCheck ?? "not looked at", "value"),
    put("completeness", overall.complete ? "complete" : "not complete", "value"),
  ];
  for (const { says } of overall.missing) grid.add([null, null, null, says]);
  put("word of the record", { formula: worstWordOf(cells), is: overall.word }, "the worst of these");
}
