import { lastLooks, looksByItem } from "../../record/looks-by-item.ts";
import type { LoopCheckItem, LoopChecksRecord } from "../../record/loop-check-schema.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeFixed, writePlain } from "../../units/write-number.ts";

/** A number that was computed for a loop check: five significant digits, none of them zeros at the end. */
export function checkNumber(value: number): string {
  return writePlain(Number(value.toPrecision(5)));
}

/** "allowed 12 to 30 V"; nothing where neither side is limited. */
export function allowedWords({ low, high, words, unit }: LoopCheckItem): string | undefined {
  const own = words.length === 0 ? [] : [words.join(" to ")];
  const limits = [...own, ...numbersAllowed(low, high, unit ?? "")];
  return limits.length === 0 ? undefined : `allowed ${limits.join("; ")}`;
}

function numbersAllowed(low: number | null, high: number | null, unit: string): readonly string[] {
  if (low === null && high === null) return [];
  if (low === null) return [`${checkNumber(high as number)} ${unit} at most`];
  if (high === null) return [`${checkNumber(low)} ${unit} or more`];
  if (low === high) return [`${checkNumber(low)} ${unit}`];
  return [`${checkNumber(low)} to ${checkNumber(high)} ${unit}`.trim()];
}

/** "12 of 13 items pass; fail: supply at full output." */
export function countWords({ items }: LoopChecksRecord): string {
  const answered = lastLooks(items).filter(({ result }) => result !== "not applicable");
  if (answered.length === 0) return "No item was looked at.";
  const failed = answered.filter(({ result }) => result === "fail").map(({ item }) => item);
  const mended = mendedOf(items);
  const again = mended.length === 0 ? "" : ` Failed, and passed when looked at again: ${mended.join(", ")}.`;
  return `${passedWords(answered.length - failed.length, answered.length, failed)}${again}`;
}

function passedWords(passed: number, all: number, failed: readonly string[]): string {
  if (failed.length > 0)
    return `${passed} of ${all} items ${passed === 1 ? "passes" : "pass"}; fail: ${failed.join(", ")}.`;
  return passed === 1 ? "The one item that was looked at passes." : `All ${passed} items that were looked at pass.`;
}

function mendedOf(items: readonly LoopCheckItem[]): readonly string[] {
  return looksByItem(items)
    .filter((looks) => looks.at(-1)?.result === "pass" && looks.some(({ result }) => result === "fail"))
    .flatMap(([first]) => first?.item ?? []);
}

/** "Not complete: nobody has answered that the loop was restored."; nothing where it is complete. */
export function incompleteWords({ loopChecks }: CalibrationRecord): string | undefined {
  if (loopChecks === undefined || loopChecks.incomplete.length === 0) return undefined;
  return `Not complete: ${loopChecks.incomplete.join("; ")}.`;
}

/** Items whose last result is pass while something lies outside. */
export function contradictionsOf({ loopChecks }: CalibrationRecord): readonly LoopCheckItem[] {
  return lastLooks(loopChecks?.items ?? []).filter(({ isContradiction }) => isContradiction);
}

/** The burden as a sum that a reader can follow, what is allowed, and the margin. */
export function burdenWords({ loopChecks, instrument }: CalibrationRecord): string | undefined {
  const { burden } = loopChecks ?? {};
  if (burden === undefined || burden === null) return undefined;
  const { card, barrier, cable, total, greatest, setBy, neededSupplyVolts, highestCurrent = 21 } = burden;
  const highest = `${writePlain(highestCurrent)} mA`;
  const ohms = (value: number) => `${writePlain(Number(value.toPrecision(4)))} Ω`;
  const allowed =
    setBy === "supply"
      ? `(${writePlain(instrument.supplyVoltage ?? 0)} V − ${writePlain(instrument.supplyMin ?? 0)} V) / ${highest} = ${ohms(greatest)}`
      : `${ohms(greatest)} (load_max)`;
  const needed =
    neededSupplyVolts === null ? "" : ` At ${highest} the loop needs ${writeFixed(neededSupplyVolts, 1)} V.`;
  return (
    `Burden: card ${ohms(card)} + barrier ${ohms(barrier)} + cable 2 · ${writePlain(cable.lengthMetres / 1000)} km · ` +
    `${writePlain(Number(cable.ohmsPerKilometre.toPrecision(4)))} Ω/km at ${writePlain(cable.temperatureCelsius)} °C, ` +
    `${ohms(cable.resistance)} = ${ohms(total)}; allowed ${allowed}; ` +
    `margin ${writeFixed(100 * (1 - total / greatest), 0)} %.${needed}`
  );
}
