import type { Loop, ReadingRow, TripRow } from "./loop.ts";
import { type Moment, type Stages, stagesAt } from "./physics.ts";
import type { Random } from "./random.ts";

/** Where the target is sent, in order: out, and back where both ways are read, cycle by cycle. */
export function visits({ plan }: Loop): readonly { cycle: number; direction: "rising" | "falling"; point: number }[] {
  const out = plan.points;
  const back = [...plan.points].reverse();
  return Array.from({ length: plan.cycles }, (_, index) => index + 1).flatMap((cycle) => [
    ...out.map((point) => ({ cycle, direction: "rising" as const, point })),
    ...(plan.isBothWays ? back.map((point) => ({ cycle, direction: "falling" as const, point })) : []),
  ]);
}

/** Reads a loop as its plan says. The reference stands near the nominal position, and is read as it stands. */
export function measure(loop: Loop, random: Random): readonly ReadingRow[] {
  const { plan, design, reference, noise, sensor } = loop;
  let walk = 0;
  let before = design.range.lower;
  let held = design.signal.lower;
  let other = random.between(0.2, 0.8);
  let cycleShift = random.normal(noise.cycle);
  let cycleBefore = 1;
  return visits(loop).map(({ cycle, direction, point }, index) => {
    if (cycle !== cycleBefore) cycleShift = random.normal(noise.cycle);
    cycleBefore = cycle;
    walk += random.normal(noise.walk);
    other = Math.min(Math.max(other + random.normal(0.15), 0), 1);
    const shown = point + random.normal(design.tolerance / 10);
    const distance = shown + reference.shift + reference.scale * shown;
    const moment: Moment = {
      distance,
      direction,
      moved: distance - before,
      minutes: index * plan.minutesBetween,
      noise: walk + cycleShift + random.normal(whiteAt(loop, distance)),
      isLost: distance > sensor.lostBeyond && random.isTrue(sensor.lostChance),
      held,
      other,
    };
    const stages = stagesAt(loop, moment);
    before = distance;
    held = stages.sensor;
    return written(loop, { cycle, direction, point, reference: shown, minutes: moment.minutes }, stages);
  });
}

/** Standard deviation of one reading against the next at a place. */
export function whiteAt({ noise, design }: Loop, distance: number): number {
  const part = Math.min(Math.max((distance - design.range.lower) / (design.range.upper - design.range.lower), 0), 1);
  return noise.white + (noise.whiteAtEnd - noise.white) * part ** 2;
}

type Place = Pick<ReadingRow, "cycle" | "direction" | "point" | "reference" | "minutes">;

function written({ plan, design, reference }: Loop, place: Place, stages: Stages): ReadingRow {
  const { reads, decimals, meterAt } = plan;
  const only = meterAt === "sensor" ? stages.sensor : stages.card;
  const perUnit = design.millimetresPerUnit;
  return {
    ...place,
    reference: (rounded(place.reference / perUnit, decimals.reference) * perUnit) / reference.unitFactor,
    signal: reads.signal ? rounded(reads.card ? stages.sensor : only, decimals.signal) : null,
    card: reads.card ? rounded(stages.card, decimals.signal) : null,
    counts: reads.counts ? stages.counts : null,
    value: reads.value ? rounded(stages.value, decimals.value) : null,
  };
}

/** Trips of the switched output: nearer until it acts, away until it lets go, cycle by cycle. */
export function measureTrips({ output, plan, design }: Loop, random: Random): readonly TripRow[] {
  if (output === null || output.isMismatched) return [];
  const step = 10 ** -plan.decimals.reference * design.millimetresPerUnit;
  const at = (place: number) => Math.round((place + random.normal(output.noise)) / step) * step;
  return Array.from({ length: Math.max(plan.cycles, 3) }, (_, index) => index + 1).flatMap((cycle) => {
    const acts = at(output.setPoint + output.shift);
    const again = [0.3, 0.6].map((part) => acts - part * output.differential);
    const [first = acts, second = acts] = again;
    return [
      { cycle, direction: "approach" as const, reference: acts },
      ...(output.chatters
        ? [
            { cycle, direction: "recede" as const, reference: first },
            { cycle, direction: "approach" as const, reference: second },
          ]
        : []),
      { cycle, direction: "recede" as const, reference: at(output.setPoint + output.shift + output.differential) },
    ];
  });
}

export function rounded(value: number, decimals: number): number {
  return Math.round(value * 10 ** decimals) / 10 ** decimals;
}
