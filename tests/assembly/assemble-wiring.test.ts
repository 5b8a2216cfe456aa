import { expect, test } from "vitest";
import { assembleWiring } from "../../src/assembly/assemble-wiring.ts";
import { frozen } from "../charts/frozen.ts";

const output = frozen({
  tag: "LT-1",
  output: "Q1",
  setPoint: 100,
  polarity: "PNP",
  controllerInput: "sinking",
} as const);

test("a PNP output on a sinking input passes, and the voltages that were not measured are said", () => {
  expect(assembleWiring(output)).toEqual({
    inputMatch: { needs: "sinking", statement: "pass" },
    onVoltage: null,
    offVoltage: null,
    statement: "pass",
    notDetermined: { onVoltage: "no on_voltage is stated", offVoltage: "no off_voltage is stated" },
  });
});

test("voltages need the type of the input", () => {
  expect(assembleWiring({ ...output, onVoltage: 22, offVoltage: 0 }).notDetermined).toEqual({
    onVoltage: "no input_type is stated, so no limits are known",
    offVoltage: "no input_type is stated, so no limits are known",
  });
});

test("the worst of the three is the statement", () => {
  const typed = { ...output, inputType: "1" as const, onVoltage: 22, offVoltage: 1 };
  expect(assembleWiring(typed).statement).toBe("pass");
  expect(assembleWiring({ ...typed, onVoltage: 13 }).statement).toBe("fail");
  expect(assembleWiring({ ...typed, offVoltage: 9 }).statement).toBe("fail");
  expect(assembleWiring({ ...typed, polarity: "NPN" }).statement).toBe("fail");
});

test("an output of which nothing is stated has no statement", () => {
  expect(assembleWiring({ tag: "LT-1", output: "Q1", setPoint: 100 })).toMatchObject({
    inputMatch: null,
    statement: null,
  });
});

test("an output that acts the other way round fails, by its trips", () => {
  const trip = { calibration: "C-1", phase: "as_left", output: "Q1", direction: "approach", reference: 100 } as const;
  const stated = { tag: "LT-1", output: "Q1", setPoint: 100, function: "NO" } as const;
  expect(assembleWiring(stated, [{ ...trip, state: "on" }]).statement).toBe("pass");
  expect(assembleWiring(stated, [{ ...trip, state: "off" }])).toMatchObject({
    functionMatch: { seen: "NC", statement: "fail" },
    statement: "fail",
  });
  expect(assembleWiring(stated, [trip])).not.toHaveProperty("functionMatch");
});
