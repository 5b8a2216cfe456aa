import { expect, test } from "vitest";
import { outputSteps, switchSteps } from "../../../src/verdict/recommendation/switch-steps.ts";
import { switchedState } from "./sample-switching.ts";

const asked = (...states: ReturnType<typeof switchedState>[]) =>
  switchSteps({ switching: states, unit: "mm", rangeLower: 200, rangeUpper: 1200 });

test("an output that passes asks for nothing", () => {
  expect(asked(switchedState())).toEqual([]);
});

test("a teach that drifted is taught anew; a shift that the analog value shares is put right in front of both", () => {
  expect(asked(switchedState("teach"))).toMatchObject([{ action: "re-teach", of: "switched output" }]);
  const [shift] = asked(switchedState("shift"));
  expect(shift).toMatchObject({ action: "repair wiring or set-up", of: "set-up" });
  expect(shift?.reason).toContain("Q1 trips 21 mm nearer than its set point of 700 mm");
});

test("both at once are put right in that order; neither for certain asks for the analog value", () => {
  expect(asked(switchedState("teach and shift")).map(({ of }) => of)).toEqual(["set-up", "switched output"]);
  expect(asked(switchedState("neither for certain"))).toMatchObject([{ of: "readings" }]);
  expect(asked(switchedState(null))).toMatchObject([{ action: "cannot be decided", of: "readings" }]);
});

test("trips that contradict each other as they are noted are compared and tripped again, and nothing is taught or mended by them", () => {
  const pair = (approach: number, recede: number, cycle: number) => [
    { direction: "approach" as const, cycle, reference: approach, isCounted: true },
    { direction: "recede" as const, cycle, reference: recede, isCounted: true },
  ];
  const chatter = { statement: "fail" } as const;
  const exchanged = { trips: [...pair(712, 700, 1), ...pair(712.1, 700.1, 2)], chatter };
  const [step, ...others] = outputSteps(asked(switchedState("teach", exchanged)));
  expect(others).toEqual([]);
  expect(step).toMatchObject({
    action: "cannot be decided",
    of: "readings",
    rule: "what was written down is in doubt",
  });
  expect(step?.does).toContain("Compare the trips of Q1 with the sheet");
  const slipped = { trips: [...pair(700, 712, 1), ...pair(600, 712.1, 2), ...pair(700.1, 712, 3)] };
  expect(asked(switchedState("teach", slipped))).toMatchObject([
    { of: "readings", rule: "what was written down is in doubt" },
  ]);
  expect(asked(switchedState(undefined, exchanged))).toHaveLength(1);
  expect(asked(switchedState(undefined, { trips: exchanged.trips }))).toEqual([]);
});

test("a set point that cannot be decided asks for a better standard", () => {
  const setPoint = { error: 1, expandedUncertainty: 30, decision: { statement: "cannot be decided" } as const };
  expect(asked(switchedState(undefined, { setPoint }))).toMatchObject([{ of: "standard" }]);
});

test("an input that does not fit, and travel or chatter that fails, are repairs", () => {
  const inputMatch = { needs: "sinking", statement: "fail" } as const;
  const [wiring] = asked({ ...switchedState(), wiring: { inputMatch, statement: "fail" } });
  expect(wiring).toMatchObject({ of: "wiring" });
  expect(wiring?.reason).toContain("needs a sinking input");
  const [travel] = asked(switchedState(undefined, { chatter: { statement: "fail" } }));
  expect(travel).toMatchObject({ of: "set-up", reason: "Q1 does not pass in chatter." });
});

test("what is no repair becomes a step of its own", () => {
  const steps = outputSteps(asked(switchedState("teach and shift")));
  expect(steps.map(({ of }) => of)).toEqual(["switched output"]);
});

test("an output without a tolerance of its set point is neither taught nor left: its tolerance is asked for", () => {
  for (const error of [-21, 0.1]) {
    const setPoint = { error, expandedUncertainty: 1, decision: null };
    const [step, ...others] = outputSteps(asked(switchedState("teach", { setPoint, statement: "cannot be decided" })));
    expect(others).toEqual([]);
    expect(step).toMatchObject({ action: "cannot be decided", of: "switched output" });
    expect(step?.does).toContain("set_point_tolerance");
  }
});

test("what does not fit at an output is said as it was read, and of nothing that nobody read", () => {
  const state = switchedState();
  const wrong = (wiring: Partial<typeof state.wiring>, output: Partial<typeof state.output> = {}) =>
    asked({
      ...state,
      output: { ...state.output, ...output },
      wiring: { ...state.wiring, statement: "fail", ...wiring },
    });
  const acts = wrong({ functionMatch: { seen: "NO", statement: "fail" } }, { function: "NC" });
  expect(acts).toMatchObject([{ action: "repair wiring or set-up", of: "wiring" }]);
  expect(acts[0]?.reason).toBe("By the states after its trips Q1 is NO, and it is stated as NC.");
  expect(acts[0]?.does).toContain("NO/NC setting");
  const [volts, ...others] = wrong({
    onVoltage: { statement: "fail" },
    functionMatch: { seen: "NO", statement: "pass" },
  });
  expect(others).toEqual([]);
  expect(volts?.reason).toContain("voltage");
  expect(
    wrong({ inputMatch: { needs: "sinking", statement: "fail" }, offVoltage: { statement: "fail" } }),
  ).toHaveLength(2);
});

test("states that contradict each other are seen again", () => {
  const notDetermined = { function: "the states after the trips contradict each other" };
  expect(outputSteps(asked(switchedState(undefined, { notDetermined })))).toMatchObject([
    { action: "cannot be decided", of: "readings", rule: "what was written down is in doubt" },
  ]);
});

test("two outputs that trip where the other one is set to are told apart before either is taught", () => {
  const at = (output: string, setPoint: number, error: number) => {
    const state = switchedState("teach", {
      setPoint: { error, expandedUncertainty: 1, decision: { statement: "fail" } },
    });
    return { ...state, output: { ...state.output, output, setPoint, setPointTolerance: 5 } };
  };
  const steps = asked(at("Q1", 400, 500.3), at("Q2", 900, -499.8));
  expect(steps).toMatchObject([{ of: "wiring" }, { of: "wiring" }]);
  expect(new Set(steps.map(({ does }) => does)).size).toBe(1);
  expect(steps[0]?.does).toContain("Q1 and Q2");
  expect(steps.map(({ reason }) => reason)).toEqual([
    "Q1 trips at 900.3 mm, where Q2 is set to.",
    "Q2 trips at 400.2 mm, where Q1 is set to.",
  ]);
  expect(asked(at("Q1", 400, 500.3), at("Q2", 900, 0.2))).toMatchObject([
    { action: "re-teach" },
    { action: "re-teach" },
  ]);
});

test("an output that trips at its set point is not said to trip 0 mm off it", () => {
  const reasonOf = (error: number) =>
    asked(
      switchedState(null, {
        setPoint: { error, expandedUncertainty: 1, decision: null },
        statement: "cannot be decided",
      }),
    )[0]?.reason;
  expect(reasonOf(0)).toBe("Q1 trips at its set point, and no tolerance of it is stated.");
  expect(reasonOf(2)).toBe("Q1 trips 2 mm farther than its set point, and no tolerance of it is stated.");
});
