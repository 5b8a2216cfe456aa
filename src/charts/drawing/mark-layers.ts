import { onceForEach } from "../../record/once-for-each.ts";
import type { Outline, Subpath } from "./svg-path.ts";

type Box = Readonly<{ left: number; right: number; top: number; bottom: number }>;
type Layer = { boxes: Box[]; outlines: Outline[] };

/**
 * Marks that are drawn one after another, in as few layers as show the same: each lies above every mark before it that
 * it touches, and the marks of one layer touch none of each other.
 */
export function layersOf(marks: readonly Outline[]): readonly (readonly Outline[])[] {
  const layers: Layer[] = [];
  for (const mark of marks) {
    const box = movedBox(boxOf(mark.subpaths), mark);
    const above = layers.findLastIndex(({ boxes }) => boxes.some((other) => areTouching(box, other))) + 1;
    layers[above] ??= { boxes: [], outlines: [] };
    layers[above].boxes.push(box);
    layers[above].outlines.push(mark);
  }
  return layers.map(({ outlines }) => outlines);
}

/** What two edges and their mitred corners reach beyond the outlines, together; pixels. */
const edge = 4;

/** Around subpaths where they are not moved. */
const boxOf = onceForEach((subpaths: readonly Subpath[]): Box => {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { steps } of subpaths) {
    for (const { command, shape, x, y } of steps) {
      // An arc may bow to twice its radius.
      const [across, down] = command === "A" ? [2 * (shape[0] ?? 0), 2 * (shape[1] ?? 0)] : [0, 0];
      left = Math.min(left, x - across);
      right = Math.max(right, x + across);
      top = Math.min(top, y - down);
      bottom = Math.max(bottom, y + down);
    }
  }
  return { left, right, top, bottom };
});

function movedBox({ left, right, top, bottom }: Box, { dx, dy }: Outline): Box {
  return { left: left + dx, right: right + dx, top: top + dy, bottom: bottom + dy };
}

function areTouching(one: Box, other: Box): boolean {
  const isBeside = one.left > other.right + edge || other.left > one.right + edge;
  return !isBeside && one.top <= other.bottom + edge && other.top <= one.bottom + edge;
}
