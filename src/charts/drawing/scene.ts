import { Bounds } from "vega-scenegraph";
import type { ChartFunctions } from "./chart-functions.ts";
import type { Datum, MarkStep } from "./chart-program.ts";

/** What one row looks like: the channels that its encoders set, under their names. */
export type Item = {
  mark: Mark;
  bounds: Bounds;
  datum: Datum;
  /** Which one it was to be made, for items that are equal in what they are sorted by. */
  serial: number;
  /** The marks inside, of a group. */
  items?: Mark[];
  [channel: string]: unknown;
};

/** Items of one kind, and which of them came, changed and went last. */
export type Mark = {
  marktype: string;
  role: string | undefined;
  name: string | undefined;
  clip: boolean;
  interactive: boolean;
  bounds: Bounds;
  items: Item[];
  group: Item | undefined;
  came: readonly Item[];
  changed: readonly Item[];
  went: readonly Item[];
};

const none: readonly Item[] = [];

/** Every mark has the same fields in one order, by which V8 knows it: a page draws thousands. */
export function newMark(
  { marktype, role, name, clip, interactive }: MarkStep["definition"],
  group: Item | undefined,
): Mark {
  const lists = { came: none, changed: none, went: none };
  return { marktype, role, name, clip, interactive, bounds: new Bounds(), items: [], group, ...lists };
}

export function newItem(mark: Mark, datum: Datum, serial: number): Item {
  return mark.marktype === "group"
    ? { mark, bounds: new Bounds(), datum, serial, items: [] }
    : { mark, bounds: new Bounds(), datum, serial };
}

/** The values of one drawing, or those of one group of a facet above those of its drawing. */
export type Scope = {
  values: unknown[];
  functions: ChartFunctions;
  /** Where marks lie that name no group. */
  group: Item;
  facets: Map<string, Scope>[];
  isAgain: boolean;
};
