import type { LoopCheckItem } from "./loop-check-schema.ts";

type Look = Pick<LoopCheckItem, "item" | "result">;

/**
 * The looks at each item of a loop check that somebody answered: an item that was looked at again has several.
 *
 * @param items rows of the loop check, in the order of the table
 * @returns a list an item, in the order of the first looks; rows without a result are not there
 * Source: own choice.
 * @example looksByItem([{ item: "shield", result: "fail" }, { item: "shield", result: "pass" }])[0].length // 2
 */
export function looksByItem<Item extends Look>(items: readonly Item[]): readonly (readonly Item[])[] {
  const byItem = new Map<string, Item[]>();
  for (const one of items) {
    if (one.result === "not looked at") continue;
    byItem.set(one.item, [...(byItem.get(one.item) ?? []), one]);
  }
  return [...byItem.values()];
}

/**
 * The last look at each item: what it found holds, whatever was found before.
 *
 * @param items rows of the loop check, in the order of the table
 * @returns a row an item, in the order of the first looks
 * Source: own choice; what was put right is looked at again.
 * @example lastLooks([{ item: "shield", result: "fail" }, { item: "shield", result: "pass" }])[0].result // "pass"
 */
export function lastLooks<Item extends Look>(items: readonly Item[]): readonly Item[] {
  return looksByItem(items).flatMap((looks) => looks.at(-1) ?? []);
}
