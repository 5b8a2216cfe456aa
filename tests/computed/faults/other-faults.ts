import type { Reading } from "../../../src/model/calibration.ts";
import { anyKind, type FaultDraw } from "./converter-faults.ts";
import { drawSetting, type Fault, type Moment, type Setting, valueDecimals } from "./faulty-loop.ts";
import type { Draws } from "./seeded-draws.ts";

/** An output that trails behind: nothing at the start of a run, where it had time to settle. */
const lag: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const size = draws.between(0.003, 0.01);
  const behind = (part: number, { direction, isFirstOfRun }: Moment) =>
    isFirstOfRun ? part : part - (direction === "rising" ? size : -size);
  return draws.chance(0.7)
    ? { setting, fault: { seen: behind }, variant: "sensor" }
    : { setting, fault: { value: behind }, variant: "controller" };
};

const play: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const size = draws.either(0.003, 0.01);
  return {
    setting,
    fault: { seen: (part, { direction }) => part + (direction === "rising" ? size : -size) },
    variant: "",
  };
};

const weakTarget: FaultDraw = (draws) => {
  const setting = drawSetting(draws, ["4–20", "20–4"]);
  setting.instrument = { principle: "ultrasonic" };
  setting.cycles = 3;
  const growth = draws.between(25, 60);
  const from = draws.between(0.6, 0.8);
  return {
    setting,
    fault: {
      noise: (noise, { part }) => noise * (1 + growth * Math.max(0, part) ** 2),
      signal: (healthy, { part }) => (part > from && draws.chance(0.3) ? 3.5 : healthy),
    },
    variant: "",
  };
};

const switchPoint: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const isShared = draws.chance(0.5);
  const off = draws.either(0.01, 0.05);
  const setPoint = setting.rangeLower + draws.between(0.2, 0.8) * setting.span;
  // Half of the tolerance of the signal: every planted switch point is farther off.
  const setPointTolerance = 0.0025 * setting.span;
  setting.outputs = [
    { tag: "LT-1", output: "Q1", setPoint, setPointTolerance, polarity: "PNP", controllerInput: "sinking" },
  ];
  setting.trips = Array.from({ length: 3 }, (_, place) =>
    (["approach", "recede"] as const).map((direction) => ({
      calibration: "C-1",
      phase: "as_found" as const,
      output: "Q1",
      direction,
      cycle: place + 1,
      reference:
        setPoint - off * setting.span + 0.0005 * setting.span * draws.normal() + (direction === "recede" ? 4 : 0),
    })),
  ).flat();
  return {
    setting,
    fault: isShared ? { seen: (part) => part + off } : {},
    variant: isShared ? "shared" : "teach",
  };
};

const mismatch: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const isPnp = draws.chance(0.5);
  setting.outputs = [
    {
      tag: "LT-1",
      output: "Q1",
      setPoint: setting.rangeLower + setting.span / 2,
      polarity: isPnp ? "PNP" : "NPN",
      controllerInput: isPnp ? "sourcing" : "sinking",
    },
  ];
  return { setting, fault: {}, variant: "" };
};

const columns = ["reference", "signal", "value"] as const;

const typing: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const variant = draws.pick(["exchanged", "moved"]);
  return { setting, fault: { sheet: (readings) => withSlip(readings, setting, variant, draws) }, variant };
};

function withSlip(readings: Reading[], setting: Setting, variant: string, draws: Draws): Reading[] {
  for (let tries = 0; tries < 100; tries += 1) {
    const place = Math.floor(draws.uniform() * readings.length);
    const column = draws.pick(columns);
    const reading = readings[place] as Reading;
    const typed = reading[column] as number;
    const decimals = { reference: 1, signal: 3, value: valueDecimals(setting) }[column];
    const slipped = variant === "moved" ? typed * draws.pick([10, 0.1]) : exchangedDigits(typed, decimals, draws);
    if (Math.abs(slipped - typed) / columnSpan(setting, column) > 0.02) {
      return readings.with(place, { ...reading, [column]: Number(slipped.toFixed(decimals)) });
    }
  }
  throw new Error("withSlip: no slip of two percent found");
}

function columnSpan({ span, kind, valueEnds }: Setting, column: (typeof columns)[number]): number {
  if (column === "reference") return span;
  const [lower, upper] = column === "signal" ? kind : valueEnds;
  return Math.abs(upper - lower);
}

function exchangedDigits(typed: number, decimals: number, draws: Draws): number {
  const digits = [...Math.abs(typed).toFixed(decimals).replace(".", "")];
  const place = Math.floor(draws.uniform() * (digits.length - 1));
  const changed = digits.with(place, digits[place + 1]!).with(place + 1, digits[place]!);
  return (Math.sign(typed) * Number(changed.join(""))) / 10 ** decimals;
}

const warmUp: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const size = draws.either(0.008, 0.03);
  const isLinear = draws.chance(0.5);
  const shape = ({ minutes, duration }: Moment) =>
    isLinear ? minutes / duration : 1 - Math.exp((-3 * minutes) / duration);
  return {
    setting,
    fault: { seen: (part, moment) => part + size * (shape(moment) - 1) },
    variant: isLinear ? "linear" : "exponential",
  };
};

/** A mark on the rail, or a wrong entry in a table of the controller. */
const lonePoint: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const at = draws.pick(setting.points);
  const off = draws.either(0.004, 0.05);
  const moved = (part: number, { part: place }: Moment) => (Math.abs(place - at) < 0.02 ? part + off : part);
  return draws.chance(0.6)
    ? { setting, fault: { seen: moved }, variant: "mark" }
    : { setting, fault: { value: moved }, variant: "table" };
};

export const otherFaults: Readonly<Record<string, FaultDraw>> = {
  "output-not-settled": lag,
  "one-point-off": lonePoint,
  "play-in-rig": play,
  "weak-target": weakTarget,
  "switch-point-off": switchPoint,
  "output-and-input-unfit": mismatch,
  "typing-error": typing,
  "warm-up-or-drift": warmUp,
};

/** Nothing wrong, 0.3 % noise, any columns. */
export const healthy: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  setting.noise = 0.3;
  setting.cycles = draws.pick([1, 2, 3]);
  setting.points = draws.pick([setting.points, [0, 0.25, 0.5, 0.75, 1]]);
  setting.hasCard = draws.chance(0.2);
  setting.instrument = {
    principle: draws.pick(["ultrasonic", "laser", "radar", "inductive"]),
    loopPowered: draws.chance(0.5),
    tolerance: draws.between(0.5, 1.5),
  };
  const none: Fault = {};
  return { setting, fault: none, variant: "" };
};
