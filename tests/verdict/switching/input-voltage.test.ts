import { expect, test } from "vitest";
import { type InputType, inputLimitsVolts, inputVoltage } from "../../../src/verdict/switching/input-voltage.ts";
import { readColumns } from "../../published/read-data.ts";

/** IEC 61131-2, see tests/published/iec-61131-2/SOURCE.md. */
const { type = [], read_as: readAs = [], low_volts: lows = [], high_volts: highs = [] } = readColumns("iec-61131-2");
const published = type.map((number, index) => ({
  type: String(number) as InputType,
  state: readAs[index] === 1 ? ("on" as const) : ("off" as const),
  low: lows[index] ?? Number.NaN,
  high: highs[index] ?? Number.NaN,
}));

test("13 V is read as neither for certain by an input of type 1, and as 1 by one of type 3", () => {
  expect(inputVoltage("1", "on", 13).readAs).toBe("neither for certain");
  expect(inputVoltage("1", "on", 13).statement).toBe("fail");
  expect(inputVoltage("3", "on", 13)).toEqual({ volts: 13, low: 11, high: 30, readAs: "1", statement: "pass" });
});

test("the table has both states of both types, as IEC 61131-2 has them", () => {
  expect(published).toHaveLength(4);
  for (const { type, state, low, high } of published) expect(inputLimitsVolts[type][state]).toEqual({ low, high });
});

test.each(published)(
  "type $type, $state: on a limit is inside, a hundredth of a volt beyond is not",
  ({ type, state, low, high }) => {
    const judged = (volts: number) => inputVoltage(type, state, volts).statement;
    expect([judged(low), judged(high)]).toEqual(["pass", "pass"]);
    expect([judged(low - 0.01), judged(high + 0.01)]).toEqual(["fail", "fail"]);
  },
);

test("an input of type 2 reads what one of type 3 reads: from memory of IEC 61131-2, which tells them apart by current", () => {
  for (const volts of [-4, 0, 5, 8, 11, 15, 30, 31]) {
    expect(inputVoltage("2", "on", volts)).toEqual(inputVoltage("3", "on", volts));
  }
});

test("what an input reads follows from the voltage, whatever the output meant", () => {
  expect(inputVoltage("1", "on", 5)).toMatchObject({ readAs: "0", statement: "fail" });
  expect(inputVoltage("1", "off", 15)).toMatchObject({ readAs: "1", statement: "fail" });
  expect(inputVoltage("3", "off", 8)).toMatchObject({ readAs: "neither for certain", statement: "fail" });
  expect(inputVoltage("3", "on", 31)).toMatchObject({ readAs: "outside the range of the input", statement: "fail" });
  expect(inputVoltage("3", "off", -4)).toMatchObject({ readAs: "outside the range of the input", statement: "fail" });
});
