import { expect, test } from "vitest";
import { hysteresis } from "../../../src/verdict/causes/direction-causes.ts";
import {
  replaceForDrift,
  replaceForResidual,
  replaceForScatter,
} from "../../../src/verdict/recommendation/replace-steps.ts";
import { finding, notCurable, reasonsOf, stateOf } from "./sample-state.ts";

const known = { ...notCurable, best: notCurable.best! };

test("scatter is told as it was found, and as the least that it may be", () => {
  const [scatter] = reasonsOf(replaceForScatter(1.6, stateOf({ leastScatter: 1.2, isTargetProved: true })));
  expect(scatter).toContain("160 % of the tolerance, and at least 120 % of the tolerance");
});

test("a curve says that it bends; a gap says how wide it is, and what guides the target may be the cause", () => {
  expect(reasonsOf(replaceForResidual(known, stateOf()))[1]).toContain("bends away");
  const spread = { ...known, whyNot: { because: "spread at one point", point: 500, halfSpread: 12 } as const };
  const gap = replaceForResidual(spread, stateOf({ gap: 1.15 }));
  expect(gap.does).toBe("Replace the sensor, or what guides its target.");
  expect(reasonsOf(gap)[1]).toContain("2.3 times the tolerance");
  expect(reasonsOf(replaceForResidual(spread, stateOf({ gap: null })))[1]).toContain("at 500 mm alone");
});

test("a hysteresis is to be told from a short dwell before anything is bought", () => {
  const loop = finding(hysteresis.id, "sensor", { separatedBy: "read one inner point again" });
  const step = replaceForResidual(known, stateOf({ findings: [loop] }));
  expect(step.before).toBe("First read one inner point again. If the gap closes, only the dwell was too short.");
  expect(reasonsOf(step).at(-1)).toBe(loop.says);
});

test("a teach that was just tried is told behind what it would leave at best", () => {
  expect(reasonsOf(replaceForResidual(known, stateOf({ isJustTaught: true })))[1]).toContain("taught anew just now");
  const before = stateOf({ isJustTaught: true, isPassingBefore: true });
  expect(reasonsOf(replaceForResidual(known, before))[1]).toContain("It passed before it was taught");
  expect(reasonsOf(replaceForResidual(known, before)).join(" ")).not.toContain("taught anew just now");
});

test("a drift that comes back is told with its history", () => {
  expect(replaceForDrift(stateOf(), "it was taught twice")).toMatchObject({
    action: "replace",
    rule: "it was taught twice",
  });
});
