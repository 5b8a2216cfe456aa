import { seededNoise } from "./seeded-noise.mjs";
import { soundSpeedOfMixture } from "./sound-speed-of-mixture.mjs";

/** Readings of one planted loop as a technician would type them: rows of texts by column, with a decimal point. */
export function takeReadings(loop) {
  const noise = seededNoise(loop.seed);
  const clock = minuteClock(loop.startedAt);
  return Object.entries(loop.phases).flatMap(([phase, planted]) => {
    clock.pause(phase === "as_found" ? 0 : 45);
    return runs(loop).flatMap(({ cycle, direction, points }) =>
      points.flatMap((point) => readingsAt({ loop, planted, phase, cycle, direction, point, noise, clock })),
    );
  });
}

function runs({ points, cycles }) {
  return Array.from({ length: cycles }, (_, index) => [
    { cycle: index + 1, direction: "rising", points },
    { cycle: index + 1, direction: "falling", points: points.toReversed() },
  ]).flat();
}

function readingsAt(spot) {
  const { loop, planted, phase, direction, point, noise } = spot;
  const distance = roundedTo(loop.reference.step, point + loop.reference.scatter * noise.normal());
  const reading = typed(spot, distance, outputs(loop, planted, direction, distance, noise));
  const missed = loop.missedEcho;
  if (missed?.phase !== phase || missed.point !== point || missed.direction !== direction) return [reading];
  const held = outputs(loop, planted, direction, missed.heldPoint, noise);
  return [
    { ...reading, signal: held.signal, rejected: missed.rejected },
    { ...typed(spot, distance, outputs(loop, planted, direction, distance, noise)), remark: missed.remark },
  ];
}

function typed({ loop, phase, cycle, direction, point, noise, clock }, distance, shown) {
  clock.pause(1 + Math.floor(2 * noise.uniform()));
  return {
    calibration: loop.calibration,
    phase,
    cycle: String(cycle),
    direction,
    point: loop.isPointNamed === false ? "" : String(point),
    reference: distance.toFixed(loop.reference.decimals),
    ...shown,
    time: clock.now(),
    rejected: "",
    remark: "",
  };
}

/** What meter, input card and controller show when the true distance is `distance` and half a step either side. */
function outputs({ range, signal, noise: noiseSize, reference, fullScaleCounts }, planted, direction, distance, noise) {
  const trueDistance = distance + reference.step * (noise.uniform() - 0.5);
  const part = (trueDistance - range[0]) / (range[1] - range[0]);
  const loop = 4 * part * (1 - part) * (direction === "falling" ? 0.5 : -0.5);
  const error = planted.zero + planted.span * part + planted.hysteresis * loop + noiseSize * noise.normal();
  const indicated = part + error / 100 + airShare(planted.air) * (trueDistance / (range[1] - range[0]));
  const shown = signal[0] + indicated * (signal[1] - signal[0]);
  if (fullScaleCounts === undefined) return { signal: shown.toFixed(3), counts: "", value: "" };
  const counts = Math.round(indicated * fullScaleCounts);
  const [full, empty] = planted.scaledTo;
  const value = full + (counts / fullScaleCounts) * (empty - full);
  return { signal: shown.toFixed(3), counts: String(counts), value: value.toFixed(2) };
}

/** What a sensor that reckons with the air of its teaching adds to each distance from its face, as a part of it. */
function airShare(air) {
  return air === undefined ? 0 : soundSpeedOfMixture(...air.taught) / soundSpeedOfMixture(...air.now) - 1;
}

function roundedTo(step, value) {
  return Math.round(value / step) * step;
}

function minuteClock(start) {
  let minutes = Date.parse(`${start}:00Z`) / 60_000;
  return {
    pause: (some) => {
      minutes += some;
    },
    now: () => new Date(minutes * 60_000).toISOString().slice(0, 16),
  };
}
