import { type ChangedFigure, changedFor, figureAt, isSameFigure } from "../record/changed-figures.ts";
import type { Difference } from "./compare-records.ts";

/**
 * Two versions may add the same numbers in another order: what is left of a figure's 16 digits then is far more than 9,
 * and no figure is shown with more than 6. Below one of its unit the same holds of the unit.
 */
export const comparedWithin = 1e-9;

/** How many figures two records share, and where they differ. */
export type ComparedFigures = { count: number; differences: readonly Difference[] };

/** What was typed, as it was read: as binding as a figure, and no version reads it otherwise. */
const typed =
  /^(?:instrument|calibration|standards\[\]|outputs\[\])\.|^phases\.\w+\.readings\[\]\.(?:direction|reference|signal|signalAtCard|counts|value)$/u;
/** Words that decide. */
const decided =
  /^phases\.\w+\.(?:verdict|verdicts\.\w+|judged|readings\[\]\.verdict)$|^switching\[\]\.(?:.*\.)?statement$/u;

/**
 * Where a record differs from what another version of the program makes of the same rows, in what both versions define:
 * what was typed, every figure that has a definition which did not change since, and every word that decides. Opinions,
 * reasons in words, and fields that one version has and the other has not, are no such thing.
 *
 * @param expected plain data as JSON has it: what today's program makes of the rows
 * @param found the same, as it was recorded
 * @param version of the program that recorded it
 * @returns how many such places both have, and those that differ by more than `comparedWithin`, in the order of `expected`
 * Source: own choice.
 * @example compareFigures({ phases: { asFound: { verdict: "pass" } } }, { phases: { asFound: { verdict: "fail" } } }, "0.2.0")
 *   // { count: 1, differences: [{ place: "phases.asFound.verdict", expected: '"pass"', found: '"fail"', kind: "value" }] }
 */
export function compareFigures(expected: unknown, found: unknown, version: string): ComparedFigures {
  const phases = isObject(expected) && isObject(expected.phases) ? expected.phases : {};
  const compared = { version, changes: changedFor(phases), count: 0, differences: [] as Difference[] };
  compareAt({ place: "", pattern: "" }, expected, found, compared);
  return { count: compared.count, differences: compared.differences };
}

type Place = { place: string; pattern: string };
type Compared = { version: string; changes: readonly ChangedFigure[]; count: number; differences: Difference[] };

function compareAt(at: Place, expected: unknown, found: unknown, compared: Compared): void {
  if (Array.isArray(expected) && Array.isArray(found)) {
    for (let index = 0; index < Math.max(expected.length, found.length); index += 1)
      compareAt(element(at, index), expected[index], found[index], compared);
  } else if (isObject(expected) && isObject(found)) {
    for (const [name, value] of Object.entries(expected))
      if (Object.hasOwn(found, name)) compareAt(field(at, name), value, found[name], compared);
  } else if (isBinding(at, expected, compared) || isBinding(at, found, compared)) {
    compared.count += 1;
    if (!isSame(expected, found))
      compared.differences.push({ place: at.place, expected: jsonOf(expected), found: jsonOf(found), kind: "value" });
  }
}

/** Whether a figure stands at a place, or anywhere below it. */
function isBinding({ place, pattern }: Place, value: unknown, compared: Compared): boolean {
  if (Array.isArray(value)) return value.some((one) => isBinding(element({ place, pattern }, 0), one, compared));
  if (isObject(value))
    return Object.entries(value).some(([name, one]) => isBinding(field({ place, pattern }, name), one, compared));
  if (typed.test(pattern)) return true;
  return (
    (decided.test(pattern) || figureAt(pattern) !== undefined) &&
    isSameFigure(pattern, compared.version, compared.changes)
  );
}

function isSame(expected: unknown, found: unknown): boolean {
  if (typeof expected !== "number" || typeof found !== "number") return expected === found;
  return Math.abs(expected - found) <= comparedWithin * Math.max(1, Math.abs(expected), Math.abs(found));
}

function element({ place, pattern }: Place, index: number): Place {
  return { place: `${place}[${index}]`, pattern: `${pattern}[]` };
}

function field({ place, pattern }: Place, name: string): Place {
  return { place: place === "" ? name : `${place}.${name}`, pattern: pattern === "" ? name : `${pattern}.${name}` };
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function jsonOf(value: unknown): string | null {
  return value === undefined ? null : JSON.stringify(value);
}
