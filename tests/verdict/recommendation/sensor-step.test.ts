import { expect, test } from "vitest";
import { sensorStep } from "../../../src/verdict/recommendation/sensor-step.ts";
import { curable, notCurable, part, reasonsOf, stateOf } from "./sample-state.ts";

const drift = { ...stateOf().drift, earlier: 2 };

test("a zero and span error that the best two constants cure is taught", () => {
  expect(sensorStep(stateOf())).toMatchObject({ action: "re-teach", of: "sensor" });
});

test("what even the best two constants leave outside is replaced, never taught", () => {
  const step = sensorStep(stateOf({ sensor: part("fail", 2, notCurable) }));
  expect(step).toMatchObject({ action: "replace", of: "sensor" });
  expect(reasonsOf(step)[0]).toContain("15 mm (150 % of the tolerance)");
});

test("readings that scatter by more than half the tolerance are not taught away, curable or not", () => {
  expect(sensorStep(stateOf({ scatter: 0.5 })).action).toBe("re-teach");
  expect(sensorStep(stateOf({ scatter: 0.51 })).action).toBe("replace");
});

test("taught twice and drifted the same way twice is replaced; so is a drift that grows too fast", () => {
  expect(sensorStep(stateOf({ drift: { ...drift, isTaughtTwice: true } })).action).toBe("replace");
  expect(sensorStep(stateOf({ drift: { ...drift, growth: 2.1 } })).action).toBe("replace");
  expect(sensorStep(stateOf({ drift: { ...drift, growth: 2 } })).action).toBe("re-teach");
});

test("without the signal no stage can be named, so the signal is asked for", () => {
  for (const judged of ["counts", "value"] as const) {
    const step = sensorStep(stateOf({ judged }));
    expect(step).toMatchObject({ action: "cannot be decided", of: "readings" });
    expect(step.does).toContain("signal");
  }
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
