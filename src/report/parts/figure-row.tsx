import type { ComponentChildren } from "preact";
import type { PhaseRecord } from "../../record/record-schema.ts";

/** One figure: its name, its unit, what it is, and how it reads for a phase. */
export type FigureRow = {
  name: string;
  unit: string;
  meaning: string;
  cell: (phase: PhaseRecord) => ComponentChildren;
};

/** A figure as it reads, or why it was not determined. */
export function withReason<Value>(
  phase: PhaseRecord,
  name: string,
  figure: Value | null,
  show: (figure: Value) => ComponentChildren,
): ComponentChildren {
  if (figure !== null) return show(figure);
  return <span class="not-determined">not determined: {phase.notDetermined[name] ?? "not in these data"}</span>;
}

/** Where or under what a figure was found, smaller and on a line of its own. */
export function Where({ children }: { children: ComponentChildren }) {
  return <span class="where">{children}</span>;
}
