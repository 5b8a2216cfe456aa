import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { readNumber } from "../../units/read-number.ts";
import { unitOf, unitTable } from "../../units/unit-table.ts";
import { writePlain } from "../../units/write-number.ts";
import type { RawTable } from "../files/raw-table.ts";
import { withoutUnit } from "./column-names.ts";

type Numbers = { values: readonly number[]; unit: string | undefined };

/**
 * The options that would suit a lone table of readings, by its own numbers: an example to begin with, not a reading of it.
 * Nothing where it has no two references.
 */
export function exampleOptions(
  readings: RawTable<"readings">,
): { range: string; signal: string; isUnitGuessed: boolean } | undefined {
  const references = numbersOf(readings, "reference");
  const points = numbersOf(readings, "point");
  const signals = numbersOf(readings, "signal");
  if (references.values.length < 2) return undefined;
  const isUnitGuessed = references.unit === undefined && points.unit === undefined;
  return { range: exampleRange(references, points), signal: exampleSignal(references, signals), isUnitGuessed };
}

function numbersOf({ header, rows, decimalMark }: RawTable<"readings">, column: string): Numbers {
  const index = header.findIndex((text) => withoutUnit(text).name === column);
  const read = Array.from(rows, ({ cells }) => readNumber(cells[index] ?? "", decimalMark) ?? []).flat();
  const inCells = read.find(({ unit }) => unit !== null)?.unit ?? undefined;
  return { values: read.map(({ value }) => value), unit: withoutUnit(header[index] ?? "").unit ?? inCells };
}

/** From the least to the greatest position, rounded to a hundredth of the way between them. */
function exampleRange(references: Numbers, points: Numbers): string {
  const { values } = points.values.length > 0 ? points : references;
  const unit = unitOf(references.unit ?? points.unit ?? "");
  const own = unit !== undefined && unitTable[unit].kind === "distance" ? unit : "mm";
  const [least, greatest] = [leastOf(values), greatestOf(values)];
  const step = 10 ** Math.floor(Math.log10(Math.max((greatest - least) / 50, 1e-9)));
  const rounded = (value: number) => writePlain(Math.round(value / step) * step).replace("\u2212", "-");
  return `${rounded(least)}:${rounded(greatest)}${own}`;
}

/** The usual signal that the numbers would be, falling where they fall while the distance grows. */
function exampleSignal(references: Numbers, { values, unit }: Numbers): string {
  const greatest = Math.max(0, greatestOf(values));
  const least = Math.min(greatest, leastOf(values));
  const isVolts = unit !== undefined ? /v/iu.test(unit) : values.length > 0 && greatest <= 10.6;
  const [lower, upper] = isVolts
    ? greatest > 5.4
      ? [0, 10]
      : least > 0.8
        ? [1, 5]
        : [0, 5]
    : least > 3
      ? [4, 20]
      : [0, 20];
  const far = references.values.indexOf(greatestOf(references.values));
  const near = references.values.indexOf(leastOf(references.values));
  const isFalling = (values[far] ?? 0) < (values[near] ?? 0);
  return `${isFalling ? `${upper}:${lower}` : `${lower}:${upper}`}${isVolts ? "V" : "mA"}`;
}
