import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/problems/catalogue.ts";
import type { plausibilityProblems } from "../../src/problems/plausibility-problems.ts";
import { fullWorkbook, judged, rowsOf, withCell, withRows } from "../workbook/full-workbook.ts";
import type { Texts } from "../workbook/smallest-workbook.ts";

type Code = keyof typeof plausibilityProblems;

const instrument = (from: string, to: string): Texts => ({
  ...fullWorkbook,
  "instruments.csv": fullWorkbook["instruments.csv"].replace(from, to),
});
const inEach = (column: string, factor: number) =>
  withRows("readings.csv", (row) => ({ ...row, [column]: String(Number(row[column]) * factor) }));
/** The full workbook whose instrument states more. */
function stating(columns: string, cells: string, change = (row: string) => row): Texts {
  const [header = "", row = "", ...rest] = fullWorkbook["instruments.csv"].split("\n");
  return {
    ...fullWorkbook,
    "instruments.csv": [`${header},${columns}`, `${change(row)},${cells}`, ...rest].join("\n"),
  };
}
/** Each distance of a table less by so much. */
function lessBy(file: "readings.csv" | "trips.csv", columns: readonly string[], by: number) {
  const less = (text: string | undefined) => String(Number((Number(text) - by).toFixed(6)));
  const changed = withRows(file, (row) => ({
    ...row,
    ...Object.fromEntries(columns.filter((one) => row[one]).map((one) => [one, less(row[one])])),
  }));
  return changed[file] ?? "";
}
const firstReference = Number(rowsOf("readings.csv")[0]?.reference);
const signals = rowsOf("readings.csv").map(({ signal = "" }) => signal);

/** The full workbook spoiled by little, and what is told of it; the type asks for every code. */
const provocations: Readonly<Record<Code, { texts: Texts; told: string }>> = {
  "plausible/tolerance-refused": {
    texts: instrument("mA,0.5,", "mA,50,"),
    told: 'instruments.csv:2:tolerance: the tolerance is as wide as 50 % of the span: ±900 mm at 200 mm; read "50"; accepted: a tolerance up to 25 % of span, or yes in the column tolerance_is_wide',
  },
  "plausible/tolerance-wide": {
    texts: instrument("mA,0.5,", "mA,12,"),
    told: 'instruments.csv:2:tolerance: the tolerance is as wide as 12 % of the span: ±216 mm at 200 mm; read "12"; accepted: a tolerance up to 10 % of span, as common practice has it, or a wider one that is meant',
  },
  "plausible/output-tolerance-refused": {
    texts: { ...fullWorkbook, "outputs.csv": fullWorkbook["outputs.csv"].replace("400,5", "400,500") },
    told: 'outputs.csv:2:set_point_tolerance: the tolerance of Q1 is as wide as 27.8 % of the span: ±500 mm; read "500"; accepted: a tolerance up to 25 % of span, or yes in the column tolerance_is_wide of the table instruments',
  },
  "plausible/output-tolerance-wide": {
    texts: { ...fullWorkbook, "outputs.csv": fullWorkbook["outputs.csv"].replace("400,5", "400,198") },
    told: 'outputs.csv:2:set_point_tolerance: the tolerance of Q1 is as wide as 11 % of the span: ±198 mm; read "198"; accepted: a tolerance up to 10 % of span, as common practice has it, or a wider one that is meant',
  },
  "plausible/tolerance-fine": {
    texts: instrument("mA,0.5,", "mA,0.05,"),
    told: "readings.csv:2: the tolerance as found, 0.9 mm at 199.8 mm, is finer than one step of value, 1.8 mm; accepted: readings and standards that show a fraction of the tolerance",
  },
  "plausible/tolerance-none": {
    texts: {
      ...instrument("200,2000,mm,4,20,mA,0.5,percent of span", "0,1800,mm,4,20,mA,2,percent of reading"),
      "outputs.csv": fullWorkbook["outputs.csv"].replace("400", "200"),
      "trips.csv": lessBy("trips.csv", ["distance"], 200),
      "readings.csv": lessBy("readings.csv", ["reference", "point"], firstReference),
    },
    told: "readings.csv:2: the tolerance as found is 0 at 0 mm: there no error at all is allowed; accepted: a part of the reading with the least that is allowed, such as 1 % of reading or 5 mm, whichever is greater",
  },
  "plausible/unit-of-column": {
    texts: inEach("signal", 0.25),
    told: 'readings.csv:2:signal: as found, the numbers as a whole fit V over 250 Ω, and not mA: so taken they lie 0.5 % of span off what the other columns say, as they stand 56.5 %; read "1.03925"; accepted: numbers in mA, or each with its unit behind it',
  },
  "plausible/unit-of-range": {
    texts: instrument("200,2000,mm", "20,200,mm"),
    told: 'readings.csv:2:reference: as found, the readings fit a range in cm, and not in mm: 1 % of span off, as it stands 549 %; read "199.8"; accepted: the range and the readings in one unit, or each number with its unit behind it',
  },
  "plausible/scale-unknown": {
    texts: inEach("signal", 77),
    told: 'readings.csv:2:signal: as found, the numbers follow the distance and are no signal of 4 to 20 mA: they go from 320.089 to 1552.474; read "320.089"; accepted: the signal in mA; counts in the column counts',
  },
  "plausible/references-outside": {
    texts: inEach("reference", 0.0001),
    told: 'readings.csv:2:reference: as found, the references are none of the range of 200 to 2000 mm: they go from 0.01998 to 0.20004 mm; read "0.01998"; accepted: references inside the range, in mm or each with its unit behind it; or the range that is meant',
  },
  "plausible/unit-of-row": {
    texts: withCell("readings.csv", 3, "signal", "4.036"),
    told: 'readings.csv:5:signal: signal 4.036 fits the other readings in V over 250 Ω, and not in mA; read "4.036"; accepted: the number in mA, about 16.159, or with its unit behind it',
  },
  "plausible/point-unit": {
    texts: withCell("readings.csv", 3, "point", "155"),
    told: 'readings.csv:5:reference: the reference 1550.2 and the point 155 are the same distance in cm and in mm; read "1550.2"; accepted: both in mm, or each with its unit behind it',
  },
  "plausible/point-apart": {
    texts: withCell("readings.csv", 3, "point", "1500"),
    told: 'readings.csv:5:reference: the reference 1550.2 mm and the point 1500 mm lie 2.79 % of span apart; point 1550, or reference 1505.2 (two digits exchanged) would fit; read "1550.2"; accepted: the distance that was set, and the nominal position that it was meant for',
  },
  "plausible/reading-apart": {
    texts: withCell("readings.csv", 3, "signal", "61.16"),
    told: 'readings.csv:5:signal: signal 61.16 mA lies 281 % of span off what the other readings say; about 16.162 would fit (16.16 is one slip away: two digits exchanged); read "61.16"; accepted: the number as it was read; the point read again; or the row with its reason in the column rejected',
  },
  "plausible/rows-exchanged": {
    texts: withRows("readings.csv", (row, index) => {
      const partner = { 1: 2, 2: 1 }[index];
      return partner === undefined ? row : { ...row, signal: signals[partner] ?? "" };
    }),
    told: `readings.csv:3:signal: signal ${Number(signals[2])} mA does not fit here, nor ${Number(signals[1])} mA at line 4: exchanged they fit; read "${signals[2]}"; accepted: each number in its own row`,
  },
  "plausible/reading-of-other-phase": {
    texts: withRows("readings.csv", (row, index) => (index === 4 ? { ...row, phase: "as_left" } : row)),
    told: 'readings.csv:6:phase: the reading lies 0.99 % of span off those as left, and fits those as found; read "as_left"; accepted: the phase in which it was taken',
  },
  "plausible/row-copied": {
    texts: withRows("readings.csv", (row, index) => (index === 3 ? [row, row] : row)),
    told: "readings.csv:6: the reading has the same numbers as that of line 5; it is not counted as a repeat; accepted: each reading once, as it was read",
  },
  "plausible/cycle-copied": {
    texts: withRows("readings.csv", (row, index) =>
      index >= 10 && index < 20 ? { ...(rowsOf("readings.csv")[index - 10] ?? row), cycle: "2" } : row,
    ),
    told: 'readings.csv:12:cycle: cycle 2 as found repeats the numbers of another to the last digit, from line 2 on; it is not counted as a repeat; read "2"; accepted: each cycle as it was read',
  },
  "plausible/phase-copied": {
    texts: withRows("readings.csv", (row, index) => ({
      ...(rowsOf("readings.csv")[index % 20] ?? row),
      phase: row.phase ?? "",
    })),
    told: 'readings.csv:22:phase: 20 of 20 readings as left have the numbers of those as found to the last digit, though the loop was adjusted; read "as_left"; accepted: each phase as it was read',
  },
  "plausible/phases-exchanged": {
    texts: withRows("readings.csv", (row) => ({ ...row, phase: row.phase === "as_left" ? "as_found" : "as_left" })),
    told: 'readings.csv:2:phase: the readings as left stand before those as found: the phases as found and as left may be exchanged; read "as_left"; accepted: as found before anything was adjusted, as left after it',
  },
  "plausible/trip-unit": {
    texts: withCell("trips.csv", 2, "reference", "40.22"),
    told: 'trips.csv:4:reference: the trip at 40.22 fits the other trips in cm, and not in mm; read "40.22"; accepted: the number in mm, or with its unit behind it',
  },
  "plausible/load-too-small": {
    texts: stating("card_resistance,load_min", "500,2000", (row) => row.replace("4,20,mA", "4,20,V")),
    told: 'instruments.csv:2:card_resistance: the card\'s 500 Ω load the voltage output more than it allows: load_min is 2000 Ω; read "500"; accepted: a card of more resistance, or the data of sensor and card as they are',
  },
  "plausible/burden-too-great": {
    texts: stating("loop_powered,supply_voltage,supply_min,card_resistance,barrier_resistance", "yes,24,12,250,400"),
    told: 'instruments.csv:2:card_resistance: 650 Ω are stated in series with the current output, and supply_voltage and supply_min allow 571 Ω; read "250"; accepted: less resistance, more supply, or the data of sensor and loop as they are',
  },
  "plausible/supply-outside": {
    texts: stating("supply_voltage,supply_min,supply_max", "9,12,30"),
    told: 'instruments.csv:2:supply_voltage: the loop is fed with 9 V, and the sensor takes: supply_min 12 V, supply_max 30 V; read "9"; accepted: a supply that the sensor takes, or the data as they are',
  },
  "plausible/range-in-blind-zone": {
    texts: stating("blind_zone", "250"),
    told: 'instruments.csv:2:blind_zone: the range begins at 200 mm, inside the blind zone of 250 mm: nearer than that the sensor measures nothing; read "250"; accepted: a range that begins beyond the blind zone, or the data as they are',
  },
  "plausible/outputs-exchanged": {
    texts: {
      ...fullWorkbook,
      "outputs.csv": `${fullWorkbook["outputs.csv"].replace("400,5", "1000,5")}LT-1,Q2,400,5\n`,
      "trips.csv": `${fullWorkbook["trips.csv"]}${fullWorkbook["trips.csv"]
        .split("\n")
        .slice(1)
        .join("\n")
        .replaceAll("Q1", "Q2")
        .replaceAll(",4", ",10")}`,
    },
    told: 'trips.csv:2:output: Q1 trips at 402.2 mm and Q2 at 1002.2 mm, each where the other one is set to: exchanged they fit; read "Q1"; accepted: each trip under its own output; or the outputs, their cores or their rows exchanged, and none of them taught before',
  },
  "plausible/trip-apart": {
    texts: withCell("trips.csv", 2, "reference", "302.2"),
    told: 'trips.csv:4:reference: the trip of Q1 at 302.2 mm, on approach, lies far from the others; about 402.2 would fit (402.2 is one slip away: one digit wrong); read "302.2"; accepted: the distance at which the output changed',
  },
};

describe.each(Object.entries(provocations))("%s", (code, { texts, told }) => {
  test("is told in these words, and stops or warns as the catalogue says", async () => {
    const { codes, sentences, cases } = await judged(texts);
    expect(sentences[codes.indexOf(code as Code)]).toBe(told);
    expect(cases).toHaveLength(codes.some((one) => catalogue[one].severity === "stop") ? 0 : 1);
    expect(
      codes.every((one) => catalogue[one].severity !== "stop" || catalogue[code as Code].severity === "stop"),
    ).toBe(true);
  });
});

test("a warning is on the record of its calibration", async () => {
  const { cases } = await judged(provocations["plausible/trip-apart"].texts);
  expect(cases[0]?.warnings.map(({ code }) => code)).toEqual(["plausible/trip-apart"]);
});

test("a wide tolerance that is meant is a warning, however wide", async () => {
  const meant = fullWorkbook["instruments.csv"]
    .replace("value_unit", "value_unit,tolerance_is_wide")
    .replace("100,%", "100,%,yes");
  const { codes, cases } = await judged({ ...fullWorkbook, "instruments.csv": meant.replace("mA,0.5,", "mA,50,") });
  expect(codes).toEqual(["plausible/tolerance-wide"]);
  expect(cases).toHaveLength(1);
});

test("an adjustment that brought a loop out of its tolerance is told as phases exchanged, though the order is right", async () => {
  const found = rowsOf("readings.csv")
    .slice(0, 20)
    .map((row) => ({ ...row, phase: "as_left" }));
  const left = rowsOf("readings.csv")
    .slice(20)
    .map((row) => ({ ...row, phase: "as_found" }));
  const rows = [...left, ...found];
  const { sentences } = await judged(withRows("readings.csv", (_, index) => rows[index] ?? {}));
  expect(sentences).toHaveLength(1);
  expect(sentences[0]).toContain(
    "the loop was adjusted, and the readings as found lie inside the tolerance and those as left outside: the phases",
  );
});
