import { isDetermined } from "../../src/analysis/figures/figure.ts";
import type { Loop } from "../../src/analysis/readings/loop.ts";
import { assemblePhase, type PhaseContext } from "../../src/assembly/phase/assemble-phase.ts";
import type { DrawnBy } from "../../src/assembly/phase/assemble-points.ts";
import type { Calibration, Reading, Standard } from "../../src/model/calibration.ts";
import type { TableRow } from "../../src/model/calibration-case.ts";
import type { PhaseRecord } from "../../src/record/record-schema.ts";
import type { DecisionRule } from "../../src/verdict/decision/decision-rule.ts";
import { loop as usualLoop } from "../analysis/sample-loop.ts";
import { frozen } from "../charts/frozen.ts";

/** What may differ from simple acceptance of the usual loop on 4 March 2026, without standards. */
export type PhaseChanges = {
  loop?: Loop;
  calibration?: Partial<Calibration>;
  standards?: readonly Standard[];
  rule?: DecisionRule;
  mark?: "point" | "comma";
  drawnBy?: DrawnBy;
};

export function phaseContext(changes: PhaseChanges = {}): PhaseContext {
  const { loop = usualLoop, calibration, standards = [], mark = "point", drawnBy } = changes;
  return {
    loop,
    instrument: frozen({
      tag: "LT-1",
      rangeLower: 0,
      rangeUpper: 100,
      distanceUnit: "mm",
      signalLower: 4,
      signalUpper: 20,
      signalUnit: "mA",
      tolerance: 1,
      toleranceBasis: "distance",
    }),
    calibration: { calibration: "C-1", tag: "LT-1", performedOn: "2026-03-04", alignmentAngle: 0, ...calibration },
    standards,
    rule: changes.rule ?? { name: "simple acceptance", guardFactor: 0 },
    markOf: () => mark,
    drawnBy,
  };
}

/** Rows as a table gives them, from line 2 on; the text of a cell is the number as it is written here. */
export function tableRows(readings: readonly Reading[], mark: "point" | "comma" = "point"): TableRow<Reading>[] {
  return readings.map((row, index) => ({
    row,
    file: "readings.csv",
    line: index + 2,
    cells: Object.fromEntries(
      Object.entries(row).map(([name, value]) => [name, mark === "comma" ? `${value}`.replace(".", ",") : `${value}`]),
    ),
  }));
}

export function phaseOf(readings: readonly Reading[], changes: PhaseChanges = {}): PhaseRecord {
  const phase = assemblePhase(frozen(tableRows(readings, changes.mark)), phaseContext(changes));
  if (!isDetermined(phase)) throw new Error(phase.notDetermined);
  return { ...phase, complete: true, missing: [] };
}
