import type { YearRecord } from "../../src/assembly/years/over-the-years.ts";
import { overTheYears } from "../../src/assembly/years/over-the-years.ts";
import { directionChart } from "../../src/charts/direction-chart.ts";
import { errorChart } from "../../src/charts/error-chart.ts";
import { historyChart } from "../../src/charts/history-chart.ts";
import { residualChart } from "../../src/charts/residual-chart.ts";
import { reteachChart } from "../../src/charts/reteach-chart.ts";
import { stageChart } from "../../src/charts/stage-chart.ts";
import { tripChart } from "../../src/charts/trip-chart.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { steadyYears, yearPhase, yearRecord } from "../assembly/sample-years.ts";
import { fourCycles, type SwitchingChanges, switchingRecord } from "../record/sample-switching.ts";
import { type SampleOptions, sampleRecord } from "./sample-record.ts";

/** Loops whose labels are long, many, or far from the usual. */
export const awkwardSamples: Readonly<Record<string, SampleOptions>> = {
  usual: { hasController: true, leftOut: 2 },
  "percent of reading": { isPercentOfReading: true, distanceUnit: "m", rangeLower: 0.05, rangeUpper: 0.45, seed: 5 },
  "gross error": { scale: 60, seed: 3, phases: ["asFound"] },
  "small tolerance": {
    distanceUnit: "in",
    rangeLower: 3,
    rangeUpper: 10,
    points: 5,
    cycles: 1,
    tolerancePercent: 0.005,
    scale: 0.01,
  },
  "one direction": { directions: ["rising"], rangeLower: 10_000, rangeUpper: 65_000, seed: 11 },
  "two points": { points: 2, cycles: 1, rangeLower: -50, rangeUpper: 50, seed: 21, hasController: true },
  "long range": { rangeLower: 0, rangeUpper: 12_345_678, points: 7, phases: ["asLeft"] },
  "far from zero": { rangeLower: 100_000.25, rangeUpper: 100_001.25, points: 6, seed: 8 },
  "short range": { distanceUnit: "ft", rangeLower: 0.0001, rangeUpper: 0.0009, points: 6, seed: 13 },
  "guard band, tolerance that grows": {
    decisionRule: "guard band",
    isPercentOfReading: true,
    tolerancePercent: 0.6,
    standardPercent: 0.06,
    hasController: true,
  },
  "guard band, no zone at the near end": {
    decisionRule: "guard band",
    isPercentOfReading: true,
    tolerancePercent: 0.5,
    standardPercent: 0.15,
    points: 6,
  },
  "zone at one point": {
    decisionRule: "guard band",
    isPercentOfReading: true,
    tolerancePercent: 0.5,
    standardPercent: 0.555,
    phases: ["asLeft"],
  },
  "no zone": { decisionRule: "guard band", standardPercent: 0.6, tolerancePercent: 0.4 },
  "U above T": { standardPercent: 3, points: 5, phases: ["asFound"] },
  "non-binary guard band": {
    decisionRule: "non-binary guard band",
    distanceUnit: "in",
    rangeLower: 4,
    rangeUpper: 24,
    seed: 4,
  },
  "managed guard band": { decisionRule: "managed guard band", standardPercent: 0.3, points: 21, cycles: 1 },
  "huge error": { scale: 90_000, seed: 17, phases: ["asLeft"], hasController: true },
};

const manyCycles = Array.from({ length: 12 }, (_, index) => ({ cycle: index + 1, reference: 100 + index / 10 }));
const fourAsLeft = fourCycles.map((trip) => ({ ...trip, phase: "as_left" as const }));

/** Switched outputs with many trips, few, far away, or without a tolerance. */
export const awkwardOutputs: Readonly<Record<string, SwitchingChanges>> = {
  "both phases": { trips: [...fourCycles, ...fourAsLeft] },
  "many cycles": { trips: manyCycles },
  "one trip on its set point": { output: { setPointTolerance: undefined }, trips: [{ reference: 100 }] },
  "far from its set point": { output: { setPoint: 12_345.678, setPointTolerance: 0.001 } },
  "a wide tolerance": { output: { setPointTolerance: 90 } },
};

/** Every chart that a record allows, by name. */
export async function allCharts(record: CalibrationRecord): Promise<ReadonlyMap<string, string>> {
  const svgByName = new Map<string, string>();
  for (const size of ["wide", "narrow"] as const) svgByName.set(`error ${size}`, (await errorChart(record, size)).svg);
  for (const name of ["asFound", "asLeft"] as const) {
    for (const [kind, chart] of Object.entries({ residualChart, directionChart, stageChart })) {
      const drawing = await chart(record, name);
      if (drawing !== undefined) svgByName.set(`${kind} ${name}`, drawing.svg);
    }
  }
  const reteach = await reteachChart(record);
  if (reteach !== undefined) svgByName.set("reteachChart", reteach.svg);
  return svgByName;
}

const adjustedOn = (day: string) =>
  yearRecord(day, [3, 4, 5], { adjustment: "repair", asLeft: yearPhase([0, 0.2, 0]) });

/** Histories with few records, many adjustments, wild errors, a changed tolerance, a forecast far ahead. */
export const awkwardHistories: Readonly<Record<string, readonly YearRecord[]>> = {
  steady: steadyYears,
  "one record": [yearRecord("2024-02-29", [-1, -4.9, 1])],
  "adjusted each time": ["2019-01-01", "2019-02-01", "2020-01-01", "2021-06-30", "2026-12-31"].map(adjustedOn),
  "wild errors": [0, 900, -700, 20].map((error, index) => yearRecord(`201${index}-07-01`, [error, 0, 0])),
  "two weeks apart": ["01", "16", "31"].map((day, index) => yearRecord(`2024-07-${day}`, [0.1 * index, 0, 0])),
  "nineteen years ahead": [0, 0.26, 0.5, 0.76].map((error, index) => yearRecord(`202${index}-01-01`, [error, 0, 0])),
  "a tighter tolerance": steadyYears.map((record, index) => ({
    ...record,
    asFound: record.asFound && {
      ...record.asFound,
      points: record.asFound.points.map((point) => ({ ...point, toleranceHigh: 5 - index / 2 })),
    },
  })),
  "downwards, from 2020 on": [0, -1.1, -1.9, -3.2].map((error, index) =>
    yearRecord(`202${index}-05-05`, [0, 0, error]),
  ),
};

const awkward = [awkwardSamples, awkwardOutputs, awkwardHistories].flatMap((samples) => Object.keys(samples));

/** The names of all awkward records, or of every second, third, … of them. */
export function awkwardNames(apart = 1): readonly string[] {
  return awkward.filter((_, place) => place % apart === 0);
}

/** Every chart of every awkward record, or of some, by name. */
export async function awkwardCharts(names = awkwardNames()): Promise<ReadonlyMap<string, string>> {
  const all = new Map<string, string>();
  const ofNames = <Sample>(samples: Readonly<Record<string, Sample>>) =>
    Object.entries(samples).filter(([name]) => names.includes(name));
  for (const [sample, options] of ofNames(awkwardSamples)) {
    for (const [name, svg] of await allCharts(sampleRecord(options))) all.set(`${sample}, ${name}`, svg);
  }
  for (const [sample, changes] of ofNames(awkwardOutputs)) {
    all.set(`${sample}, tripChart`, (await tripChart(switchingRecord(changes), 0))?.svg ?? "");
  }
  for (const [sample, records] of ofNames(awkwardHistories)) {
    const years = overTheYears(records);
    if (years === undefined) throw new TypeError(`awkwardCharts: ${sample} has no day`);
    for (const size of ["wide", "narrow"] as const) {
      const history = { tag: "LT-1", distanceUnit: "mm", overTheYears: years };
      all.set(`${sample}, historyChart ${size}`, (await historyChart(history, size))?.svg ?? "");
    }
  }
  return all;
}
