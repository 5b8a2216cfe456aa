import fc from "fast-check";
import { expect, test } from "vitest";
import type { Statement } from "../../src/model/statement.ts";
import { causes } from "../../src/verdict/causes/causes.ts";
import { remedyOf } from "../../src/verdict/recommendation/cause-remedy.ts";
import type { Forecast, PartState, PhaseState } from "../../src/verdict/recommendation/phase-state.ts";
import { recommend } from "../../src/verdict/recommendation/recommend.ts";
import { howMany } from "../how-many.ts";
import { finding, stateOf } from "../verdict/recommendation/sample-state.ts";
import { switchedState } from "../verdict/recommendation/sample-switching.ts";

const isPassing = (statement: Statement | null) => statement === "pass" || statement === "conditional pass";

const statement = fc.constantFrom<Statement>(
  "pass",
  "conditional pass",
  "cannot be decided",
  "conditional fail",
  "fail",
);
const share = fc.double({ min: 0, max: 3, noNaN: true });
const left = fc.record({ statement, errorDistance: fc.double({ min: -30, max: 30, noNaN: true }), part: share });
const forecast: fc.Arbitrary<Forecast> = fc.record({
  now: left,
  best: fc.option(left),
  ends: fc.option(left),
  isCurable: fc.option(fc.boolean()),
  whyNot: fc.option(
    fc.record({
      because: fc.constantFrom("spread at one point" as const, "curvature" as const),
      point: share,
      halfSpread: share,
    }),
  ),
});
const part: fc.Arbitrary<PartState> = fc.record({
  statement: fc.option(statement),
  worst: share,
  forecast: fc.option(forecast),
});
const state: fc.Arbitrary<PhaseState> = fc
  .record({
    statement: fc.option(statement),
    judged: fc.constantFrom("signal" as const, "signal" as const, "counts" as const, "value" as const),
    sensor: fc.option(part),
    controller: fc.option(part),
    stageParts: fc.array(
      fc.record({ stage: fc.constantFrom("sensor" as const, "wiring" as const, "scaling" as const), part: share }),
      { maxLength: 3 },
    ),
    findings: fc.array(
      fc
        .record({
          id: fc.constantFrom(...causes.map(({ id }) => id)),
          stage: fc.constantFrom(
            ...(["sensor", "wiring", "input card", "scaling", "switched output", "rig", "readings"] as const),
          ),
        })
        .map(({ id, stage }) => finding(id, stage)),
      { maxLength: 3 },
    ),
    faultReadings: fc.integer({ min: 0, max: 3 }),
    scatter: fc.oneof(share, fc.constant({ notDetermined: "one cycle only" })),
    gap: fc.option(share),
    newConstants: fc.option(statement),
    switching: fc.array(
      fc.constantFrom(switchedState(), switchedState("teach"), switchedState("shift"), switchedState(null)),
      { maxLength: 2 },
    ),
    failedChecks: fc.array(
      fc
        .record({
          key: fc.constantFrom("identity" as const, "burden" as const, "mounting" as const, "restored" as const),
          number: fc.option(fc.integer({ min: 1, max: 27 })),
          says: fc.constant(""),
          isContradiction: fc.boolean(),
        })
        .map((check) => ({ ...check, item: check.key })),
      { maxLength: 2 },
    ),
  })
  .map((changes) => stateOf(changes));

/** Curable for these readings; or off by what teaching cures, with nothing steady left beyond what teaching takes away. */
function isTeachable({ sensor, findings, thresholds }: PhaseState): boolean {
  const steady = sensor?.forecast?.steadyLeft ?? 0;
  const isOff = findings.some((finding) => remedyOf(finding).cures === "sensor");
  return sensor?.forecast?.isCurable === true || (isOff && 100 * steady <= thresholds.replaceResidualFrom * (1 + 1e-9));
}

test("whatever a phase shows, there is a step with a reason, and none that its forecast or its statement contradicts", () => {
  fc.assert(
    fc.property(state, (one) => {
      const { also, ...first } = recommend(one);
      const steps = [first, ...also];
      for (const { action, of, reasons, does } of steps) {
        expect(reasons.length).toBeGreaterThan(0);
        expect(does).toMatch(/^[A-Z].*\.$/su);
        if (action === "re-teach" && of === "sensor") expect(isTeachable(one)).toBe(true);
        if (action === "leave") expect([isPassing(one.statement), steps.length]).toEqual([true, 1]);
      }
      const actions = steps.map(({ action }) => action);
      if (actions.includes("replace")) expect(actions).not.toContain("repair wiring or set-up");
    }),
    { numRuns: howMany(500, 2000), seed: 20_260_301 },
  );
});
