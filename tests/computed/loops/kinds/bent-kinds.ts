import { type Loop, spanOf } from "../loop.ts";
import type { Kind } from "./kind.ts";

const repair = ["repair wiring or set-up"] as const;
const upAndDown = ["play of the rig", "settling lag", "hysteresis of the sensor"] as const;

/** Errors of the sensor and of how it hangs that no line takes away. */
export const bentKinds: readonly Kind[] = [
  {
    id: "curvature",
    row: 26,
    stage: "sensor",
    needs: { points: 5, reads: { signal: true } },
    sizes: [1, 10],
    apply: ({ sensor, design }, size, random) => {
      sensor.bowShape = random.pick(["bow", "bow", "S"] as const);
      sensor.bow = random.sign() * Math.min(size * design.tolerance, 0.1 * spanOf(design));
    },
    advice: ["re-teach"],
    mayBeReplaced: "by curve",
  },
  {
    id: "hysteresis of the sensor",
    row: null,
    stage: "sensor",
    needs: { points: 5, isBothWays: true, reads: { signal: true } },
    sizes: [0.5, 5],
    apply: ({ sensor, design }, size) => {
      sensor.hysteresis += 2 * size * design.tolerance;
    },
    advice: ["cannot be decided", ...repair, "replace"],
    alike: upAndDown,
  },
  {
    id: "play of the rig",
    row: 23,
    stage: "rig",
    needs: { points: 5, isBothWays: true, reads: { signal: true } },
    sizes: [0.5, 5],
    apply: (loop, size) => {
      loop.rigPlay += 2 * size * loop.design.tolerance;
    },
    advice: ["cannot be decided", ...repair],
    alike: upAndDown,
  },
  {
    id: "settling lag",
    row: 22,
    stage: "sensor",
    needs: { points: 5, isBothWays: true, reads: { signal: true } },
    sizes: [0.5, 5],
    apply: ({ sensor, design, plan }, size) => {
      const step = spanOf(design) / (plan.points.length - 1);
      sensor.lag = Math.min((size * design.tolerance) / step, 0.8);
    },
    advice: ["cannot be decided", ...repair],
    alike: upAndDown,
  },
  {
    id: "blind zone",
    row: 15,
    stage: "sensor",
    needs: { points: 9, reads: { signal: true } },
    apply: ({ sensor, design }, _, random) => {
      sensor.blindTo = design.range.lower + random.between(0.14, 0.35) * spanOf(design);
      sensor.blindWay = random.pick(["flat", "flat", "second echo"] as const);
    },
    advice: [...repair],
    isAlwaysMended: true,
  },
  {
    id: "fixed obstruction",
    row: 16,
    stage: "sensor",
    needs: { points: 9, reads: { signal: true } },
    apply: ({ sensor, design }, _, random) => {
      sensor.obstructionAt = design.range.lower + random.between(0.5, 0.85) * spanOf(design);
    },
    advice: [...repair],
    alike: ["burden-limited top", "missed echo, held"],
    isAlwaysMended: true,
  },
  {
    id: "signal that stands still",
    row: null,
    stage: "sensor",
    needs: { points: 5, reads: { signal: true } },
    apply: ({ sensor, design }, _, random) => {
      const low = Math.min(design.signal.lower, design.signal.upper);
      const high = Math.max(design.signal.lower, design.signal.upper);
      const level = random.pick([sensor.rails.low, random.between(low, high), sensor.rails.high]);
      sensor.rails = { low: level, high: level };
    },
    advice: [...repair, "cannot be decided", "replace"],
    isAlwaysMended: true,
    isNameless: true,
  },
  {
    id: "missed echo, fault signal",
    row: 18,
    stage: "sensor",
    needs: { points: 5, cycles: 3, signals: ["4-20 mA"], reads: { signal: true } },
    apply: (loop, _, random) => loseEcho(loop, random.between(0.45, 0.85), random.between(0.3, 0.8), "fault", random),
    advice: [...repair],
    isAlwaysMended: true,
  },
  {
    id: "missed echo, held",
    row: 19,
    stage: "sensor",
    needs: { points: 7, cycles: 2, isBothWays: true, reads: { signal: true } },
    apply: (loop, _, random) => loseEcho(loop, random.between(0.45, 0.8), 1, "hold", random),
    advice: [...repair],
    alike: ["fixed obstruction", "burden-limited top"],
    isAlwaysMended: true,
  },
  {
    id: "scatter grows with distance",
    row: 25,
    stage: "sensor",
    needs: { points: 5, cycles: 3, reads: { signal: true } },
    sizes: [1, 5],
    apply: ({ noise, design }, size) => {
      noise.whiteAtEnd = Math.min((size * design.tolerance) / 2, 0.05 * spanOf(design));
    },
    advice: [...repair, "cannot be decided"],
    alike: ["scatter everywhere"],
  },
  {
    id: "scatter everywhere",
    row: null,
    stage: "sensor",
    needs: { points: 5, cycles: 3, reads: { signal: true } },
    sizes: [1, 5],
    apply: ({ noise, design }, size) => {
      noise.white = Math.min((size * design.tolerance) / 2, 0.05 * spanOf(design));
      noise.whiteAtEnd = noise.white;
    },
    advice: [...repair, "cannot be decided"],
    mayBeReplaced: "by scatter",
  },
  {
    id: "warm-up",
    row: 34,
    stage: "sensor",
    needs: { points: 5, cycles: 3, reads: { signal: true } },
    sizes: [1, 6],
    apply: (loop, size, random) => {
      const { plan, sensor, design } = loop;
      const readings = plan.points.length * plan.cycles * (plan.isBothWays ? 2 : 1);
      sensor.warmUp = random.sign() * size * design.tolerance;
      sensor.warmUpMinutes = (readings * plan.minutesBetween) / random.between(2, 4);
    },
    advice: ["cannot be decided", ...repair],
  },
];

function loseEcho(
  { sensor, design }: Loop,
  from: number,
  chance: number,
  way: "fault" | "hold",
  random: Parameters<NonNullable<Kind["apply"]>>[2],
): void {
  sensor.lostBeyond = design.range.lower + from * spanOf(design);
  sensor.lostChance = chance;
  sensor.lostWay = way === "hold" ? "hold" : random.pick(["low", "high"] as const);
}
