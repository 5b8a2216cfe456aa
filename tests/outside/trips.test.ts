import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import type { SwitchedPhaseRecord } from "../../src/record/switching-schema.ts";
import { demoRecords } from "../report/demo-records.ts";
import { describeWithProgram } from "./needs-program.ts";

/** Differences of numbers up to 500, summed in another order: 1e-13 of them at most, and a factor of a hundred for room. */
const absoluteTolerance = 1e-9;

const script = fileURLToPath(new URL("./trips.R", import.meta.url));
const demo = fileURLToPath(new URL("../../data-demo", import.meta.url));

describeWithProgram("Rscript", "base R finds the same figures of the switched outputs", (rscript) => {
  it("in every phase of the demonstration workbook in which an output was tripped", () => {
    const own = ownFigures();
    const fromR = execFileSync(rscript, [script, demo], { encoding: "utf8" }).trimEnd().split("\n");
    expect(fromR).toHaveLength(own.size);
    expect(own.size).toBe(4 * 10);
    for (const line of fromR) {
      const [calibration, phase, figure, value] = line.split(",");
      const found = own.get(`${calibration} ${phase} ${figure}`);
      expect(Math.abs((found ?? Number.NaN) - Number(value)), line).toBeLessThan(absoluteTolerance);
    }
  });
});

function ownFigures(): ReadonlyMap<string, number | null | undefined> {
  return new Map(
    demoRecords.flatMap(({ calibration, switching = [] }) =>
      switching.flatMap(({ phases: { asFound, asLeft } }) =>
        [...figuresOf(asFound, "as_found"), ...figuresOf(asLeft, "as_left")].map(
          ([figure, value]) => [`${calibration.calibration} ${figure}`, value] as const,
        ),
      ),
    ),
  );
}

function figuresOf(
  phase: SwitchedPhaseRecord | undefined,
  name: string,
): readonly [string, number | null | undefined][] {
  if (phase === undefined) return [];
  const { operating, release, differential, repeat, setPoint } = phase;
  const figures: Readonly<Record<string, number | null | undefined>> = {
    "operating.mean": operating?.mean,
    "operating.standardDeviation": operating?.standardDeviation,
    "release.mean": release?.mean,
    "release.standardDeviation": release?.standardDeviation,
    "differential.distance": differential?.distance,
    "differential.percent": differential?.percent,
    "differential.greatestOfOneCycle": differential?.greatestOfOneCycle?.distance,
    "repeat.distance": repeat?.distance,
    "repeat.percent": repeat?.percent,
    standardUncertaintyOfMean: setPoint?.budget.lines.find(({ source }) => source.startsWith("repeatability"))
      ?.standardUncertainty,
  };
  return Object.entries(figures).map(([figure, value]) => [`${name} ${figure}`, value]);
}
