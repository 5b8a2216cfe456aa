import { groupedBy } from "../../model/grouped-by.ts";
import { median } from "../../numeric/median.ts";
import { theilSenLine } from "../../numeric/theil-sen-line.ts";

/** A reading of one output: where it was taken, and its error there, both in percent of span. */
export type Item = { index: number; point: number; direction: string; input: number; error: number };

/** What its fellows say of the error of a reading, percent of span. */
type Said = { repeats: readonly number[]; others: readonly number[] };

/**
 * What the readings of the same point say of a reading, and what the curves through the other points say.
 *
 * @param items of one output, of one phase
 * @returns for an item, the errors that would fit, percent of span: of its repeats (those of its direction first), and of
 * the lines between its neighbours, of both directions and of its own, and the line through all
 * Source: own choice; medians, and the line of Theil and Sen, so that a wild fellow says little.
 * @example fellowsOf(["rising", "falling"].map((direction, index) =>
 *   ({ index, point: 0, direction, input: 0, error: 0.1 + index })))(
 *   { index: 0, point: 0, direction: "rising", input: 0, error: 0.1 }).repeats // [1.1]
 */
export function fellowsOf(items: readonly Item[]): (item: Item) => Said {
  const byPoint = groupedBy(items, ({ point }) => point);
  const all = curveOf(items);
  const curves = new Map([...groupedBy(items, ({ direction }) => direction)].map(([way, own]) => [way, curveOf(own)]));
  const line = all.points.length < 3 ? undefined : theilSenLine(all.points, all.middles);
  return (item) => {
    const same = byPoint.get(item.point)?.filter(({ index }) => index !== item.index) ?? [];
    const ofDirection = same.filter(({ direction }) => direction === item.direction);
    const repeats = [ofDirection, same]
      .filter(({ length }) => length > 0)
      .map((group) => median(group.map(({ error }) => error)));
    const around = [all, curves.get(item.direction)].map((curve) => curve && saidAround(curve, item));
    const onLine = line === undefined ? undefined : line.intercept + line.slope * item.point;
    return { repeats, others: [...around, onLine].filter((one) => one !== undefined) };
  };
}

/** The middle error at each test point, in rising order. */
type Curve = { points: readonly number[]; middles: readonly number[]; places: ReadonlyMap<number, number> };

function curveOf(items: readonly Item[]): Curve {
  const byPoint = groupedBy(items, ({ point }) => point);
  const points = [...byPoint.keys()].toSorted((one, other) => one - other);
  const middles = points.map((point) => median((byPoint.get(point) as Item[]).map(({ error }) => error)));
  return { points, middles, places: new Map(points.map((point, place) => [point, place])) };
}

/** What the points on both sides say of a reading; at an end of the range, the two next ones. */
function saidAround({ points, middles, places }: Curve, { point, input }: Item): number | undefined {
  const place = places.get(point) as number;
  const inwards = place === 0 ? 1 : place === points.length - 1 ? -1 : 0;
  const [near, far] = inwards === 0 ? [place - 1, place + 1] : [place + inwards, place + 2 * inwards];
  const [from, to] = [points[near], points[far]];
  const [left, right] = [middles[near], middles[far]];
  if (from === undefined || to === undefined || left === undefined || right === undefined) return undefined;
  return left + ((input - from) / (to - from)) * (right - left);
}
