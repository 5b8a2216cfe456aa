import type { Instrument, Output } from "../../model/instrument.ts";
import { controllerItems } from "./controller-items.ts";
import type { LoopItem } from "./loop-item.ts";
import { siteItems } from "./site-items.ts";
import { wiringItems } from "./wiring-items.ts";

/** Every item of a loop check, in the order of the work. */
export const loopItems: readonly (LoopItem & { key: LoopItemKey })[] = [
  ...wiringItems,
  ...controllerItems,
  ...siteItems,
].toSorted((one, other) => one.number - other.number);

type ListedItem = (typeof wiringItems | typeof controllerItems | typeof siteItems)[number];

/** What the list calls its items: a key that is none of these does not compile. */
export type LoopItemKey = ListedItem["key"];
/** Those that stand once for each switched output. */
type OutputItemKey = Extract<ListedItem, { eachOutput: true }>["key"];
/** The key of an item as it applies to a tag: "trip point of Q1". */
export type AppliedKey = Exclude<LoopItemKey, OutputItemKey> | `${OutputItemKey} of ${string}`;

/** Items that the list has not, and that the causes know where a user writes them down. */
export type OwnItemKey = "simulated 20 mA" | "supply voltage";

/** An item as it applies to one tag: its own key, its unit, the output that it looks at. */
export type ApplicableItem = Pick<LoopItem, "number" | "look" | "record" | "accepted" | "unit"> & {
  key: AppliedKey;
  output?: Output;
};

/**
 * The items of a loop check that apply to one tag: by signal, principle, scaling, fault levels and outputs.
 *
 * @param instrument a checked row
 * @param outputs switched outputs of the tag; an item of outputs stands once for each
 * @returns items in the order of the list, units in full: "mm", "mA", numbered from 1 without a gap
 * Source: the usual steps of a loop check in the trade; IEC 62382 says that they are to be made and leaves how to the
 *   user.
 * @example applicableItems({ tag: "LT-1", rangeLower: 0, rangeUpper: 1, distanceUnit: "m", signalLower: 0,
 *   signalUpper: 10, signalUnit: "V", tolerance: 1, toleranceBasis: "percent of span" }, []).length // 28
 */
export function applicableItems(instrument: Instrument, outputs: readonly Output[]): readonly ApplicableItem[] {
  const applying = loopItems.filter(
    ({ appliesTo, eachOutput }) => (appliesTo?.(instrument) ?? true) && (!eachOutput || outputs.length > 0),
  );
  const places = [...new Set(applying.map(({ number }) => number))];
  return applying.flatMap(({ eachOutput, appliesTo, ...item }) => {
    const applied = { ...item, ...unitOf(item, instrument), number: places.indexOf(item.number) + 1 };
    if (!eachOutput) return [{ ...applied, key: item.key as AppliedKey }];
    const key = item.key as OutputItemKey;
    return outputs.map((output) => ({ ...applied, key: keyOfOutput(key, output.output), output }));
  });
}

/**
 * The key of an item that stands once for each switched output.
 *
 * @param key of the list
 * @param output name of the output
 * @returns the key as it applies to that output
 * Source: own choice.
 * @example keyOfOutput("trip point", "Q1") // "trip point of Q1"
 */
export function keyOfOutput(key: OutputItemKey, output: string): AppliedKey {
  return `${key} of ${output}`;
}

/**
 * The item of the list that a row of a loop check answers.
 *
 * @param item key as it applies to a tag, or what a user calls an item of their own
 * @returns key of the list; undefined for an item that the list has not
 * Source: own choice.
 * @example listedKey("trip point of Q1") // "trip point"
 */
export function listedKey(item: string): LoopItemKey | undefined {
  return loopItems.find(({ key, eachOutput }) => (eachOutput ? item.startsWith(`${key} of `) : item === key))?.key;
}

function unitOf(
  { unit }: Pick<LoopItem, "unit">,
  { distanceUnit, signalUnit, valueUnit }: Instrument,
): { unit?: string } {
  if (unit === "value") return valueUnit === undefined ? {} : { unit: valueUnit };
  if (unit === "distance") return { unit: distanceUnit };
  if (unit === "signal") return { unit: signalUnit };
  return unit === undefined ? {} : { unit };
}

/**
 * A key as it is compared: keys are typed by hand, so that capitals, spaces and hyphens do not count.
 *
 * @param key as typed, or as the list has it
 * @returns the same for spellings that a person takes for one
 * Source: own choice.
 * @example foldedKey("Supply at full-output") === foldedKey("supply at full output") // true
 */
export function foldedKey(key: string): string {
  return key.toLowerCase().replace(/[\s-]+/gu, "");
}
