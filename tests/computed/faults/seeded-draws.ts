/** Draws that are the same on every machine: Mulberry32, and Box and Muller (1958) for normal ones. */
export type Draws = {
  uniform: () => number;
  between: (least: number, greatest: number) => number;
  either: (least: number, greatest: number) => number;
  normal: () => number;
  chance: (probability: number) => boolean;
  pick: <Item>(items: readonly Item[]) => Item;
};

export function seededDraws(seed: number): Draws {
  let state = seed >>> 0;
  const uniform = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const between = (least: number, greatest: number) => least + (greatest - least) * uniform();
  return {
    uniform,
    between,
    either: (least, greatest) => (uniform() < 0.5 ? -1 : 1) * between(least, greatest),
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    chance: (probability) => uniform() < probability,
    pick: (items) => items[Math.floor(uniform() * items.length)]!,
  };
}
