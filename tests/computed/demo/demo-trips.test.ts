import { describe, expect, it } from "vitest";
import type { SwitchedPhaseRecord } from "../../../src/record/switching-schema.ts";
import { demoRecords } from "../../report/demo-records.ts";

/**
 * What demo-trips.mjs planted, in the loop's unit, as errors of the set point: `teach` is how far the output was taught
 * from its set point, `shift` what the planted error of the sensor adds, zero error alone, its span error being small
 * there; `deviation` that of one trip, with the rounding of the reference.
 */
type Planted = {
  tag: string;
  phase: "asFound" | "asLeft";
  teach: number;
  shift: number;
  differential: number;
  deviation: number;
  cycles: number;
  statement: "pass" | "fail";
  consistentWith?: "teach" | "shift";
};

const plantedOutputs: readonly Planted[] = [
  {
    tag: "ZT-201",
    phase: "asFound",
    teach: 1.2,
    shift: 1.27,
    differential: 12,
    deviation: 0.61,
    cycles: 5,
    statement: "pass",
  },
  {
    tag: "LT-310",
    phase: "asFound",
    teach: 1,
    shift: -21.6,
    differential: 9,
    deviation: 1.24,
    cycles: 4,
    statement: "fail",
    consistentWith: "shift",
  },
  {
    tag: "LT-310",
    phase: "asLeft",
    teach: -2,
    shift: -1.26,
    differential: 9,
    deviation: 1.24,
    cycles: 4,
    statement: "pass",
  },
  {
    tag: "LT-640",
    phase: "asFound",
    teach: 0.11,
    shift: -0.0134,
    differential: 0.03,
    deviation: 0.0031,
    cycles: 3,
    statement: "fail",
    consistentWith: "teach",
  },
];

/** How many standard deviations noise may carry a figure away: 4 is passed once in 16 000. */
const noiseFactor = 4;

describe.each(plantedOutputs)("$tag Q1 $phase", (planted) => {
  const { setPoint, differential, statement, shares } = outputOf(planted);
  const { teach, shift, deviation, cycles } = planted;

  it("has its planted set-point error, within 4 σ / √cycles and a hundredth of the planted shift", () => {
    const bound = (noiseFactor * deviation) / Math.sqrt(cycles) + 0.01 * Math.abs(shift);
    expect(Math.abs((setPoint?.error ?? Number.NaN) - teach - shift)).toBeLessThan(bound);
  });

  it("has its planted differential travel, within 4 σ √(2 / cycles) and a hundredth of it", () => {
    const bound = noiseFactor * deviation * Math.sqrt(2 / cycles) + 0.01 * planted.differential;
    expect(Math.abs((differential?.distance ?? Number.NaN) - planted.differential)).toBeLessThan(bound);
  });

  it("gets the statement that was meant, and is explained where it fails", () => {
    expect([statement, shares?.consistentWith]).toEqual([planted.statement, planted.consistentWith]);
  });
});

it("every output of the demonstration workbook fits its input", () => {
  const wiring = demoRecords.flatMap(({ switching = [] }) => switching.map((one) => one.wiring.statement));
  expect(wiring).toEqual(["pass", "pass", "pass"]);
});

function outputOf({ tag, phase }: Planted): SwitchedPhaseRecord {
  const found = demoRecords.find(({ instrument }) => instrument.tag === tag)?.switching?.[0]?.phases[phase];
  if (found === undefined) throw new Error(`the output of ${tag} was not tripped ${phase}`);
  return found;
}
