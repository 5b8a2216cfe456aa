import { type Loop, type ReadingRow, signalOfLength } from "../loop.ts";
import type { Random } from "../random.ts";
import type { Kind } from "./kind.ts";

const many = { points: 5, cycles: 3, reads: { signal: true } } as const;
const advice = ["cannot be decided"] as const;
/** A slip that another column contradicts may be set aside and told. */
const slipAdvice = ["cannot be decided", "leave"] as const;

/** A healthy loop whose readings hold a wild one, or were written down wrong. */
export const writingKinds: readonly Kind[] = [
  {
    id: "wild reading",
    row: 33,
    stage: "readings",
    needs: many,
    sizes: [2, 10],
    miswrite: (rows, loop, size, random) => {
      const at = random.whole(0, rows.length - 1);
      const shift = random.sign() * size * loop.design.tolerance;
      return rows.map((row, index) => (index === at ? shifted(row, loop, shift) : row));
    },
    advice,
    alike: ["digits exchanged", "decimal mark moved", "two rows exchanged"],
  },
  {
    id: "digits exchanged",
    row: 33,
    stage: "readings",
    needs: many,
    miswrite: (rows, loop, _, random) => miswritten(rows, loop, random, exchangeDigits),
    advice: slipAdvice,
    alike: ["wild reading"],
    mayBeRefused: true,
  },
  {
    id: "decimal mark moved",
    row: 33,
    stage: "readings",
    needs: many,
    miswrite: (rows, loop, _, random) => miswritten(rows, loop, random, (value) => value * random.pick([10, 0.1])),
    advice: slipAdvice,
    alike: ["wild reading"],
    mayBeRefused: true,
  },
  {
    id: "two rows exchanged",
    row: 33,
    stage: "readings",
    needs: many,
    miswrite: exchangeRows,
    advice,
    alike: ["wild reading"],
    mayBeRefused: true,
  },
  {
    id: "references in another unit",
    row: null,
    stage: "readings",
    needs: { points: 5, reads: { signal: true } },
    apply: (loop, _, random) => {
      loop.reference.unitFactor = random.pick([25.4, 10, 1000, 0.1]);
      loop.plan.hasPointColumn = false;
    },
    advice,
    mayBeRefused: true,
    isAlwaysMended: true,
  },
];

function shifted(row: ReadingRow, { design, plan }: Loop, millimetres: number): ReadingRow {
  const part = millimetres / (design.range.upper - design.range.lower);
  const moved = (shown: number | null, span: number, decimals: number) =>
    shown === null ? null : Number((shown + part * span).toFixed(decimals));
  const signal = signalOfLength(design, millimetres) / part;
  return {
    ...row,
    signal: moved(row.signal, signal, plan.decimals.signal),
    card: moved(row.card, signal, plan.decimals.signal),
    counts: moved(row.counts, design.counts.upper - design.counts.lower, 0),
    value: moved(row.value, design.value.upper - design.value.lower, plan.decimals.value),
  };
}

/** One signal written wrong, so that it is off by more than two tolerances; tried until it is. */
function miswritten(
  rows: readonly ReadingRow[],
  loop: Loop,
  random: Random,
  slip: (value: number, decimals: number, random: Random) => number,
): readonly ReadingRow[] {
  const least = Math.abs(signalOfLength(loop.design, 2 * loop.design.tolerance));
  for (let tries = 0; tries < 400; tries += 1) {
    const at = random.whole(0, rows.length - 1);
    const right = rows[at]?.signal ?? 0;
    const wrong = slip(right, loop.plan.decimals.signal, random);
    if (Math.abs(wrong - right) > least) {
      return rows.map((row, index) => (index === at ? { ...row, signal: wrong } : row));
    }
  }
  throw new RangeError("miswritten: no digits make a slip that shows");
}

function exchangeDigits(value: number, decimals: number, random: Random): number {
  const text = value.toFixed(decimals);
  const places = [...text.slice(0, -1)].flatMap((_, at) => (/^\d\d$/u.test(text.slice(at, at + 2)) ? [at] : []));
  if (places.length === 0) return value;
  const at = random.pick(places);
  return Number(`${text.slice(0, at)}${text[at + 1]}${text[at]}${text.slice(at + 2)}`);
}

/** What was read at two neighbouring places is written in each other's row. */
function exchangeRows(rows: readonly ReadingRow[], _: Loop, __: number, random: Random): readonly ReadingRow[] {
  const starts = rows.slice(0, -1).flatMap((row, index) => (row.point === rows[index + 1]?.point ? [] : [index]));
  const at = random.pick(starts);
  return rows.map((row, index) => {
    const other = index === at ? rows[at + 1] : index === at + 1 ? rows[at] : undefined;
    if (other === undefined) return row;
    const { signal, card, counts, value } = other;
    return { ...row, signal, card, counts, value };
  });
}
