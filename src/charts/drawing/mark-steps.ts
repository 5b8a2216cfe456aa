import { type Bounds, boundClip, Marks } from "vega-scenegraph";
import { greatestOf } from "../../numeric/least-and-greatest.ts";
import type { Datum, Known, MarkStep, SizedStep } from "./chart-program.ts";
import { type Item, type Mark, newItem, newMark, type Scope } from "./scene.ts";

/** The items of a mark's rows; in the second round those of ticks that are still there stay, and new ones come last. */
export function bindItems(scope: Scope, step: MarkStep, before: Mark | undefined): Mark {
  const rows = scope.values[step.rows] as readonly Datum[];
  if (before === undefined) {
    const group = step.group === undefined ? scope.group : ((scope.values[step.group] as Mark).items[0] as Item);
    const mark = newMark(step.definition, group);
    (group.items ?? [])[step.index] = mark;
    for (let index = 0; index < rows.length; index++) mark.items.push(newItem(mark, rows[index] as Datum, index));
    mark.came = mark.items;
    return mark;
  }
  before.came = none;
  before.changed = none;
  before.went = none;
  if (step.isKeyed) rejoin(before, rows);
  return before;
}

const none: readonly Item[] = [];

function rejoin(mark: Mark, rows: readonly Datum[]): void {
  const byKey = new Map(mark.items.map((item) => [String(item.datum.value), item]));
  const [came, changed]: [Item[], Item[]] = [[], []];
  const last = Math.max(-1, greatestOf(mark.items.map(({ serial }) => serial)));
  for (const row of rows) {
    const key = String(row.value);
    const known = byKey.get(key);
    if (known === undefined) {
      const item = newItem(mark, row, last + 1 + came.length);
      byKey.set(key, item);
      came.push(item);
    } else {
      known.datum = row;
      changed.push(known);
    }
  }
  const stays = new Set(rows);
  const isHere = ({ datum }: Item) => stays.has(datum);
  mark.went = mark.items.filter((item) => !isHere(item));
  mark.items = [...mark.items.filter(isHere), ...came];
  mark.came = came;
  mark.changed = changed;
}

/** Whether nothing of a mark is other than in the first round, so that neither are its bounds. */
export function isUnchanged({ marktype, came, changed, went }: Mark): boolean {
  return marktype !== "group" && came.length + changed.length + went.length === 0;
}

type Encode = Extract<SizedStep, { kind: "encode" }>;

/** Sets the channels of all items; those that did not come now are changed where a channel is. */
export function encodeMark(mark: Mark, { enter, update }: Encode, inputs: Known, { functions, isAgain }: Scope): void {
  const encode = (item: Item) => {
    const isEntered = enter?.call(functions, item, inputs) ?? 0;
    const isUpdated = update?.call(functions, item, inputs) ?? 0;
    return isEntered + isUpdated > 0;
  };
  for (const item of mark.came) encode(item);
  if (!isAgain) return;
  const { came, changed, items } = mark;
  const others =
    came.length + changed.length === 0 ? items : items.filter((one) => !came.includes(one) && !changed.includes(one));
  mark.changed = [...changed, ...others].filter(encode);
}

/** By what lies at the paths; a missing value comes first, and items that are equal stay as they were made. */
export function sortItems(mark: Mark, paths: readonly (readonly string[])[]): void {
  mark.items.sort((one, other) => compared(one, other, paths) || one.serial - other.serial);
}

function compared(one: Item, other: Item, paths: readonly (readonly string[])[]): number {
  for (const path of paths) {
    const [a, b] = [valueAt(one, path), valueAt(other, path)];
    if ((a < b || a == null) && b != null) return -1;
    if ((a > b || b == null) && a != null) return 1;
    if (Number.isNaN(a) !== Number.isNaN(b)) return Number.isNaN(a) ? -1 : 1;
  }
  return 0;
}

function valueAt(item: Item, path: readonly string[]): number {
  const value = path.reduce<unknown>((at, name) => (at as Datum)[name], item);
  return value instanceof Date ? value.getTime() : (value as number);
}

/**
 * The box around a mark's items. The second round widens that of the first, and makes it anew only where an item that
 * touched its edge changed: a plot has the very size that vega gives it.
 */
export function boundMark(mark: Mark, isAgain: boolean): void {
  const type = Marks[mark.marktype];
  if (type === undefined) throw new Error(`boundMark: no mark is a ${mark.marktype}`);
  const boundOf = (item: Item) => type.bound(item.bounds.clear(), item);
  if (type.nested) {
    type.bound(mark.bounds.clear(), mark);
    for (const item of mark.items) item.bounds.clear().union(mark.bounds);
  } else if (mark.marktype === "group" || !isAgain) {
    mark.bounds.clear();
    for (const item of mark.items) mark.bounds.union(boundOf(item));
  } else boundChanges(mark, boundOf);
  boundClip(mark);
}

function boundChanges(mark: Mark, boundOf: (item: Item) => Bounds): void {
  let isStale = mark.went.length > 0;
  for (const item of mark.came) mark.bounds.union(boundOf(item));
  for (const item of mark.changed) {
    isStale ||= mark.bounds.alignsWith(item.bounds);
    mark.bounds.union(boundOf(item));
  }
  if (!isStale) return;
  mark.bounds.clear();
  for (const item of mark.items) mark.bounds.union(item.bounds);
}

type Overlap = Extract<SizedStep, { kind: "overlap" }>;

/** Makes labels that lie on others unseen. */
export function hideOverlap(mark: Mark, { method, separation, paths }: Overlap): void {
  const all = mark.items.filter(({ bounds }) => bounds.width() > 1 && bounds.height() > 1);
  if (all.length === 0) return;
  if (paths.length > 0) all.sort((one, other) => compared(one, other, paths));
  for (const item of all) item.opacity = 1;
  let seen = all;
  while (seen.length >= 3 && hasOverlap(seen, separation))
    seen = method === "greedy" ? apart(seen, separation) : halved(seen);
  const last = all.at(-1) as Item;
  if (seen.length < 3 && seen !== all && last.opacity === 0) {
    if (seen.length > 1) (seen.at(-1) as Item).opacity = 0;
    last.opacity = 1;
  }
  mark.bounds.clear();
  for (const item of all) if (item.opacity !== 0) mark.bounds.union(item.bounds);
}

function hasOverlap(items: readonly Item[], separation: number): boolean {
  return items.some((item, index) => index > 0 && areNear(items[index - 1] as Item, item, separation));
}

function areNear({ bounds: a }: Item, { bounds: b }: Item, separation: number): boolean {
  return separation > Math.max(b.x1 - a.x2, a.x1 - b.x2, b.y1 - a.y2, a.y1 - b.y2);
}

function apart(items: readonly Item[], separation: number): Item[] {
  const kept: Item[] = [];
  for (const item of items) {
    const before = kept.at(-1);
    if (before === undefined || !areNear(before, item, separation)) kept.push(item);
    else item.opacity = 0;
  }
  return kept;
}

function halved(items: readonly Item[]): Item[] {
  return items.filter((item, index) => {
    if (index % 2 === 1) item.opacity = 0;
    return index % 2 === 0;
  });
}
