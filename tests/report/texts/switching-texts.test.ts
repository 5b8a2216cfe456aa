import { describe, expect, test } from "vitest";
import {
  chatterWords,
  failedOutputs,
  isSingleTripOutside,
  meanWords,
  percentWords,
  sharesWords,
  signedWithUncertainty,
  voltageWords,
} from "../../../src/report/texts/switching-texts.ts";
import { fourCycles, type SwitchingChanges, switchedPhase, switchingRecord } from "../../record/sample-switching.ts";

const failed = (changes: SwitchingChanges) => failedOutputs(switchingRecord(changes));
function setPointOf(changes: SwitchingChanges) {
  const { setPoint } = switchedPhase(changes);
  if (setPoint === null) throw new RangeError("the output has no set-point error");
  return setPoint;
}
const fiveShort = fourCycles.map((trip) => ({ ...trip, reference: (trip.reference ?? 0) - 5 }));

describe("the failed outputs", () => {
  test("are none where every one passes, nothing was tripped, or there is none", () => {
    expect(failed({})).toEqual([]);
    expect(failed({ trips: [] })).toEqual([]);
    expect(failed({ trips: [{ direction: "recede", reference: 104 }] })).toEqual([]);
    expect(failedOutputs({ ...switchingRecord(), switching: undefined })).toEqual([]);
  });

  test("say what is off, by how much, and what is allowed", () => {
    expect(failed({ trips: fiveShort })).toEqual([
      {
        phase: "asFound",
        output: "Q1",
        statement: "fail",
        why: "set-point error −4.85 ± 0.41 mm, tolerance ±0.5 mm",
      },
    ]);
  });

  test("say where a single trip made the statement, and the mean lies inside", () => {
    const [output] = failed({ output: { setPointTolerance: 0.45 } });
    expect(output?.why).toBe("set-point error +0.15 ± 0.41 mm, tolerance ±0.45 mm, a single trip lies outside");
    expect(isSingleTripOutside(setPointOf({ output: { setPointTolerance: 0.45 } }))).toBe(true);
    expect(isSingleTripOutside(setPointOf({}))).toBe(false);
    expect(isSingleTripOutside(setPointOf({ output: { setPointTolerance: 0.1 } }))).toBe(false);
    expect(isSingleTripOutside(setPointOf({ instrument: { decisionRule: "guard band" } }))).toBe(false);
  });

  test("name travel, repeat accuracy and chatter", () => {
    const trips = [...fourCycles, { direction: "recede", cycle: 4, reference: 104.2 } as const];
    expect(failed({ trips, output: { differentialMax: 3, repeatMax: 0.5 } }).map(({ why }) => why)).toEqual([
      "differential travel 3.9 %, limit 3 %; repeat accuracy 0.60 %, limit 0.5 %; chatter on recede in cycle 4 (2 changes)",
    ]);
  });

  test("name a wiring that does not fit, of no phase", () => {
    const output = {
      polarity: "NPN",
      controllerInput: "sinking",
      inputType: "1",
      onVoltage: 13,
      offVoltage: 9,
    } as const;
    expect(failed({ output })).toEqual([
      {
        output: "Q1",
        statement: "fail",
        why:
          "a NPN output needs a sourcing input, and this one is sinking; on: 13 V across the input, read as neither " +
          "for certain; 15 to 30 V asked for; off: 9 V across the input, read as neither for certain; −3 to 5 V asked for",
      },
    ]);
  });

  test("keep the word of the rule where it is not fail", () => {
    const [output] = failed({ instrument: { decisionRule: "non-binary guard band" } });
    expect(output?.statement).toBe("conditional pass");
    expect(output?.why).toBe("set-point error +0.15 ± 0.41 mm, tolerance ±0.5 mm");
  });
});

describe("what an error is consistent with", () => {
  const words = (changes: SwitchingChanges) =>
    sharesWords(switchingRecord(changes), switchedPhase(changes))?.replace(/^.*mm\. /u, "");

  test("is worded so, and never as certain", () => {
    expect(words({ trips: fiveShort })).toBe(
      "Consistent with a teach of the output that has drifted: what the analog value is off by explains little of it.",
    );
    expect(words({ trips: fiveShort, analogError: 5 })).toBe(
      "Consistent with a shift of the mount or the datum: switch and analog value are off by about the same distance. " +
        "Teaching the output anew would hide that.",
    );
    expect(words({ trips: fiveShort, analogError: -5 })).toMatch(/^Consistent with both: a shift of/u);
    expect(words({})).toBeUndefined();
  });

  test("names the air for an ultrasonic sensor only", () => {
    const shifted = { trips: fiveShort, analogError: 5 };
    expect(words({ ...shifted, instrument: { principle: "ultrasonic" } })).toContain("the datum or the air");
    expect(words({ ...shifted, instrument: { principle: "laser" } })).not.toContain("air");
  });

  test("gives the parts with their uncertainties", () => {
    const changes = { trips: fiveShort, analogError: 5 };
    // Half a step of 0.001 mA is 0.00625 mm; with the certificate of 0.1 mm U of the analog value is 0.21 mm.
    expect(sharesWords(switchingRecord(changes), switchedPhase(changes))).toContain(
      "Set-point error −4.85 ± 0.41 mm; the analog value there is off by +5.00 ±",
    );
  });
});

test("a voltage is told with what the input reads and what is asked for", () => {
  const voltage = { volts: 31, low: 15, high: 30, statement: "fail" } as const;
  expect(voltageWords({ ...voltage, readAs: "outside the range of the input" })).toBe(
    "31 V across the input, outside the range of the input; 15 to 30 V asked for",
  );
});

test("numbers are written with their sign, their digits and their minus", () => {
  expect(signedWithUncertainty(-20.49, 1.12)).toBe("−20.5 ± 1.1");
  expect(signedWithUncertainty(2, 0.98)).toBe("+2.00 ± 0.98");
  expect(percentWords(2.738)).toBe("2.7 %");
  expect(chatterWords({ runs: [], statement: "pass" })).toBe("none");
});

test("a mean has one decimal more than was typed, and its extremes have as many", () => {
  expect(meanWords(switchedPhase(), "operating", "mm")).toBe("100.15 mm, mean of 4 (99.9 to 100.5)");
  expect(meanWords(switchedPhase(), "release", "mm")).toBe("104.10 mm, mean of 4 (103.9 to 104.4)");
  expect(meanWords(switchedPhase({ trips: [{ reference: 100 }] }), "release", "mm")).toBeUndefined();
  expect(meanWords(switchedPhase({ trips: [{ reference: 100.5 }] }), "operating", "mm")).toBe("100.5 mm, 1 trip");
});
