import type { ComponentChildren } from "preact";
import type { FigureKey } from "../../record/figure-definitions.ts";
import type { PhaseRecord } from "../../record/record-schema.ts";

/** One figure: its name, its unit, what it is, and how it reads for a phase. */
export type FigureRow = {
  key: FigureKey;
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

/** A figure, and where it was found on a line of its own, smaller. */
export function Where({ at, children }: { at: string; children: ComponentChildren }) {
  return (
    <>
      {children} <span class="where">{at}</span>
    </>
  );
}
