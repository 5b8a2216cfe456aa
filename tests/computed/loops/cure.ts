import { teachWrong } from "./kinds/sensor-kinds.ts";
import { type Loop, spanOf } from "./loop.ts";
import { whiteAt } from "./measure.ts";
import { sensedDistance } from "./physics.ts";
import type { Random } from "./random.ts";
import { errorCurve } from "./truth.ts";

/** The loop with everything put right that was wrong; the air and the plan stay as they are. */
export function withoutFaults(loop: Loop, healthy: Loop): Loop {
  return structuredClone({ ...healthy, plan: { ...loop.plan, hasPointColumn: healthy.plan.hasPointColumn } });
}

/** The sensor is taught until the last stage is right at both ends: that hides what lies behind it. */
export function teachUntilRight(loop: Loop): Loop {
  const taught = structuredClone(loop);
  for (let step = 0; step < 8; step += 1) {
    const { lower, upper } = endErrors(taught);
    teachWrong(taught, -lower, -upper);
  }
  return taught;
}

/** Only half of what is wrong at the ends is taught away. */
export function teachHalf(loop: Loop): Loop {
  const taught = structuredClone(loop);
  const { lower, upper } = endErrors(taught);
  teachWrong(taught, -lower / 2, -upper / 2);
  return taught;
}

function endErrors(loop: Loop): { lower: number; upper: number } {
  const { reads, points } = loop.plan;
  const stage = reads.value ? "value" : reads.counts ? "counts" : "card";
  const curve = errorCurve(loop);
  const at = (point: number | undefined) => curve.find((one) => one.point === point)?.errors[stage] ?? 0;
  return { lower: at(points[0]), upper: at(points.at(-1)) };
}

/**
 * A technician teaches the sensor: the target stands at each end of the range, as the reference shows it, and the
 * sensor takes what it senses there, with the scatter of one reading.
 */
export function taughtAtEnds(loop: Loop, random: Random): Loop {
  const taught = structuredClone(loop);
  const senseAt = (shown: number) => {
    const distance = shown + loop.reference.shift + loop.reference.scale * shown;
    const noise = random.normal(whiteAt(loop, distance)) + random.normal(loop.noise.cycle);
    const still = { direction: "rising", moved: 0, minutes: 0, isLost: false, held: 0, other: 0 } as const;
    return sensedDistance(loop, { ...still, distance, noise });
  };
  const { lower, upper } = loop.design.range;
  taught.sensor.taught = { lower: senseAt(lower), upper: senseAt(upper) };
  return taught;
}

/** The sensor is given two constants: the distances that its outputs for the ends of the range are to stand for. */
export function withConstants(loop: Loop, { lower, upper }: { lower: number; upper: number }): Loop {
  const given = structuredClone(loop);
  const { design, sensor } = given;
  const span = spanOf(design);
  const width = sensor.taught.upper - sensor.taught.lower;
  // Indicated before, d; afterwards lower + (d - range_lower) / span * (upper - lower).
  const gain = (upper - lower) / span;
  const from = sensor.taught.lower + ((design.range.lower - lower) / (gain * span)) * width;
  given.sensor.taught = { lower: from, upper: from + width / gain };
  return given;
}
