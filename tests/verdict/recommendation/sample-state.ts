import { driftHistory } from "../../../src/verdict/recommendation/drift-history.ts";
import type { Forecast, PartState, PhaseState } from "../../../src/verdict/recommendation/phase-state.ts";
import { usualThresholds } from "../../../src/verdict/recommendation/recommendation-thresholds.ts";
import type { RecommendedStep } from "../../../src/verdict/recommendation/step.ts";
import { frozen } from "../../charts/frozen.ts";

type Finding = PhaseState["findings"][number];

/** 20 mm out of a tolerance of 10 mm now, 2 mm after the best two constants and after a teach at the ends. */
export const curable: Forecast = frozen({
  now: { statement: "fail", errorDistance: 20, part: 2 },
  best: { statement: "pass", errorDistance: 2, part: 0.2 },
  ends: { statement: "pass", errorDistance: 2.5, part: 0.25 },
  isCurable: true,
  whyNot: null,
});

/** 15 mm left by the best two constants. */
export const notCurable: Forecast = frozen({
  ...curable,
  best: { statement: "fail", errorDistance: -15, part: 1.5 },
  ends: { statement: "fail", errorDistance: -18, part: 1.8 },
  isCurable: false,
  whyNot: { because: "curvature", point: 500, halfSpread: 15 },
});

export const part = (statement: PartState["statement"], worst: number, forecast: Forecast | null = null): PartState =>
  frozen({ statement, worst, forecast });

export const finding = (id: string, stage: Finding["stage"], changes: Partial<Finding> = {}): Finding =>
  frozen({ id, stage, says: `It is ${id}.`, rivals: [], separatedBy: `look whether it is ${id}`, ...changes });

/** The reasons of a step in their words. */
export const reasonsOf = (step: Pick<RecommendedStep, "reasons"> | undefined): readonly string[] =>
  step?.reasons.map(({ says }) => says) ?? [];

/** A sensor of 200 to 1200 mm that is off by twice its tolerance of 10 mm, and nothing else wrong. */
export function stateOf(changes: Partial<PhaseState> = {}): PhaseState {
  return frozen({
    unit: "mm",
    rangeLower: 200,
    rangeUpper: 1200,
    rule: { name: "simple acceptance", guardFactor: 0 },
    minimumTestUncertaintyRatio: 4,
    statement: "fail",
    judged: "signal",
    sensor: part("fail", 2, curable),
    controller: null,
    stageParts: [{ stage: "sensor", part: 2 }],
    findings: [],
    faultReadings: 0,
    scatter: 0.1,
    leastScatter: 0.08,
    gap: 0.05,
    isTargetProved: false,
    newConstants: null,
    worstPoint: {
      point: 700,
      errorDistance: 20,
      expandedUncertainty: 1.5,
      tolerance: 10,
      greatestSource: "steel rule",
    },
    missing: [],
    switching: [],
    failedChecks: [],
    leftWithoutAir: null,
    isJustTaught: false,
    drift: driftHistory(undefined, { rangeLower: 0, rangeUpper: 1000 }, false),
    thresholds: usualThresholds,
    ...changes,
  });
}

/** A loop that passes with a third of its tolerance. */
export const passing: Partial<PhaseState> = {
  statement: "pass",
  sensor: part("pass", 0.33, { ...curable, now: { statement: "pass", errorDistance: 3.3, part: 0.33 } }),
  stageParts: [{ stage: "sensor", part: 0.3 }],
};
