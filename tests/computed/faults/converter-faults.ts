import { drawSetting, type Fault, type KindName, type Setting } from "./faulty-loop.ts";
import type { Draws } from "./seeded-draws.ts";

/** A drawn fault: the loop and what is wrong with it. */
export type DrawnFault = { setting: Setting; fault: Fault; variant: string };
export type FaultDraw = (draws: Draws) => DrawnFault;

const liveZero: readonly KindName[] = ["4–20", "20–4", "1–5"];
const fromZero: readonly KindName[] = ["0–20", "0–5"];
export const anyKind: readonly KindName[] = ["4–20", "20–4", "0–20", "0–10", "10–0", "0–5", "1–5"];

/** A part of the range as a part of the signal from its low to its high end, and back: the same turn both ways. */
export function turned({ kind: [lower, upper] }: Setting, part: number): number {
  return upper < lower ? 1 - part : part;
}

/** The converter's output as a function of the signal from its low to its high end; in the card or in the scaling. */
function converted(setting: Setting, draws: Draws, change: (part: number) => number): Fault {
  const step = (part: number) => turned(setting, change(turned(setting, part)));
  return setting.hasCounts && draws.chance(0.5) ? { counts: step } : { value: step };
}

function inScaling(setting: Setting, change: (part: number) => number): Fault {
  return { value: (part) => turned(setting, change(turned(setting, part))) };
}

const atSensor = (setting: Setting, change: (part: number) => number): Fault => ({
  seen: (part) => turned(setting, change(turned(setting, part))),
});

const liveAsZero: FaultDraw = (draws) => {
  if (draws.chance(0.3)) {
    const setting = drawSetting(draws, fromZero);
    return { setting, fault: atSensor(setting, (part) => 0.2 + 0.8 * part), variant: "sensor" };
  }
  const setting = drawSetting(draws, liveZero);
  return { setting, fault: converted(setting, draws, (part) => 0.2 + 0.8 * part), variant: "controller" };
};

const zeroAsLive: FaultDraw = (draws) => {
  if (draws.chance(0.3)) {
    const setting = drawSetting(draws, ["4–20", "20–4"]);
    return { setting, fault: atSensor(setting, (part) => 1.25 * part - 0.25), variant: "sensor" };
  }
  const setting = drawSetting(draws, fromZero);
  const isClamped = draws.chance(0.5);
  const change = (part: number) => Math.max(isClamped ? 0 : -1, 1.25 * part - 0.25);
  return {
    setting,
    fault: converted(setting, draws, change),
    variant: isClamped ? "controller, clamped" : "controller",
  };
};

const lowConstant: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const off = draws.either(0.01, 0.15);
  return { setting, fault: inScaling(setting, (part) => part + off * (1 - part)), variant: "" };
};

const highConstant: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const off = draws.pick([draws.between(0.03, 0.12), draws.between(-0.12, -0.03), draws.either(0.005, 0.02)]);
  return { setting, fault: inScaling(setting, (part) => part * (1 + off)), variant: "" };
};

const fullScale: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const ratio = draws.pick([27648 / 32767, 4000 / 4095, 32000 / 32767, 27648 / 32000]);
  const gain = draws.chance(0.5) ? ratio : 1 / ratio;
  return { setting, fault: converted(setting, draws, (part) => part * gain), variant: "" };
};

const unitSlip: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const factor = draws.pick([25.4, 1 / 25.4, 10, 0.1, 1000, 0.001]);
  return { setting, fault: { shown: (value) => value * factor }, variant: String(factor) };
};

const exchanged: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  return { setting, fault: inScaling(setting, (part) => 1 - part), variant: "" };
};

const cardOffset: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const off = draws.either(0.005, 0.05);
  setting.hasCard = draws.chance(0.3);
  const [lower, upper] = setting.kind;
  if (setting.hasCard) {
    return { setting, fault: { signalAtCard: (signal) => signal + off * (upper - lower) }, variant: "wiring" };
  }
  return {
    setting,
    fault: setting.hasCounts ? { counts: (part) => part + off } : { value: (part) => part + off },
    variant: "card",
  };
};

const trueZeroGain: FaultDraw = (draws) => {
  const setting = drawSetting(draws, draws.chance(0.8) ? liveZero : anyKind);
  const [lower, upper] = setting.kind;
  const isLive = Math.min(lower, upper) > 0;
  const gain = 1 + draws.either(0.005, 0.04);
  setting.hasCard = draws.chance(0.3);
  if (setting.hasCard) return { setting, fault: { signalAtCard: (signal) => signal * gain }, variant: "wiring" };
  const change = (part: number) => (gain * (lower + part * (upper - lower)) - lower) / (upper - lower);
  const fault: Fault = setting.hasCounts ? { counts: change } : { value: change };
  return { setting, fault, variant: isLive ? "card, live zero" : "card, from zero" };
};

const clampOrTruncation: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  if (draws.chance(0.5)) {
    const limit = draws.between(0.15, 0.3) + 1 / (setting.points.length - 1);
    const isTop = draws.chance(0.5);
    const change = (part: number) => (isTop ? Math.min(part, 1 - limit) : Math.max(part, limit));
    return { setting, fault: { value: change }, variant: "clamp" };
  }
  setting.valueEnds = draws.pick([
    [0, 10],
    [0, 50],
    [50, 0],
    [0.5, 12.5],
  ] as const);
  return { setting, fault: { shown: (value) => Math.trunc(value) }, variant: "truncation" };
};

const crossedChannel: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const level = draws.between(0.1, 0.9);
  const width = draws.pick([0.002, 0.05, 0.3]);
  return { setting, fault: { value: () => level + width * (draws.uniform() - 0.5) }, variant: "" };
};

const addedOffset: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  setting.hasCounts = true;
  const off = draws.either(0.004, 0.05);
  return { setting, fault: { value: (part) => part + off }, variant: "" };
};

const takenRoot: FaultDraw = (draws) => {
  const setting = drawSetting(draws, anyKind);
  const [name, change] = draws.pick([
    ["root", (part: number) => Math.sqrt(Math.max(0, part))],
    ["square", (part: number) => part ** 2],
    ["root, cut off", (part: number) => (part < 0.08 ? 0 : Math.sqrt(part))],
  ] as const);
  return { setting, fault: { value: change }, variant: name };
};

export const converterFaults: Readonly<Record<string, FaultDraw>> = {
  "live-zero-scaled-from-zero": liveAsZero,
  "from-zero-scaled-as-live-zero": zeroAsLive,
  "low-constant-wrong": lowConstant,
  "high-constant-wrong": highConstant,
  "full-scale-count-wrong": fullScale,
  "units-mixed-up": unitSlip,
  "constants-exchanged": exchanged,
  "offset-of-card": cardOffset,
  "shunt-or-gain-off": trueZeroGain,
  "value-clamped-or-cut": clampOrTruncation,
  "other-channel": crossedChannel,
  "offset-in-controller": addedOffset,
  "square-root-taken": takenRoot,
};
