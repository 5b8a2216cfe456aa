import { teachHalf, teachUntilRight, withoutFaults } from "./cure.ts";
import { drawLoop, type Needs } from "./draw-loop.ts";
import type { Advice, Kind } from "./kinds/kind.ts";
import { mostOfSpan } from "./kinds/kind.ts";
import { kindOf, kinds, pairs } from "./kinds/kinds.ts";
import { teachWrong } from "./kinds/sensor-kinds.ts";
import { type Loop, type ReadingRow, spanOf, type TripRow } from "./loop.ts";
import { measure, measureTrips } from "./measure.ts";
import { type Random, randomFrom } from "./random.ts";
import { adviceOf, type Fault, type Truth, truthOf } from "./truth.ts";

export const families = ["healthy", "one fault", "two faults", "doubtful"] as const;
export type Family = (typeof families)[number];

/** One phase: what was written down, beside what is so. */
export type MadePhase = { loop: Loop; rows: readonly ReadingRow[]; trips: readonly TripRow[]; truth: Truth };

/** A loop of the second generator, all of it from its seed. */
export type MadeLoop = {
  seed: number;
  family: Family;
  faults: readonly Fault[];
  asFound: MadePhase;
  /** After a cure, the right one or one that hides or halves the fault. */
  asLeft: (MadePhase & { cure: "right" | "wrong" }) | null;
  /** Acceptable advice for the loop as found. */
  advice: readonly Advice[];
  mayBeRefused: boolean;
};

const turn = ["healthy", "one", "healthy", "one", "two", "healthy", "one", "two", "doubtful", "one"] as const;

/** The loop of a seed: families take turns, and kinds within them. */
export function makeLoop(seed: number): MadeLoop {
  const random = randomFrom(seed);
  const place = turn[seed % turn.length] ?? "healthy";
  const before = turn.slice(0, seed % turn.length).filter((one) => one === place).length;
  const nth = Math.floor(seed / turn.length) * turn.filter((one) => one === place).length + before;
  if (place === "healthy") return finished(seed, "healthy", drawLoop(random, {}), [], random);
  if (place === "doubtful") return makeDoubtful(seed, random);
  const ids = place === "one" ? [kinds[nth % kinds.length]?.id ?? ""] : (pairs[nth % pairs.length] ?? []);
  const chosen = ids.map(kindOf);
  const loop = drawLoop(random, needsOfAll(chosen));
  const healthy = structuredClone(loop);
  const faults = chosen.map((kind) => ({ kind, size: sizeFor(kind, loop, chosen.length, random) }));
  for (const { kind, size } of faults) kind.apply?.(loop, size ?? 1, random);
  return finished(seed, place === "one" ? "one fault" : "two faults", loop, faults, random, healthy);
}

/** A sensor off zero and span, bent and scattered so much that a re-teach may or may not do. */
function makeDoubtful(seed: number, random: Random): MadeLoop {
  const loop = drawLoop(random, { reads: { signal: true, card: false, counts: false, value: false }, points: 5 });
  const { tolerance } = loop.design;
  const healthy = structuredClone(loop);
  teachWrong(loop, random.sign() * random.between(1, 4), random.sign() * random.between(0, 4));
  loop.sensor.bow = random.sign() * random.between(0, 1.6) * tolerance;
  loop.sensor.bowShape = random.pick(["bow", "bow", "S"] as const);
  loop.noise.white = tolerance * random.between(0.02, 0.5);
  loop.noise.whiteAtEnd = loop.noise.white * random.between(1, 1.5);
  const faults = [{ kind: kindOf("both ends taught wrong"), size: null }];
  return finished(seed, "doubtful", loop, faults, random, healthy);
}

function finished(
  seed: number,
  family: Family,
  loop: Loop,
  faults: readonly Fault[],
  random: Random,
  healthy: Loop = loop,
): MadeLoop {
  const asFound = phaseOf(loop, faults, random);
  return {
    seed,
    family,
    faults,
    asFound,
    asLeft: family === "one fault" || family === "two faults" ? cured(loop, faults, healthy, random) : null,
    advice: family === "doubtful" ? [] : adviceOf(faults, asFound.truth),
    mayBeRefused: faults.some(({ kind }) => kind.mayBeRefused),
  };
}

export function phaseOf(loop: Loop, faults: readonly Fault[], random: Random): MadePhase {
  const rows = faults.reduce(
    (written, { kind, size }) => kind.miswrite?.(written, loop, size ?? 1, random) ?? written,
    measure(loop, random),
  );
  return { loop, rows, trips: measureTrips(loop, random), truth: truthOf(loop) };
}

function cured(loop: Loop, faults: readonly Fault[], healthy: Loop, random: Random): MadeLoop["asLeft"] {
  const way = random.pick(["none", "none", "none", "right", "wrong"] as const);
  const hasSize = faults.every(({ kind: { sizes, apply } }) => sizes !== undefined && apply !== undefined);
  // What cures the air is told in the table of instruments, which holds for both phases.
  if (faults.some(({ kind }) => kind.needs.principle === "ultrasonic")) return null;
  if (way === "none" || (way === "wrong" && !hasSize)) return null;
  const isOfSensor = faults.every(({ kind }) => kind.stage === "sensor");
  const after = way === "right" ? withoutFaults(loop, healthy) : isOfSensor ? teachHalf(loop) : teachUntilRight(loop);
  return { ...phaseOf(after, [], random), cure: way };
}

function sizeFor(kind: Kind, { design }: Loop, faults: number, random: Random): number | null {
  if (kind.sizes === undefined) return null;
  const most = Math.min(kind.sizes[1], (mostOfSpan * spanOf(design)) / design.tolerance);
  // Of two faults each is to matter.
  const least = faults > 1 ? Math.max(kind.sizes[0], 1.5) : kind.sizes[0];
  return random.logBetween(least, Math.max(most, least));
}

function needsOfAll(chosen: readonly Kind[]): Needs {
  const all = chosen.map(({ needs }) => needs);
  const merged: Needs = Object.assign({}, ...all);
  const signals = all.reduce<Needs["signals"]>(
    (common, one) =>
      common && one.signals ? common.filter((name) => one.signals?.includes(name)) : (common ?? one.signals),
    undefined,
  );
  return {
    ...merged,
    ...(signals && { signals }),
    points: Math.max(...all.map(({ points = 3 }) => points)),
    cycles: Math.max(...all.map(({ cycles = 1 }) => cycles)),
    reads: Object.assign({}, ...all.map(({ reads }) => reads)),
  };
}
