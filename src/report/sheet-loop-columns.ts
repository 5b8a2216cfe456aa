import type { CalibrationRecord, PhaseRecord, ReadingRecord } from "../record/record-schema.ts";
import type { NumberStyle } from "./number-style.ts";
import { fixedText, signedText, type UnletteredColumn } from "./sheet-column.ts";
import { indicatedFormula } from "./sheet-formulas.ts";

/** The later stages' distances, and how each differs from the one before; only what was read. */
export function loopColumns(
  record: CalibrationRecord,
  phase: PhaseRecord,
  style: NumberStyle,
): readonly UnletteredColumn[] {
  const { distanceUnit } = record.instrument;
  const later = (["counts", "value"] as const).filter(
    (stage) =>
      stage !== phase.judged &&
      phase.readings.some((reading) => reading[stage] !== undefined) &&
      isScaled(record, stage),
  );
  const distances = later.map(
    (stage): UnletteredColumn => ({
      key: `${stage} distance`,
      title: stage === "counts" ? "from counts" : "from controller",
      unit: distanceUnit,
      isNumber: true,
      formula: (letter) => indicatedFormula(record, stage, letter(stage)),
      cell: (reading) => fixedText(stageDistance(record, stage, reading), style.distance),
    }),
  );
  const chain = ["indicated", ...later.map((stage) => `${stage} distance`)];
  const shares = later.map((stage, index): UnletteredColumn => {
    const name = shareName(stage, later.length + (phase.judged === "counts" ? 1 : 0));
    return {
      key: name,
      title: shareTitles[name],
      unit: distanceUnit,
      isNumber: true,
      formula: (letter) => `${letter(chain[index + 1] ?? "")} − ${letter(chain[index] ?? "")}`,
      cell: (reading) => signedText(reading.shares?.[name], style.distance),
    };
  });
  if (!later.includes("value")) return [...distances, ...shares];
  return [
    ...distances,
    ...shares,
    {
      key: "loop",
      title: "loop error",
      unit: distanceUnit,
      isNumber: true,
      formula: (letter) => `${letter("value distance")} − ${letter("reference")}`,
      cell: ({ loopErrorDistance }) => signedText(loopErrorDistance, style.distance),
    },
  ];
}

const shareTitles = {
  inputCard: "input card share",
  scaling: "scaling share",
  inputCardAndScaling: "card and scaling share",
} as const;

/** The share that a stage adds to the one before it; without counts, card and scaling cannot be told apart. */
function shareName(stage: "counts" | "value", laterStages: number): keyof typeof shareTitles {
  if (stage === "counts") return "inputCard";
  return laterStages === 2 ? "scaling" : "inputCardAndScaling";
}

function isScaled({ instrument }: CalibrationRecord, stage: "counts" | "value"): boolean {
  return (stage === "counts" ? instrument.countsLower : instrument.valueLower) !== undefined;
}

/** Reference plus the shares up to a stage: the distance that the stage indicates. */
function stageDistance(
  { instrument }: CalibrationRecord,
  stage: "counts" | "value",
  { reference, shares, loopErrorDistance }: ReadingRecord,
): number | undefined {
  if (stage === "value") return loopErrorDistance === undefined ? undefined : reference + loopErrorDistance;
  if (shares?.sensorAndInputCard !== undefined) return reference + shares.sensorAndInputCard;
  if (shares?.sensor === undefined || shares.inputCard === undefined || instrument.countsLower === undefined) return;
  return reference + shares.sensor + shares.inputCard;
}
