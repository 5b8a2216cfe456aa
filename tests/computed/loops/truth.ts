import type { Advice, Kind } from "./kinds/kind.ts";
import { type Loop, signalSpanOf, spanOf } from "./loop.ts";
import { visits } from "./measure.ts";
import { indicatedBy, type Stages, sensedDistance, stagesAt } from "./physics.ts";

/** A fault that was put into a loop; its size in tolerances where it has one. */
export type Fault = { kind: Kind; size: number | null };

/** What is so, whatever was read. Errors are in tolerances. */
export type Truth = {
  /** Greatest true error at the last stage that was read. */
  worst: number;
  /** The same over every stage that was read. */
  worstOfStages: number;
  /** What the best line through the sensor's true curve leaves. */
  bend: number;
  /** Twice the standard deviation of one reading, where it is widest. */
  scatter: number;
  /** Expanded uncertainty of a test point's mean, k = 2. */
  uncertainty: number;
  /** The switched output; 'near' where its trips scatter about the limit. */
  output: "in" | "near" | "out";
};

const stageOrder = ["value", "counts", "card", "signal"] as const;

/** Goes through a loop's plan without chance, and compares. */
export function truthOf(loop: Loop): Truth {
  const { plan, design } = loop;
  const stages = stageOrder.filter((stage) => plan.reads[stage]).map((stage) => stageOfColumn(loop, stage));
  const curve = errorCurve(loop);
  const worstOf = (stage: keyof Stages) => Math.max(...curve.map(({ errors }) => Math.abs(errors[stage])));
  const last = stages[0] ?? "sensor";
  return {
    worst: worstOf(last),
    worstOfStages: Math.max(...stages.map(worstOf)),
    bend: leftByBestLine(curve.map(({ point, sensed }) => ({ at: point, error: sensed }))),
    scatter: (2 * Math.max(loop.noise.white, loop.noise.whiteAtEnd)) / design.tolerance,
    uncertainty: uncertaintyOf(loop) / design.tolerance,
    output: outputState(loop),
  };
}

function outputState({ output }: Loop): Truth["output"] {
  if (output === null) return "in";
  const { shift, tolerance, differential, differentialMaxPercent, setPoint, isMismatched, chatters } = output;
  if (isMismatched || chatters || differential > (differentialMaxPercent / 100) * setPoint) return "out";
  const part = Math.abs(shift) / tolerance;
  return part > 1.2 ? "out" : part > 0.8 ? "near" : "in";
}

/** The lone column of the signal shows what is at the place of the meter. */
function stageOfColumn({ plan }: Loop, column: (typeof stageOrder)[number]): keyof Stages {
  if (column !== "signal") return column;
  return plan.reads.card ? "sensor" : plan.meterAt;
}

/** True error of every stage and of the sensor's own idea, place by place, in tolerances. */
export function errorCurve(loop: Loop) {
  const { design, plan, sensor } = loop;
  let before = design.range.lower;
  let held = design.signal.lower;
  return visits(loop).map(({ point, direction }, index) => {
    const isLost = point > sensor.lostBeyond && sensor.lostChance > 0;
    const minutes = index * plan.minutesBetween;
    const moment = { distance: point, direction, moved: point - before, minutes, noise: 0, isLost, held, other: 0.5 };
    const shown = stagesAt(loop, moment);
    before = point;
    held = shown.sensor;
    const errorOf = (stage: keyof Stages) => (indicatedBy(loop, stage, shown[stage]) - point) / design.tolerance;
    const errors = {
      sensor: errorOf("sensor"),
      card: errorOf("card"),
      counts: errorOf("counts"),
      value: errorOf("value"),
    };
    const { taught } = sensor;
    const idea = (sensedDistance(loop, moment) - taught.lower) / (taught.upper - taught.lower);
    const sensed = (design.range.lower + idea * spanOf(design) - point) / design.tolerance;
    return { point, direction, errors, sensed };
  });
}

/** Half the least band between two parallels that holds every error; the slope is sought by thirds. */
export function leftByBestLine(curve: readonly { at: number; error: number }[]): number {
  const at = curve.map((one) => one.at);
  const width = Math.max(...at) - Math.min(...at);
  const errors = curve.map(({ error }) => error);
  const steepest = (2 * (Math.max(...errors) - Math.min(...errors))) / width;
  const left = (slope: number) => {
    const residuals = curve.map((one) => one.error - slope * one.at);
    return (Math.max(...residuals) - Math.min(...residuals)) / 2;
  };
  let [low, high] = [-steepest, steepest];
  for (let step = 0; step < 80; step += 1) {
    const [first, second] = [low + (high - low) / 3, high - (high - low) / 3];
    if (left(first) < left(second)) high = second;
    else low = first;
  }
  return left((low + high) / 2);
}

function uncertaintyOf({ plan, noise, design }: Loop): number {
  const perSignal = spanOf(design) / Math.abs(signalSpanOf(design));
  const white = Math.max(noise.white, noise.whiteAtEnd);
  const readings = plan.points.length * plan.cycles * (plan.isBothWays ? 2 : 1);
  const step = 10 ** -plan.decimals.signal * perSignal;
  const variance =
    (plan.referenceUncertainty / 2) ** 2 +
    ((plan.meterUncertainty / 2) * perSignal) ** 2 +
    (white ** 2 + noise.cycle ** 2) / plan.cycles +
    (noise.walk ** 2 * readings) / 2 +
    step ** 2 / 12;
  return 2 * Math.sqrt(variance);
}

/** Every advice that an experienced engineer would let stand, the best first. */
export function adviceOf(faults: readonly Fault[], truth: Truth): readonly Advice[] {
  const slack = truth.uncertainty + truth.scatter;
  const cures = [...new Set(faults.flatMap((fault) => curesOf(fault, truth)))];
  const isMended =
    faults.some(({ kind }) => kind.isAlwaysMended || kind.miswrite !== undefined) || truth.output === "out";
  if (isMended || truth.worstOfStages > 1 + slack) return cures.length > 0 ? cures : ["leave"];
  const isScattered = faults.some(({ kind }) => scatterKinds.has(kind.id)) && truth.scatter > 0.5;
  const isNear = truth.worstOfStages + slack >= 0.8 || truth.output === "near";
  if (!isNear && !isScattered) return ["leave"];
  return [...new Set<Advice>([...cures, "leave"])];
}

/** Kinds that no true error shows, only repeats do. */
export const scatterKinds: ReadonlySet<string> = new Set(["scatter everywhere", "scatter grows with distance"]);

function curesOf({ kind }: Fault, truth: Truth): readonly Advice[] {
  if (kind.mayBeReplaced === "by scatter") return truth.scatter > 0.5 ? [...kind.advice, "replace"] : kind.advice;
  if (kind.mayBeReplaced !== "by curve" || truth.bend < 0.85) return kind.advice;
  return truth.bend > 1.15 ? ["replace"] : [...kind.advice, "replace"];
}
