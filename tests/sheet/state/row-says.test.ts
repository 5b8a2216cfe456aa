import { expect, test } from "vitest";
import { errorWords, rowsSay, slipIn } from "../../../src/sheet/state/row-says.ts";
import { demoRecords } from "../../report/demo-records.ts";

const loop = demoRecords.find(({ instrument }) => instrument.tag === "LT-310")?.instrument;
if (loop === undefined) throw new Error("data-demo has no LT-310");

test.each(demoRecords.map((record) => [record.calibration.calibration, record] as const))(
  "%s: what a row says while it is typed is what the record says of it",
  (_, record) => {
    const { instrument, inputs, phases } = record;
    for (const phase of [phases.asFound, phases.asLeft]) {
      for (const reading of phase?.readings ?? []) {
        const source = inputs.rows.readings.find(({ line }) => line === reading.row);
        if (source === undefined || reading.leftOut !== undefined) continue;
        const says = rowsSay([{ id: "r", cells: source.cells }], instrument).get("r");
        const errors = [
          reading.errorDistance,
          reading.wiringErrorDistance,
          reading.inputCardErrorDistance,
          reading.loopErrorDistance,
        ].filter((one) => one !== undefined);
        expect(errors).toContain(says?.errorDistance);
        if (says?.isOutside === false) expect(reading.verdict).toBe("pass");
      }
    }
  },
);

test("a row whose cells are the same object is not reckoned anew", () => {
  const cells = { direction: "rising", reference: "975", signal: "8.01" };
  const before = new WeakMap();
  const first = rowsSay([{ id: "r", cells }], loop, before).get("r");
  expect(rowsSay([{ id: "r", cells }], loop, before).get("r")).toBe(first);
});

test("a point or a comma, a unit behind it; what is not finished says nothing", () => {
  const says = (signal: string) =>
    rowsSay([{ id: "r", cells: { point: "975", signal } }], loop).get("r")?.errorDistance;
  expect(says("8,01 mA")).toBe(says("8.01"));
  expect(says("8,")).toBeUndefined();
  expect(says("")).toBeUndefined();
});

test("a number a tolerance apart is asked about where one slip of the hand explains it, and only there", () => {
  const asked = (signal: string, others: readonly number[] = []) =>
    slipIn({ cells: { reference: "1650", signal }, column: "signal" }, others, loop);
  expect(asked("12.01")).toBeUndefined();
  expect(asked("21.00")).toEqual({ meant: "12.00", kind: "two digits exchanged" });
  expect(asked("120.0")).toMatchObject({ kind: "decimal mark moved" });
  // A sensor that is off by as much everywhere has typed nothing wrong.
  const off = (13 - 12) * ((3000 - 300) / 16);
  expect(asked("13.00", [off, off, off])).toBeUndefined();
});

test("an error in words, with its part of the tolerance; none where nothing is allowed", () => {
  expect(errorWords({ errorDistance: 1.2345, part: 0.243, isOutside: false }, "mm")).toBe(
    "+1.23 mm, 24 % of tolerance",
  );
  expect(errorWords({ errorDistance: -1, part: null, isOutside: true }, "mm")).toBe("−1 mm");
});
