import { Bounds, boundStroke, multiLineOffset } from "vega-scenegraph";
import type { Item, Mark } from "./scene.ts";

type Padding = Readonly<Record<"top" | "bottom" | "left" | "right", number>>;
type Given = { width: number; height: number; padding: Padding | number };

/** What is left for the plot, and how far it lies from the corner of the drawing. */
export type Fit = { width: number; height: number; origin: readonly [number, number] };

/** Lays out the axes of a plot; what they, the padding and marks outside leave of a size is the plot's. */
export function fitted(plot: Item, autosize: { type: string; contains?: string }, size: Given): Fit {
  if (autosize.type !== "fit") throw new Error(`fitted: a chart is fitted, not ${autosize.type}`);
  const padding = paddingOf(size.padding);
  const [width, height] = [Math.max(0, Number(plot.width ?? 0)), Math.max(0, Number(plot.height ?? 0))];
  const bounds = layOut(plot, width, height);
  const left = Math.max(0, Math.ceil(-bounds.x1));
  const top = Math.max(0, Math.ceil(-bounds.y1));
  const right = Math.max(0, Math.ceil(bounds.x2 - width));
  const bottom = Math.max(0, Math.ceil(bounds.y2 - height));
  const inside = autosize.contains === "padding" ? padding : paddingOf(0);
  return {
    width: Math.max(0, size.width - inside.left - inside.right - left - right),
    height: Math.max(0, size.height - inside.top - inside.bottom - top - bottom),
    origin: [padding.left + left, padding.top + top],
  };
}

function paddingOf(padding: Padding | number): Padding {
  return typeof padding === "number" ? { top: padding, bottom: padding, left: padding, right: padding } : padding;
}

function layOut(plot: Item, width: number, height: number): Bounds {
  const whole = new Bounds().set(0, 0, width, height);
  const [across, down] = [whole.clone(), whole.clone()];
  for (const mark of plot.items ?? []) {
    if (mark.role === "axis") {
      const isUpright = ["left", "right"].includes(String(mark.items[0]?.orient));
      (isUpright ? across : down).union(layOutAxis(mark, width, height));
    } else if (mark.role === "scope" || mark.role === "frame") {
      across.union(mark.bounds);
      down.union(mark.bounds);
    } else whole.union(mark.bounds);
  }
  return whole.union(across).union(down);
}

type AxisItem = Item &
  Readonly<Record<"offset" | "position" | "minExtent" | "maxExtent" | "titlePadding" | "range", number>>;

/** Puts an axis at its side of the plot and its title beside its labels; gives the box of both. */
function layOutAxis(axis: Mark, width: number, height: number): Bounds {
  const item = axis.items[0] as AxisItem;
  const { orient, range, offset, position, bounds, minExtent, maxExtent } = item;
  const [ticks, labels, title] = partsOf(item);
  bounds.clear();
  if (ticks !== undefined) bounds.union(ticks.bounds);
  if (labels !== undefined) bounds.union(labels.bounds);
  const extent = (reach: number) => Math.max(minExtent, Math.min(maxExtent, reach));
  const beside = (far: number, isUpright: boolean, sign: 1 | -1) => {
    if (title !== undefined) placeTitle(title, { far, padding: item.titlePadding, isUpright, sign }, bounds);
  };
  let [x, y] = [position || 0, position || 0];
  if (orient === "top") {
    y = -offset;
    const far = extent(-bounds.y1);
    bounds.add(0, -far).add(range, 0);
    beside(far, false, -1);
  } else if (orient === "left") {
    x = -offset;
    const far = extent(-bounds.x1);
    bounds.add(-far, 0).add(0, range);
    beside(far, true, -1);
  } else if (orient === "right") {
    x = width + offset;
    const far = extent(bounds.x2);
    bounds.add(0, 0).add(far, range);
    beside(far, true, 1);
  } else if (orient === "bottom") {
    y = height + offset;
    const far = extent(bounds.y2);
    bounds.add(0, 0).add(range, far);
    beside(far, false, 1);
  } else throw new Error(`layOutAxis: no side is ${String(orient)}`);
  boundStroke(bounds.translate(x, y), item);
  const shift = (item.translate as number | null | undefined) ?? 0.5;
  item.x = x + shift;
  item.y = y + shift;
  return axis.bounds.clear().union(bounds);
}

/** The ticks, the labels and the title of an axis, where it has them: they follow each other behind the grid. */
function partsOf({ datum, items = [] }: Item): readonly [Mark | undefined, Mark | undefined, Item | undefined] {
  let index = Number(datum.grid);
  const ticks = datum.ticks === true ? items[index++] : undefined;
  const labels = datum.labels === true ? items[index++] : undefined;
  const title = datum.title === true ? items[index + Number(datum.domain)]?.items[0] : undefined;
  return [ticks, labels, title];
}

type Beside = { far: number; padding: number; isUpright: boolean; sign: 1 | -1 };

function placeTitle(title: Item, { far, padding, isUpright, sign }: Beside, bounds: Bounds): void {
  if (title.auto === true) {
    const isBelow = !isUpright && sign === 1;
    const place = sign * (far + (isBelow ? 0 : multiLineOffset(title)) + padding);
    const channel = isUpright ? "x" : "y";
    const moved = Number(title[channel] ?? 0) - place;
    title[channel] = place;
    title.bounds.translate(isUpright ? -moved : 0, isUpright ? 0 : -moved);
    title.mark.bounds.clear().union(title.bounds);
  }
  bounds.union(title.bounds);
}
