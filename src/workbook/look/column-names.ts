import { unitOf, unitTable } from "../../units/unit-table.ts";
import { foldedColumnName } from "../header-columns.ts";

/** What people write over the columns of their readings, by the column that is meant; the surer names first. */
const names: Readonly<Record<string, readonly string[]>> = {
  reference: [
    ...["reference", "reference distance", "ref", "actual", "actual distance", "true", "true distance", "standard"],
    ...[
      "measured distance",
      "distance",
      "dist",
      "position",
      "pos",
      "gap",
      "height",
      "tape",
      "rule",
      "rail",
      "laser",
      "x",
    ],
  ],
  signal: [
    ...[
      "signal",
      "output",
      "out",
      "analog",
      "analogue",
      "analog output",
      "current",
      "voltage",
      "loop current",
      "meter",
      "dmm",
    ],
    ...["multimeter", "sensor", "sensor output", "reading", "measured", "y"],
  ],
  signal_at_card: ["signal at card", "at card", "card input", "input card"],
  counts: ["counts", "count", "raw counts", "raw", "adc"],
  value: [
    ...[
      "value",
      "display",
      "displayed",
      "shown",
      "indicated",
      "indication",
      "controller",
      "controller value",
      "plc",
      "plc value",
    ],
    ...["scada", "hmi", "dcs", "level"],
  ],
  point: [
    "point",
    "test point",
    "nominal",
    "set",
    "set point",
    "setpoint",
    "set distance",
    "target",
    "target distance",
    "step",
  ],
  direction: [
    "direction",
    "dir",
    "up down",
    "up/down",
    "updown",
    "rising falling",
    "rising/falling",
    "way",
    "sense",
    "in/out",
  ],
  cycle: ["cycle", "run", "pass", "repeat", "repetition", "loop no", "run no", "cycle no", "trial"],
  phase: [
    "phase",
    "as found as left",
    "as found/as left",
    "found/left",
    "found left",
    "before after",
    "before/after",
    "state",
  ],
  time: ["time", "clock", "timestamp", "date time", "date/time"],
  calibration: ["calibration"],
  rejected: ["rejected"],
  remark: ["remark", "remarks", "note", "notes", "comment", "comments"],
};

export type ColumnOfReadings = keyof typeof names;

/** A name without its unit, and the unit: "Distance (mm)", "distance_mm", "Output in mA", "mA". */
export function withoutUnit(header: string): { name: string; unit: string | undefined } {
  const bracket = /^(.*?)\s*[([]\s*([^)\]]+?)\s*[)\]]\s*$/u.exec(header.trim());
  if (bracket !== null && isUnitOfReadings(bracket[2] ?? "")) return { name: bracket[1] ?? "", unit: bracket[2] };
  const words = header.trim().split(/[\s_,]+/u);
  const last = words.at(-1) ?? "";
  if (!isUnitOfReadings(last)) return { name: header.trim(), unit: undefined };
  const rest = words
    .slice(0, -1)
    .filter((word, place, all) => !(place === all.length - 1 && /^in$/iu.test(word) && all.length > 1));
  return { name: rest.join(" "), unit: last };
}

function isUnitOfReadings(word: string): boolean {
  const unit = unitOf(word);
  return unit !== undefined && ["distance", "current", "voltage"].includes(unitTable[unit].kind);
}

/** How surely a header means a column: 0 is its own name; nothing where it is none of its names. */
export function rankOf(header: string, column: ColumnOfReadings): number | undefined {
  const { name, unit } = withoutUnit(header);
  if (foldedColumnName(header) === column || foldedColumnName(name) === column) return 0;
  const written = folded(name);
  const rank = (names[column] ?? []).findIndex((one) => folded(one) === written);
  if (rank !== -1 && fitsUnit(column, unit)) return rank + 1;
  const isUnitAlone = name === "" && unit !== undefined && fitsUnit(column, unit);
  return isUnitAlone && (column === "reference" || column === "signal") ? 50 : undefined;
}

/** A distance is no signal, and a current no distance. */
function fitsUnit(column: ColumnOfReadings, written: string | undefined): boolean {
  const unit = written === undefined ? undefined : unitOf(written);
  if (unit === undefined) return true;
  const isDistance = unitTable[unit].kind === "distance";
  if (column === "reference" || column === "point") return isDistance;
  return column === "signal" || column === "signal_at_card" ? !isDistance : true;
}

function folded(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^a-z]+/gu, " ")
    .trim();
}

export const columnsOfReadings = Object.keys(names);
