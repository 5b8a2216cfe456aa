import { expect, test } from "vitest";
import { sensorStep } from "../../../src/verdict/recommendation/sensor-step.ts";
import { curable, finding, notCurable, part, reasonsOf, stateOf } from "./sample-state.ts";

const drift = { ...stateOf().drift, earlier: 2 };

test("a zero and span error that the best two constants cure is taught", () => {
  expect(sensorStep(stateOf())).toMatchObject({ action: "re-teach", of: "sensor" });
});

test("what even the best two constants leave outside for certain is replaced, never taught", () => {
  const state = { sensor: part("fail", 2, { ...notCurable, steadyLeft: 1.2 }) };
  const step = sensorStep(stateOf({ ...state, findings: [finding("curved-characteristic", "sensor")] }));
  expect(step).toMatchObject({ action: "replace", of: "sensor" });
  const gap = { ...state, findings: [finding("hysteresis-of-sensor", "sensor")] };
  expect(sensorStep(stateOf({ ...gap, isResponseProved: true })).action).toBe("replace");
  const open = sensorStep(stateOf(gap));
  expect(open, "an output that had not settled looks the same").toMatchObject({
    action: "cannot be decided",
    of: "readings",
  });
  expect(open.does).toMatch(
    /^Read one inner point again after five times the dwell.*If the gap stays, replace the sensor/u,
  );
  const both = [...gap.findings, finding("curved-characteristic", "sensor")];
  expect(sensorStep(stateOf({ ...state, findings: both })).action).toBe("replace");
  expect(reasonsOf(step)[0]).toContain("15 mm (150 % of the tolerance)");
});

test("what is left for certain and has no shape with a name, such as play in the rig, replaces nothing", () => {
  const state = { sensor: part("fail", 2, { ...notCurable, steadyLeft: 1.2 }) };
  expect(sensorStep(stateOf(state)).action).toBe("cannot be decided");
});

test("what hangs on one reading or on scatter alone replaces nothing: it is read again, or a shift beside it taught", () => {
  const state = { sensor: part("fail", 2, { ...notCurable, steadyLeft: 0.9 }) };
  const again = sensorStep(stateOf(state));
  expect(again).toMatchObject({ action: "cannot be decided", of: "readings" });
  expect(again.does).toContain("500 mm");
  const shifted = sensorStep(stateOf({ ...state, findings: [finding("datum-shifted", "sensor")] }));
  expect(shifted.action).toBe("re-teach");
  const bent = sensorStep(stateOf({ ...state, findings: [finding("curved-characteristic", "sensor")] }));
  expect(bent.action).toBe("cannot be decided");
});

test("readings that scatter too much, however few there are, are replaced once the target is proved", () => {
  const wide = { scatter: 1.5, leastScatter: 1.01 };
  expect(sensorStep(stateOf({ ...wide, isTargetProved: true })).action).toBe("replace");
  expect(sensorStep(stateOf(wide)).action).toBe("re-teach");
  expect(sensorStep(stateOf({ ...wide, leastScatter: 1, isTargetProved: true })).action).toBe("re-teach");
});

test("taught twice and drifted the same way twice is replaced; so is a drift that grows too fast", () => {
  expect(sensorStep(stateOf({ drift: { ...drift, isTaughtTwice: true } })).action).toBe("replace");
  expect(sensorStep(stateOf({ drift: { ...drift, growth: { factor: 3, atLeast: 2.1 } } })).action).toBe("replace");
  expect(sensorStep(stateOf({ drift: { ...drift, growth: { factor: 3, atLeast: 2 } } })).action).toBe("re-teach");
});

test("without the signal no stage can be named, so the signal is asked for", () => {
  for (const judged of ["counts", "value"] as const) {
    const step = sensorStep(stateOf({ judged }));
    expect(step).toMatchObject({ action: "cannot be decided", of: "readings" });
    expect(step.does).toContain("signal");
  }
});

test("an error that noise explains is not taught away: what makes it scatter is looked for, or a better standard", () => {
  const noise = stateOf({ isLineOff: false, scatter: 0.9, leastScatter: 0.5 });
  const step = sensorStep(noise);
  expect(step).toMatchObject({ action: "cannot be decided", of: "readings" });
  expect(step.does).toContain("what makes the readings scatter");
  expect(reasonsOf(step)).toContain("Two standard deviations of repeated readings are 90 % of the tolerance.");
  expect(sensorStep({ ...noise, isLineOff: true }).action).toBe("re-teach");
  expect(sensorStep({ ...noise, findings: [finding("curved-characteristic", "sensor")] }).action).toBe("re-teach");
  const refused = { sensor: part("fail", 0.9, curable), rule: { name: "guard band", guardFactor: 1 } as const };
  expect(sensorStep({ ...noise, ...refused }).of).toBe("standard");
});

test("without a forecast more readings are asked for", () => {
  expect(sensorStep(stateOf({ sensor: part("fail", 2, null) })).does).toContain("five points");
  expect(sensorStep(stateOf({ sensor: part("fail", 2, { ...curable, best: null }) })).of).toBe("readings");
});

test("where the rule can accept nothing, or refuses what lies inside, a better standard is asked for", () => {
  const refused = { ...notCurable, best: { statement: "fail", errorDistance: 9, part: 0.9 } as const };
  expect(sensorStep(stateOf({ sensor: part("fail", 1.2, refused) }))).toMatchObject({ of: "standard" });
  expect(sensorStep(stateOf({ sensor: part("fail", 1.2, { ...curable, isCurable: null }) }))).toMatchObject({
    action: "cannot be decided",
    of: "standard",
  });
});
