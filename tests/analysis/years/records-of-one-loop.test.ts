import { expect, test } from "vitest";
import { recordsOfOneLoop } from "../../../src/analysis/years/records-of-one-loop.ts";
import { yearRecord } from "../../assembly/sample-years.ts";

const names = (records: readonly { calibration: string }[]) => records.map(({ calibration }) => calibration);
const early = yearRecord("2018-01-01", [0, 0, 0]);
const late = yearRecord("2019-01-01", [0, 0, 0]);

test("records stand in the order of time, whatever order they come in", () => {
  const { records, leftOut } = recordsOfOneLoop(Object.freeze([late, early]));
  expect(records.map(({ performedOn }) => performedOn)).toEqual(["2018-01-01", "2019-01-01"]);
  // 2019-01-01 is 365 days after 2018-01-01.
  expect((records[1]?.day ?? 0) - (records[0]?.day ?? 0)).toBe(365);
  expect(leftOut).toEqual([]);
});

test("those of one day keep their order", () => {
  const [first, second] = [
    { ...late, calibration: "Z" },
    { ...late, calibration: "A" },
  ];
  expect(names(recordsOfOneLoop([first, second]).records)).toEqual(["Z", "A"]);
});

test("the range and unit of the last record count: those before the last change of them are told", () => {
  const other = { ...late, rangeUpper: 900 };
  const now = yearRecord("2020-01-01", [0, 0, 0]);
  const { records, leftOut } = recordsOfOneLoop([early, other, now]);
  expect(names(records)).toEqual(["C-2020-01"]);
  expect(leftOut).toEqual(["C-2018-01: from before a record that was left out", "C-2019-01: of another range or unit"]);
});

test("records that read another part of the loop are of another error, and are told", () => {
  const controller = { ...late, pointsOf: "controller" as const };
  const now = yearRecord("2020-01-01", [0, 0, 0]);
  expect(recordsOfOneLoop([early, controller, now]).leftOut).toEqual([
    "C-2018-01: from before a record that was left out",
    "C-2019-01: read at the controller, the last one was not",
  ]);
  expect(recordsOfOneLoop([early, controller]).leftOut).toEqual(["C-2018-01: read at the sensor alone"]);
});

test("another serial number ends the history, unless a replacement was written down", () => {
  const [old, fresh] = [
    { ...early, serial: "A-1" },
    { ...late, serial: "A-2" },
  ];
  expect(recordsOfOneLoop([old, fresh]).leftOut).toEqual([
    "C-2018-01: of another serial number, and no replacement was written down",
  ]);
  expect(names(recordsOfOneLoop([old, { ...fresh, adjustment: "replace" }]).records)).toEqual([
    "C-2018-01",
    "C-2019-01",
  ]);
});

test("one without a day is told first", () => {
  const { records, leftOut } = recordsOfOneLoop([early, yearRecord(null, [0, 0, 0], { calibration: "C-0" })]);
  expect(names(records)).toEqual(["C-2018-01"]);
  expect(leftOut).toEqual(["C-0: its day is not stated"]);
});

test.each([{ rangeLower: 1 }, { rangeUpper: 999 }, { distanceUnit: "cm" as const }])(
  "%j is another range",
  (change) => {
    expect(recordsOfOneLoop([{ ...early, ...change }, late]).leftOut).toEqual(["C-2018-01: of another range or unit"]);
  },
);

test.each<[string | null, string | null, "none" | "replace" | null, "none" | "replace" | null, number]>([
  ["A-1", "A-1", "none", "none", 2],
  ["A-1", "A-2", null, null, 1],
  ["A-1", "A-2", "none", "replace", 2],
  ["A-1", "A-2", "replace", "none", 2],
  [null, "A-2", "none", "none", 2],
  ["A-1", null, "none", "none", 2],
])("serial numbers %s and %s with %s and %s", (before, now, first, second, kept) => {
  const records = [
    { ...early, serial: before, adjustment: first },
    { ...late, serial: now, adjustment: second },
  ];
  expect(recordsOfOneLoop(records).records).toHaveLength(kept);
});
