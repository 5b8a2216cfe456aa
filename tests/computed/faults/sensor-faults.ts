import { anyKind, type FaultDraw } from "./converter-faults.ts";
import { drawSetting, type Setting } from "./faulty-loop.ts";
import type { Draws } from "./seeded-draws.ts";

const turnedRound: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  return { setting, fault: { seen: (part) => 1 - part }, variant: "" };
};

const datum: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const off = draws.either(0.005, 0.08);
  return { setting, fault: { seen: (part) => part + off }, variant: "" };
};

const leakage: FaultDraw = (draws) => {
  const setting = drawSetting(draws, ["4–20", "20–4"]);
  setting.instrument = { loopPowered: true };
  const [volts, ohms] = [draws.between(18, 30), draws.between(250, 500)];
  const kiloohms = 10 ** draws.between(1, 1.9);
  const leaked = (signal: number) => signal + (volts - (signal / 1000) * ohms) / kiloohms;
  setting.hasCard = draws.chance(0.3);
  return setting.hasCard
    ? { setting, fault: { signalAtCard: leaked }, variant: "wiring" }
    : { setting, fault: { signal: leaked }, variant: "sensor" };
};

const burden: FaultDraw = (draws) => {
  const setting = drawSetting(draws, ["4–20", "20–4", "0–20"]);
  const limit = knee(setting, draws);
  const [lower, upper] = setting.kind;
  const milliamps = Math.min(lower, upper) + limit * Math.abs(upper - lower);
  const supplyMin = draws.between(9, 14);
  const ohms = draws.between(250, 700);
  const variant = draws.pick(["simulated", "supply and burden", "nothing checked"]);
  setting.instrument = { loopPowered: draws.chance(0.5), supplyMin };
  if (variant === "simulated") setting.loopChecks = [check("simulated_20mA", milliamps + draws.either(0, 0.05), "mA")];
  if (variant === "supply and burden") {
    setting.loopChecks = [
      check("supply_voltage", supplyMin + (milliamps * ohms) / 1000, "V"),
      check("burden", ohms, "Ω"),
    ];
  }
  return { setting, fault: { signal: (signal) => Math.min(signal, milliamps) }, variant };
};

/** A level that at least two test points lie beyond, and at least three do not. */
function knee({ points }: Setting, draws: Draws): number {
  const step = 1 / (points.length - 1);
  return 1 - step * draws.between(1.2, Math.min(4, points.length - 3.2));
}

function check(item: string, measured: number, unit: string) {
  return { calibration: "C-1", item, result: "pass" as const, measured, unit };
}

const overload: FaultDraw = (draws) => {
  const setting = drawSetting(draws, draws.chance(0.6) ? ["1–5"] : ["0–10", "10–0", "0–5"]);
  const gain = draws.between(0.95, 0.994);
  const variant = setting.kind[0] === 1 ? "live zero" : "from zero";
  return { setting, fault: { signal: (signal) => signal * gain }, variant };
};

const blindZone: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  setting.instrument = { principle: "ultrasonic" };
  if (draws.chance(0.5)) {
    const limit = 1 - knee(setting, draws);
    return { setting, fault: { seen: (part) => Math.max(part, limit) }, variant: "stands still" };
  }
  setting.rangeLower = Math.round(draws.between(0.12, 0.4) * setting.span);
  const factor = draws.pick([2, 3]);
  const last = draws.pick([0, 1]) / (setting.points.length - 1) + 0.01;
  const doubled = (part: number) =>
    (factor * (setting.rangeLower + part * setting.span) - setting.rangeLower) / setting.span;
  return { setting, fault: { seen: (part) => (part < last ? doubled(part) : part) }, variant: `echo ${factor}` };
};

const obstruction: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const limit = knee(setting, draws);
  const variant = draws.pick(["simulated", "nothing checked"]);
  if (variant === "simulated") setting.loopChecks = [check("simulated_20mA", 20 + draws.either(0, 0.02), "mA")];
  return { setting, fault: { seen: (part) => Math.min(part, limit) }, variant };
};

const beyondRange: FaultDraw = (draws) => {
  const setting = drawSetting(draws, ["4–20", "20–4", "0–20", "0–10", "0–5"]);
  const [lower, upper] = setting.kind;
  const [least, most] = [Math.min(lower, upper), Math.max(lower, upper)];
  const span = most - least;
  const isFar = draws.chance(0.6) || least === 0;
  const beyond = isFar ? [1.05, 1.1] : [-0.1, -0.05];
  setting.rangeLower = Math.round(0.2 * setting.span + draws.between(0, 200));
  setting.points = [...setting.points, ...beyond].sort((left, right) => left - right);
  const isHigh = isFar === upper > lower;
  const limit = isHigh ? most + draws.between(0, 0.031) * span : least - (least === 0 ? 0 : 0.0125 * span);
  const cut = (signal: number) => (isHigh ? Math.min(signal, limit) : Math.max(signal, limit));
  return { setting, fault: { signal: cut }, variant: isFar ? "far" : "near" };
};

const faultOutput: FaultDraw = (draws) => {
  const setting = drawSetting(draws, ["4–20", "20–4"]);
  const rate = draws.between(0.04, 0.2);
  const level = draws.pick([3.5, 3.6, 21, 21.5, 22]);
  const must = draws.pick(setting.points);
  const lost = (moment: { part: number; cycle: number }) =>
    draws.chance(rate) || (moment.cycle === 1 && Math.abs(moment.part - must) < 0.02);
  const signal = (healthy: number, moment: { part: number; cycle: number }) =>
    lost(moment) ? level + 0.004 * draws.normal() - (level === 3.6 ? 0.02 : -0.02) : healthy;
  return { setting, fault: { signal }, variant: level < 4 ? "low" : "high" };
};

const heldOutput: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const from = draws.between(0.4, 0.7);
  const rate = draws.between(0.4, 0.7);
  return {
    setting,
    fault: {
      signal: (healthy, { part, signalBefore }) =>
        part > from && signalBefore !== undefined && draws.chance(rate) ? signalBefore : healthy,
    },
    variant: "",
  };
};

const airTemperature: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const taughtAt = Math.round(draws.between(15, 25));
  const air = taughtAt + draws.either(6, 25);
  const gain = Math.sqrt((taughtAt + 273.15) / (air + 273.15));
  const isLogged = draws.chance(0.7);
  setting.instrument = { principle: "ultrasonic", temperatureCompensated: false, taughtAt };
  setting.calibration = isLogged ? { airTemperature: Number((air + 0.5 * draws.normal()).toFixed(1)) } : {};
  setting.rangeLower = Math.round(setting.span * draws.between(0.1, 0.4));
  return { setting, fault: aboutFace(setting, gain), variant: isLogged ? "logged" : "not logged" };
};

function aboutFace({ rangeLower, span }: Setting, gain: number) {
  return { seen: (part: number) => (gain * (rangeLower + part * span) - rangeLower) / span };
}

const taughtEnd: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const off = draws.either(0.006, 0.08);
  const isFar = draws.chance(0.5);
  return {
    setting,
    fault: { seen: (part) => part + off * (isFar ? part : 1 - part) },
    variant: isFar ? "far end" : "near end",
  };
};

const tilt: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  setting.instrument = { principle: draws.pick(["laser", "photoelectric"]) };
  setting.rangeLower = Math.round(setting.span * draws.between(0.1, 0.4));
  const gain = 1 / Math.cos((draws.between(5, 15) * Math.PI) / 180);
  return { setting, fault: aboutFace(setting, gain), variant: "" };
};

const bow: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const size = draws.either(0.006, 0.03);
  const isBow = draws.chance(0.5);
  const shape = (part: number) => (isBow ? 4 * part * (1 - part) : Math.sin(2 * Math.PI * part));
  return { setting, fault: { seen: (part) => part + size * shape(part) }, variant: isBow ? "bow" : "S" };
};

const noSignal: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const rest = setting.kind[2] === "mA" ? 0.03 : 0.004;
  return { setting, fault: { signal: () => rest * draws.uniform() }, variant: "" };
};

const wrongType: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const [lower, upper, unit] = setting.kind;
  const least = Math.min(lower, upper);
  const level =
    unit === "V" ? Math.max(lower, upper) * draws.between(1.3, 2.3) : draws.between(0.2, least === 0 ? 0.7 : 2.5);
  return { setting, fault: { signal: () => level * (1 + 0.002 * draws.normal()) }, variant: unit };
};

export const sensorFaults: Readonly<Record<string, FaultDraw>> = {
  "slope-turned-round": turnedRound,
  "datum-shifted": datum,
  "leakage-across-loop": leakage,
  "current-limited": burden,
  "voltage-output-overloaded": overload,
  "blind-zone": blindZone,
  "obstruction-in-beam": obstruction,
  "target-beyond-range": beyondRange,
  "target-lost-fault": faultOutput,
  "target-lost-held": heldOutput,
  "air-temperature": airTemperature,
  "ends-taught-wrong": taughtEnd,
  "axis-tilted": tilt,
  "curved-characteristic": bow,
  "open-wire": noSignal,
  "current-and-voltage-mixed-up": wrongType,
};
