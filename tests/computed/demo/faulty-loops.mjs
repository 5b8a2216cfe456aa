/**
 * Loops whose readings follow no straight line, each with faults at known places on the way from the target to the sheet.
 * `seen` is the part of the range that the sensor sees; every step takes what the one before gives.
 */
import { seededNoise } from "./seeded-noise.mjs";

const same = (given) => given;

export const faultyLoops = [
  {
    // The bracket sits 9 mm off its mark, and the controller takes the 4 to 20 mA for 0 to 20 mA.
    calibration: "C-2026-031",
    seed: 33001,
    startedAt: "2026-05-19T08:20",
    range: [300, 1500],
    reference: { step: 0.1, decimals: 1, scatter: 0.3 },
    points: [300, 540, 780, 1020, 1260, 1500],
    cycles: 3,
    noise: 0.03,
    seen: (part) => part + 9 / 1200,
    value: (milliamps) => 300 + (milliamps / 20) * 1200,
    valueDecimals: 1,
  },
  {
    // 20.4 V less the 12 V that the sensor needs drive 16.8 mA through 500 Ω; one signal was typed with two digits exchanged.
    calibration: "C-2026-032",
    seed: 33102,
    startedAt: "2026-05-26T13:10",
    range: [200, 2200],
    reference: { step: 0.1, decimals: 1, scatter: 0.3 },
    points: [200, 450, 700, 950, 1200, 1450, 1700, 1950, 2200],
    cycles: 2,
    noise: 0.02,
    signal: (milliamps) => Math.min(milliamps, 16.8),
    typed: { cycle: 2, direction: "rising", point: 1450, column: "signal", exchanged: [1, 3] },
  },
  {
    // The blind zone reaches to 640 mm; the air is 13 K warmer than the sensor takes it to be.
    calibration: "C-2026-040",
    seed: 33203,
    startedAt: "2026-07-14T14:05",
    range: [400, 3000],
    reference: { step: 1, decimals: 0, scatter: 1.5 },
    points: [400, 530, 660, 1050, 1440, 1830, 2220, 2610, 3000],
    cycles: 3,
    noise: 0.05,
    seen: (part) => Math.max(640, (400 + part * 2600) * Math.sqrt((273.15 + 18) / (273.15 + 31))) / 2600 - 400 / 2600,
  },
  {
    // 9 kΩ of damp beside the 250 Ω shunt, and a scaling in whole numbers that cuts the fraction off.
    calibration: "C-2026-042",
    seed: 33304,
    startedAt: "2026-07-28T09:40",
    range: [0.4, 4.4],
    reference: { step: 0.001, decimals: 3, scatter: 0.002 },
    points: [0.4, 0.9, 1.4, 1.9, 2.4, 2.9, 3.4, 3.9, 4.4],
    cycles: 2,
    noise: 0.03,
    signalAtCard: (milliamps) => milliamps * (9000 / 9250),
    value: (milliamps) => Math.trunc(((milliamps - 4) / 16) * 40),
    valueDecimals: 0,
  },
];

/** Readings as a technician would type them: rows of texts by column, with a decimal point. */
export function takeFaultyReadings(loop) {
  const noise = seededNoise(loop.seed);
  let minutes = Date.parse(`${loop.startedAt}:00Z`) / 60_000;
  return Array.from({ length: loop.cycles }, (_, index) =>
    ["rising", "falling"].map((direction) => ({ cycle: index + 1, direction })),
  )
    .flat()
    .flatMap(({ cycle, direction }) => {
      const points = direction === "rising" ? loop.points : loop.points.toReversed();
      return points.map((point) => {
        minutes += 1 + Math.floor(2 * noise.uniform());
        const time = new Date(minutes * 60_000).toISOString().slice(0, 16);
        return withSlip(loop, readingAt(loop, { cycle, direction, point, time }, noise));
      });
    });
}

function readingAt(loop, { cycle, direction, point, time }, noise) {
  const { seen = same, signal = same, signalAtCard, value, range, reference } = loop;
  const span = range[1] - range[0];
  const distance = Math.round((point + reference.scatter * noise.normal()) / reference.step) * reference.step;
  const part = (distance + reference.step * (noise.uniform() - 0.5) - range[0]) / span;
  const milliamps = signal(4 + 16 * (seen(part) + (loop.noise / 100) * noise.normal()));
  const atCard = (signalAtCard ?? same)(milliamps);
  return {
    calibration: loop.calibration,
    phase: "as_found",
    cycle: String(cycle),
    direction,
    point: String(point),
    reference: distance.toFixed(reference.decimals),
    signal: milliamps.toFixed(3),
    counts: "",
    value: value === undefined ? "" : value(atCard).toFixed(loop.valueDecimals),
    time,
    rejected: "",
    remark: "",
    signal_at_card: signalAtCard === undefined ? "" : atCard.toFixed(3),
  };
}

function withSlip({ typed }, row) {
  const isHere =
    typed !== undefined &&
    row.cycle === String(typed.cycle) &&
    row.direction === typed.direction &&
    row.point === String(typed.point);
  if (!isHere) return row;
  const digits = [...row[typed.column]];
  const [one, other] = typed.exchanged;
  [digits[one], digits[other]] = [digits[other], digits[one]];
  return { ...row, [typed.column]: digits.join("") };
}
