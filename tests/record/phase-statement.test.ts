import { describe, expect, test } from "vitest";
import { outputsStatement, phaseStatement } from "../../src/record/phase-statement.ts";
import type { CalibrationRecord, Statement } from "../../src/record/record-schema.ts";
import { demoRecord } from "../report/demo-records.ts";

const base = demoRecord("LT-310");

/** The demo's loop with these statements of its analog value and of its output Q1. */
function record(analog: Statement, asFound: Statement | null, asLeft?: Statement | null): CalibrationRecord {
  const [output] = base.switching!;
  const found = output!.phases.asFound!;
  return {
    ...base,
    phases: {
      asFound: { ...base.phases.asFound!, verdict: analog },
      asLeft: { ...base.phases.asFound!, verdict: analog },
    },
    switching: [
      {
        ...output!,
        phases: {
          asFound: { ...found, statement: asFound },
          ...(asLeft !== undefined && { asLeft: { ...found, statement: asLeft } }),
        },
      },
    ],
  };
}

describe("a phase is as good as the worst of its parts", () => {
  test.each([
    ["pass", "pass", "pass"],
    ["pass", "fail", "fail"],
    ["fail", "pass", "fail"],
    ["conditional pass", "cannot be decided", "cannot be decided"],
    ["pass", null, "pass"],
  ] as const)("analog %s and output %s: %s", (analog, output, whole) => {
    expect(phaseStatement(record(analog, output), "asFound")).toBe(whole);
  });
});

test("an output that was not judged again is as it was found where it passed, and open where it did not", () => {
  expect(outputsStatement(record("pass", "pass"), "asLeft")).toBe("pass");
  expect(outputsStatement(record("pass", "pass", null), "asLeft")).toBe("pass");
  expect(outputsStatement(record("pass", "fail"), "asLeft")).toBeNull();
  expect(phaseStatement(record("pass", "fail", null), "asLeft")).toBe("pass");
  expect(outputsStatement(record("pass", "fail", "pass"), "asLeft")).toBe("pass");
});

test("in a record of form 1, which did not ask whether it was tried again, it is left as it was found", () => {
  const { overall: _, ...form1 } = record("pass", "fail");
  expect(outputsStatement(form1, "asLeft")).toBe("fail");
});

test("without outputs and without phases there is no statement", () => {
  expect(outputsStatement({ phases: {} }, "asFound")).toBeNull();
  expect(phaseStatement({ phases: {} }, "asFound")).toBeNull();
});

test("an output that does not fit its input is no pass in any phase, tripped or not", () => {
  const passing = record("pass", "pass", "pass");
  const unfit = {
    ...passing,
    switching: passing.switching!.map((one) => ({ ...one, wiring: { ...one.wiring, statement: "fail" as const } })),
  };
  expect(outputsStatement(unfit, "asFound")).toBe("fail");
  expect(phaseStatement(unfit, "asLeft")).toBe("fail");
  const untripped = { ...unfit, switching: unfit.switching.map((one) => ({ ...one, phases: {} })) };
  expect(phaseStatement(untripped, "asFound")).toBe("fail");
});
