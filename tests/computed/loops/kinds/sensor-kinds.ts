import { type Loop, spanOf } from "../loop.ts";
import type { Kind } from "./kind.ts";

const sizes = [0.5, 10] as const;
const repair = ["repair wiring or set-up"] as const;

/** Errors of the sensor and of how it hangs that lie on a line. */
export const straightKinds: readonly Kind[] = [
  {
    id: "zero shift",
    row: 10,
    stage: "sensor",
    needs: { reads: { signal: true } },
    sizes,
    apply: ({ sensor, design }, size, random) => {
      sensor.datumShift += random.sign() * size * design.tolerance;
    },
    advice: ["re-teach", ...repair],
  },
  {
    id: "upper end taught wrong",
    row: 21,
    stage: "sensor",
    needs: { reads: { signal: true } },
    sizes,
    apply: (loop, size, random) => teachWrong(loop, 0, random.sign() * size),
    advice: ["re-teach"],
    alike: ["air temperature", "tilted axis", "voltage output overloaded", "shunt or card gain", "leakage"],
  },
  {
    id: "lower end taught wrong",
    row: 21,
    stage: "sensor",
    needs: { reads: { signal: true } },
    sizes,
    apply: (loop, size, random) => teachWrong(loop, random.sign() * size, 0),
    advice: ["re-teach"],
    alike: ["leakage"],
  },
  {
    id: "both ends taught wrong",
    row: 21,
    stage: "sensor",
    needs: { reads: { signal: true } },
    sizes,
    apply: (loop, size, random) => teachWrong(loop, random.sign() * size, random.between(-1, 1) * size),
    advice: ["re-teach"],
    alike: [
      "zero shift",
      "air temperature",
      "tilted axis",
      "voltage output overloaded",
      "shunt or card gain",
      "leakage",
    ],
  },
  {
    id: "both ends taught wrong, value alone",
    row: 21,
    stage: "sensor",
    needs: { reads: { signal: false, card: false, counts: false, value: true } },
    sizes: [1.5, 10],
    apply: (loop, size, random) => teachWrong(loop, random.sign() * size, random.between(-1, 1) * size),
    advice: ["cannot be decided", "re-teach"],
    isNameless: true,
  },
  {
    id: "taught for another range",
    row: 17,
    stage: "sensor",
    needs: { points: 9, reads: { signal: true } },
    apply: ({ sensor, design: { range } }, _, random) => {
      const part = random.between(0.4, 0.85) * (range.upper - range.lower);
      if (random.isTrue(0.5)) sensor.taught.upper -= part;
      else sensor.taught.lower += part;
    },
    advice: ["re-teach", ...repair],
    alike: ["upper end taught wrong", "both ends taught wrong"],
    isAlwaysMended: true,
  },
  {
    id: "slope taught inverted",
    row: 8,
    stage: "sensor",
    needs: { reads: { signal: true } },
    apply: ({ sensor }) => {
      sensor.taught = { lower: sensor.taught.upper, upper: sensor.taught.lower };
    },
    advice: ["re-teach"],
  },
  {
    id: "air temperature",
    row: 20,
    stage: "sensor",
    needs: { principle: "ultrasonic", isAirStated: true, reads: { signal: true } },
    sizes: [1, 10],
    apply: (loop, size, random) => heat(loop, size * random.sign()),
    advice: [...repair],
  },
  {
    id: "air temperature, not stated",
    row: 20,
    stage: "sensor",
    needs: { principle: "ultrasonic", isAirStated: false, reads: { signal: true } },
    sizes: [1, 10],
    apply: (loop, size, random) => heat(loop, size * random.sign()),
    advice: [...repair, "cannot be decided", "re-teach"],
    alike: ["upper end taught wrong", "both ends taught wrong", "tilted axis"],
  },
  {
    id: "tilted axis",
    row: 24,
    stage: "sensor",
    needs: { reads: { signal: true } },
    sizes: [0.5, 5],
    apply: ({ sensor, design }, size) => {
      const angle = (180 / Math.PI) * Math.acos(1 / (1 + (size * design.tolerance) / design.range.upper));
      sensor.axisAngle = Math.min(angle, 18);
    },
    advice: [...repair, "re-teach"],
    alike: ["upper end taught wrong", "both ends taught wrong", "air temperature"],
  },
];

/** Errors at the two ends of the range, in tolerances, on top of what the sensor has. */
export function teachWrong({ sensor, design }: Loop, atLower: number, atUpper: number): void {
  const { tolerance } = design;
  const span = spanOf(design);
  const gain = 1 + ((atUpper - atLower) * tolerance) / span;
  const width = sensor.taught.upper - sensor.taught.lower;
  const lower = sensor.taught.lower - (atLower * tolerance * width) / (gain * span);
  sensor.taught = { lower, upper: lower + width / gain };
}

/**
 * Speed of sound in moist air, m/s: dry air as the list of signatures has it, and 0.16 % faster for each percent of
 * water vapour by volume (from memory; light molecules, fewer degrees of freedom); vapour pressure after Magnus.
 */
export function soundSpeed(celsius: number, relativeHumidity: number): number {
  const saturated = 6.112 * Math.exp((17.62 * celsius) / (243.12 + celsius));
  const vapour = ((relativeHumidity / 100) * saturated) / 1013.25;
  return 331.3 * Math.sqrt(1 + celsius / 273.15) * (1 + 0.16 * vapour);
}

/** Air that is warmer or colder than when it was taught, so much that the far end is off by a size. */
function heat({ plan, sensor, design }: Loop, size: number): void {
  if (plan.air === null) return;
  const wanted = (size * design.tolerance) / design.range.upper / 0.0017;
  const kelvins = Math.round(10 * Math.min(Math.max(wanted, -25), 25)) / 10;
  plan.air.now = plan.air.taught + kelvins;
  sensor.airFactor = soundSpeed(plan.air.taught, 50) / soundSpeed(plan.air.now, plan.air.humidity);
}
