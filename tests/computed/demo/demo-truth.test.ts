import { describe, expect, it } from "vitest";
import type { CalibrationRecord, PhaseRecord } from "../../../src/record/record-schema.ts";
import { demoProblems, demoRecords } from "../../report/demo-records.ts";
import { soundSpeedOfMixture } from "./sound-speed-of-mixture.mjs";

/**
 * What make-demo.mjs planted, in percent of span; `deviation` is the standard deviation of a single error: the planted
 * noise, with the rounding of the reference (step/√12) where that adds to it.
 */
type Planted = {
  tag: string;
  phase: "asFound" | "asLeft";
  zero: number;
  span: number;
  hysteresis: number;
  deviation: number;
  sensor: "pass" | "fail";
  controller?: "pass" | "fail";
};

const plantedPhases: readonly Planted[] = [
  { tag: "ZT-201", phase: "asFound", zero: -0.03, span: 0.07, hysteresis: 0, deviation: 0.02, sensor: "pass" },
  { tag: "LT-310", phase: "asFound", zero: 0.8, span: 0, hysteresis: 0, deviation: 0.051, sensor: "fail" },
  { tag: "LT-310", phase: "asLeft", zero: 0.05, span: -0.08, hysteresis: 0, deviation: 0.051, sensor: "pass" },
  { tag: "ZT-115", phase: "asFound", zero: 0.06, span: -1.2, hysteresis: 0, deviation: 0.052, sensor: "fail" },
  { tag: "ZT-115", phase: "asLeft", zero: 0.04, span: -0.02, hysteresis: 0, deviation: 0.052, sensor: "pass" },
  { tag: "ZT-407", phase: "asFound", zero: 0.5, span: -0.3, hysteresis: 1.8, deviation: 0.044, sensor: "fail" },
  { tag: "ZT-407", phase: "asLeft", zero: 0.15, span: -0.2, hysteresis: 1.8, deviation: 0.044, sensor: "fail" },
  { tag: "ZT-520", phase: "asFound", zero: 0.05, span: 0.04, hysteresis: 0, deviation: 0.017, sensor: "pass" },
  { tag: "LT-640", phase: "asFound", zero: 0.2, span: 0.62, hysteresis: 0, deviation: 0.04, sensor: "pass" },
  {
    tag: "LT-702",
    phase: "asFound",
    zero: -0.04,
    span: 0.05,
    hysteresis: 0,
    deviation: 0.03,
    sensor: "pass",
    controller: "fail",
  },
  {
    tag: "LT-702",
    phase: "asLeft",
    zero: -0.04,
    span: 0.05,
    hysteresis: 0,
    deviation: 0.03,
    sensor: "pass",
    controller: "pass",
  },
  { tag: "ZT-233", phase: "asFound", zero: 0.05, span: 0.15, hysteresis: 0, deviation: 0.0125, sensor: "fail" },
  // The air adds its share of each distance to the planted errors: see airShare below.
  {
    tag: "LT-318",
    phase: "asFound",
    zero: 0.05 + airShare(400),
    span: 0.1 + airShare(3600),
    hysteresis: 0,
    deviation: 0.051,
    sensor: "fail",
  },
];

/** Loops whose readings follow no straight line; demo-causes.test.ts says what was planted in them. */
const faultyLoops = ["ZT-330", "ZT-331", "LT-332", "LT-333"];

/** How many standard deviations noise may carry a figure away: 4 is passed once in 16 000. */
const noiseFactor = 4;

describe.each(plantedPhases)("$tag $phase", (planted) => {
  const phase = phaseOf(planted);
  const { points, used, cycles } = phase.counted;
  /** Variance of k equally spaced test points from 0 to 1: (k + 1) / (12 (k − 1)). */
  const spread = (points + 1) / (12 * (points - 1));

  it("has its planted zero error, within 4 σ √((1 + 1/(4 v)) / n)", () => {
    const bound = noiseFactor * planted.deviation * Math.sqrt((1 + 0.25 / spread) / used);
    expect(Math.abs((phase.zeroError?.percentSpan ?? Number.NaN) - planted.zero)).toBeLessThan(bound);
  });

  it("has its planted span error, within 4 σ / √(n v)", () => {
    const bound = (noiseFactor * planted.deviation) / Math.sqrt(used * spread);
    expect(Math.abs((phase.spanError?.percentSpan ?? Number.NaN) - planted.span)).toBeLessThan(bound);
  });

  it("has its planted hysteresis, within 4 σ √(2 / cycles)", () => {
    const bound = noiseFactor * planted.deviation * Math.sqrt(2 / cycles);
    expect(Math.abs((phase.hysteresis?.percentSpan ?? Number.NaN) - planted.hysteresis)).toBeLessThan(bound);
  });

  it("scatters as planted, within 4 σ / √(2 degrees of freedom), or shows nothing for one cycle", () => {
    if (cycles === 1) expect(phase.repeatability).toBeNull();
    else {
      const { pooledStdDev, degreesOfFreedom } = phase.repeatability ?? {
        pooledStdDev: Number.NaN,
        degreesOfFreedom: 1,
      };
      const bound = (noiseFactor * planted.deviation) / Math.sqrt(2 * degreesOfFreedom);
      expect(Math.abs(pooledStdDev - planted.deviation)).toBeLessThan(bound);
    }
  });

  it("gets the verdict that was meant", () => {
    expect(phase.verdicts).toMatchObject({ sensor: planted.sensor, controller: planted.controller ?? null });
    expect(phase.verdict).toBe(planted.controller ?? planted.sensor);
  });
});

describe("the demonstration workbook", () => {
  it("is read without a problem, and holds no phase beside those planted", () => {
    expect(demoProblems).toEqual([]);
    const found = demoRecords.flatMap(({ instrument, phases }) =>
      Object.keys(phases).map((key) => [instrument.tag, key]),
    );
    const straight = plantedPhases.map(({ tag, phase }) => [tag, phase]);
    expect(found).toEqual([...straight, ...faultyLoops.map((tag) => [tag, "asFound"])]);
  });

  it("was saved as different spreadsheets would", () => {
    const { files } = recordOf("ZT-201").inputs;
    expect(files.map(({ name, encoding, delimiter, decimalMark }) => [name, encoding, delimiter, decimalMark])).toEqual(
      [
        ["calibrations.csv", "windows-1252", ";", "comma"],
        ["instruments.csv", "utf-8", ",", "point"],
        ["loop_checks.csv", "utf-8", "\t", "point"],
        ["outputs.csv", "utf-8", "\t", "point"],
        ["readings.csv", "utf-8", ";", "comma"],
        ["standards.csv", "utf-8", ",", "point"],
        ["trips.csv", "utf-8", "\t", "point"],
      ],
    );
  });

  it("keeps degree sign, umlaut, minus sign and no-break space", () => {
    expect(recordOf("ZT-201").calibration.airTemperature).toBe(19.5);
    expect(recordOf("ZT-407").calibration.place).toBe("bench, Prüfstand 2");
    const standards = recordOf("ZT-201").standards;
    expect(standards.map(({ expandedUncertainty }) => expandedUncertainty)).toEqual([0.9, 0.002, 0.3]);
    expect(standards[2]?.description).toBe("thermometer, −20 to 60 °C");
  });

  it("prints a due date only where the loop is fit and somebody agreed to the interval", () => {
    expect(demoRecords.map(({ instrument, nextDue }) => [instrument.tag, nextDue])).toEqual([
      ["ZT-201", "2027-03-03"],
      ["LT-310", "2026-09-17"],
      ["ZT-115", undefined],
      ["ZT-407", undefined],
      ["ZT-520", "2027-06-02"],
      ["LT-640", undefined],
      ["LT-702", "2027-10-06"],
      ["ZT-233", undefined],
      ["LT-318", undefined],
      ...faultyLoops.map((tag) => [tag, undefined]),
    ]);
  });

  it("has in ZT-407 a hysteresis in the middle of which half alone is beyond the tolerance of 0.8 %", () => {
    for (const phase of ["asFound", "asLeft"] as const) {
      const { hysteresis } = phaseOf({ tag: "ZT-407", phase });
      expect(hysteresis?.point).toBe(6);
      expect((hysteresis?.percentSpan ?? 0) / 2).toBeGreaterThan(0.8);
    }
  });

  it("has in LT-640 one rejected reading, and a worst error between the 80 % that asks for adjusting and the limit", () => {
    const { counted, readings, worst } = phaseOf({ tag: "LT-640", phase: "asFound" });
    expect(counted).toMatchObject({ readings: 11, used: 10, leftOut: 1, cycles: 1 });
    expect(readings.flatMap(({ leftOut }) => leftOut ?? [])).toEqual([
      expect.stringMatching(/^rejected: missed echo/u),
    ]);
    expect(worst?.partOfTolerance).toBeGreaterThan(0.8);
    expect(worst?.partOfTolerance).toBeLessThan(1);
  });

  it("has in LT-702 a scaling error of 2 % of span at the far end, and none in the input card", () => {
    const { loopError } = phaseOf({ tag: "LT-702", phase: "asFound" });
    /** The controller shows 0.01 % of span, rounded: half of it, 0.00038 m, may be missing. */
    expect(Math.abs((loopError?.shares.scaling ?? Number.NaN) + 0.02 * 7.6)).toBeLessThan(0.00038 + 0.02 * 0.0076);
    /** Half a count and half a step of the meter of 0.001 mA: 0.00014 m and 0.00024 m. */
    expect(Math.abs(loopError?.shares.inputCard ?? Number.NaN)).toBeLessThan(0.00038);
  });

  it("has in LT-702 a whole loop check that passes, and in LT-640 a part of one with a supply that is too low", () => {
    const results = (tag: string) => (recordOf(tag).loopChecks?.items ?? []).map(({ item, result }) => [item, result]);
    const whole = recordOf("LT-702").loopChecks;
    expect(new Set(whole?.items.map(({ result }) => result))).toEqual(new Set(["pass", "not applicable"]));
    expect(whole?.items.flatMap(({ outside }) => outside)).toEqual([]);
    expect(whole?.notLookedAt).toEqual([]);
    expect(results("LT-640").filter(([, result]) => result === "fail")).toEqual([["supply at full output", "fail"]]);
    expect(recordOf("LT-640").loopChecks?.items.flatMap(({ outside }) => outside)).toEqual([
      "11.4 V where 12 to 30 V is allowed",
    ]);
    expect(demoRecords.flatMap(({ loopChecks }) => loopChecks?.incomplete ?? [])).toEqual([]);
  });

  it("has in ZT-233 readings that all lie inside the tolerance, and a guard band of U that refuses the mean of some", () => {
    const { readings, points } = phaseOf({ tag: "ZT-233", phase: "asFound" });
    expect(new Set(readings.map(({ verdict }) => verdict))).toEqual(new Set(["pass"]));
    for (const { errorDistance, expandedUncertainty, statement } of points) {
      /** Tolerance 0.25 % of 800 mm. */
      expect(Math.abs(errorDistance)).toBeLessThan(2);
      expect(statement).toBe(Math.abs(errorDistance) <= 2 - expandedUncertainty ? "pass" : "fail");
    }
    expect(points.map(({ statement }) => statement)).toContain("fail");
  });
});

/** What air of 4 °C and 80 % adds in LT-318 over a distance, percent of its span of 3600 mm; taught at 20 °C, 50 %. */
function airShare(distance: number): number {
  return (100 * distance * (soundSpeedOfMixture(20, 50) / soundSpeedOfMixture(4, 80) - 1)) / 3600;
}

function recordOf(tag: string): CalibrationRecord {
  const record = demoRecords.find(({ instrument }) => instrument.tag === tag);
  if (record === undefined) throw new Error(`no record of ${tag}`);
  return record;
}

function phaseOf({ tag, phase }: Pick<Planted, "tag" | "phase">): PhaseRecord {
  const found = recordOf(tag).phases[phase];
  if (found === undefined) throw new Error(`no phase ${phase} of ${tag}`);
  return found;
}
