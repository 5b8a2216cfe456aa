import { describe, expect, test } from "vitest";
import { recordSchema } from "../../src/record/record-schema.ts";
import { type SwitchingRecord, switchingSchema } from "../../src/record/switching-schema.ts";
import { switchingRecord } from "./sample-switching.ts";

const record = switchingRecord({ output: { inputType: "3", onVoltage: 12 } });
const [switching] = record.switching ?? [];

test("what is assembled is what the schema describes, also after it was written and read", () => {
  expect(recordSchema.parse(record)).toEqual(record);
  expect(JSON.parse(JSON.stringify(record))).toEqual(record);
});

describe("it is strict", () => {
  test.each<[string, (copy: SwitchingRecord) => void]>([
    ["a field more", (copy) => Object.assign(copy.wiring, { colour: "red" })],
    ["a field less", (copy) => Reflect.deleteProperty(copy.phases.asFound ?? {}, "repeat")],
    ["a statement that is none", (copy) => Object.assign(copy.phases.asFound ?? {}, { statement: "good" })],
    ["a limit from elsewhere", (copy) => Object.assign(copy.phases.asFound?.repeat ?? {}, { limitFrom: "a friend" })],
  ])("%s is refused", (_, spoil) => {
    const copy = structuredClone(switching);
    if (copy === undefined) throw new RangeError("no output");
    expect(switchingSchema.safeParse(copy).success).toBe(true);
    spoil(copy);
    expect(switchingSchema.safeParse(copy).success).toBe(false);
  });
});
