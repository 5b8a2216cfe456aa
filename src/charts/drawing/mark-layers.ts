import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import type { PathStep, Subpath } from "./svg-path.ts";

type Box = Readonly<{ left: number; right: number; top: number; bottom: number }>;
type Layer = { boxes: Box[]; subpaths: Subpath[] };

/**
 * Marks that are drawn one after another, in as few layers as show the same: each lies above every mark before it that
 * it touches, and the marks of one layer touch none of each other.
 */
export function layersOf(marks: readonly (readonly Subpath[])[]): readonly (readonly Subpath[])[] {
  const layers: Layer[] = [];
  for (const subpaths of marks) {
    const box = boxOf(subpaths);
    const above = layers.findLastIndex(({ boxes }) => boxes.some((other) => areTouching(box, other))) + 1;
    layers[above] ??= { boxes: [], subpaths: [] };
    layers[above].boxes.push(box);
    layers[above].subpaths.push(...subpaths);
  }
  return layers.map(({ subpaths }) => subpaths);
}

/** What two edges and their mitred corners reach beyond the outlines, together; pixels. */
const edge = 4;

function boxOf(subpaths: readonly Subpath[]): Box {
  const places = subpaths.flatMap(({ steps }) => steps.flatMap(reachOf));
  const [xs, ys] = [places.map(({ x }) => x), places.map(({ y }) => y)];
  return { left: leastOf(xs), right: greatestOf(xs), top: leastOf(ys), bottom: greatestOf(ys) };
}

/** A place; of an arc, all that it may bow to. */
function reachOf({ command, shape: [width = 0, height = 0], x, y }: PathStep): readonly { x: number; y: number }[] {
  if (command !== "A") return [{ x, y }];
  return [
    { x: x - 2 * width, y: y - 2 * height },
    { x: x + 2 * width, y: y + 2 * height },
  ];
}

function areTouching(one: Box, other: Box): boolean {
  const isBeside = one.left > other.right + edge || other.left > one.right + edge;
  return !isBeside && one.top <= other.bottom + edge && other.top <= one.bottom + edge;
}
