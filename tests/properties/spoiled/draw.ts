/** A stream of draws from a seed: the same seed gives the same workbook on every machine (mulberry32, public domain). */
export type Draw = {
  unit: () => number;
  normal: () => number;
  whole: (below: number) => number;
  chance: (part: number) => boolean;
  pick: <Item>(items: readonly Item[]) => Item;
};

export function drawFrom(seed: number): Draw {
  let state = seed | 0;
  const unit = () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (below: number) => Math.floor(unit() * below);
  return {
    unit,
    whole,
    normal: () => Math.sqrt(-2 * Math.log(1 - unit())) * Math.cos(2 * Math.PI * unit()),
    chance: (part) => unit() < part,
    pick: (items) => items[whole(items.length)] as (typeof items)[number],
  };
}
