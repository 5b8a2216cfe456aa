import type { CalibrationRecord, PhaseRecord, ReadingRecord, Shares } from "../../record/record-schema.ts";
import { fixedText, signedText, type UnletteredColumn } from "./sheet-column.ts";
import type { SheetDigits } from "./sheet-digits.ts";
import { indicatedFormula } from "./sheet-formulas.ts";

/** The later stages' distances, and how each differs from the one before; only what was read. */
export function loopColumns(
  record: CalibrationRecord,
  phase: PhaseRecord,
  digits: SheetDigits,
): readonly UnletteredColumn[] {
  const { distanceUnit } = record.instrument;
  const judgedAt = phase.judged === "signal" ? -1 : laterQuantities.indexOf(phase.judged);
  const later = laterQuantities.filter(
    (quantity, place) =>
      place > judgedAt &&
      phase.readings.some((reading) => reading[quantity] !== undefined) &&
      isScaled(record, quantity),
  );
  const distances = later.map(
    (quantity): UnletteredColumn => ({
      key: `${quantity} distance`,
      title: distanceTitles[quantity],
      unit: distanceUnit,
      isNumber: true,
      formula: (letter) => indicatedFormula(record, stageOf(quantity), letter(quantity)),
      cell: (reading) => fixedText(stageDistance(quantity, reading), digits.distance),
    }),
  );
  const chain = ["indicated", ...later.map((quantity) => `${quantity} distance`)];
  const shares = later.map((quantity, index): UnletteredColumn => {
    const name = shareName(quantity, later[index - 1] ?? phase.judged);
    return {
      key: name,
      title: shareTitles[name],
      unit: distanceUnit,
      isNumber: true,
      formula: (letter) => `${letter(chain[index + 1] ?? "")} − ${letter(chain[index] ?? "")}`,
      work: (printed) => printed(chain[index + 1] ?? "") - printed(chain[index] ?? ""),
      cell: (reading) => signedText(reading.shares?.[name], digits.share),
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
      work: (printed) => printed("value distance") - printed("reference"),
      cell: ({ loopErrorDistance }) => signedText(loopErrorDistance, digits.distance),
    },
  ];
}

/** In the order in which a loop passes them on. */
const laterQuantities = ["signalAtCard", "counts", "value"] as const;
type LaterQuantity = (typeof laterQuantities)[number];

const distanceTitles = { signalAtCard: "from card signal", counts: "from counts", value: "from controller" } as const;

const shareTitles = {
  wiring: "wiring share",
  inputCard: "input card share",
  scaling: "scaling share",
  inputCardAndScaling: "card and scaling share",
} as const satisfies Partial<Record<keyof Shares, string>>;

/** The share that a quantity adds to the one before it; without counts, card and scaling cannot be told apart. */
function shareName(quantity: LaterQuantity, before: string): keyof typeof shareTitles {
  if (quantity === "signalAtCard") return "wiring";
  if (quantity === "counts") return "inputCard";
  return before === "counts" ? "scaling" : "inputCardAndScaling";
}

function stageOf(quantity: LaterQuantity): PhaseRecord["judged"] {
  return quantity === "signalAtCard" ? "signal" : quantity;
}

function isScaled({ instrument }: CalibrationRecord, quantity: LaterQuantity): boolean {
  if (quantity === "signalAtCard") return true;
  return (quantity === "counts" ? instrument.countsLower : instrument.valueLower) !== undefined;
}

/** Reference plus the shares up to a quantity: the distance that it stands for. */
function stageDistance(quantity: LaterQuantity, reading: ReadingRecord): number | undefined {
  const { reference, shares = {}, loopErrorDistance, counts, signalAtCard } = reading;
  if (quantity === "value") return loopErrorDistance === undefined ? undefined : reference + loopErrorDistance;
  if (quantity === "signalAtCard" ? signalAtCard === undefined : counts === undefined) return undefined;
  const upToCard = (shares.sensor ?? 0) + (shares.wiring ?? 0) + (shares.sensorAndWiring ?? 0);
  if (quantity === "signalAtCard") return reference + upToCard;
  return reference + upToCard + (shares.inputCard ?? 0) + (shares.sensorAndInputCard ?? 0);
}
