import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { demoRecords } from "../report/demo-records.ts";
import { flatConditions, flatReadings, flatStandards, phasesOf } from "./flat-readings.ts";
import { loopCount, writeGeneratedWorkbook } from "./generated-workbook.ts";
import { describeWithProgram } from "./needs-program.ts";
import { type RecordFigure, recordFigures } from "./record-figures.ts";
import { recordsOfFolder } from "./records-of-folder.ts";

/** Two programs that sum in another order differ by some hundred units in the last place: 1e-14, up to 1e-11 in sums. */
const relativeTolerance = 1e-9;
/**
 * An error is the difference of two distances of up to a hundred spans (a 1 m range 90 m away), each rounded at 1e-16 of
 * itself: it is known to 1e-14 of span, however small it is. A factor of a hundred is left for sums.
 */
const absoluteTolerancePartOfSpan = 1e-12;

const script = fileURLToPath(new URL("./figures.R", import.meta.url));
const demo = fileURLToPath(new URL("../../data-demo", import.meta.url));

describeWithProgram("Rscript", "base R finds the same figures", (rscript) => {
  it("in every loop of the demonstration workbook", () => {
    expect(demoRecords).toHaveLength(readFileSync(`${demo}/calibrations.csv`, "latin1").match(/^C-/gmu)?.length ?? 0);
    expect(demoRecords.length).toBeGreaterThan(6);
    expect(differences(ownFigures(demoRecords), figuresFromR(rscript, demoRecords))).toEqual([]);
  });

  it("in twenty-one generated loops of every unit, signal and gap in the data (seed 20260504)", async () => {
    const folder = writeGeneratedWorkbook(20260504);
    const { records } = await recordsOfFolder(folder);
    rmSync(folder, { recursive: true });
    expect(records).toHaveLength(loopCount);
    expect(whatIsCovered(records)).toEqual(everyGap);
    expect(differences(ownFigures(records), figuresFromR(rscript, records))).toEqual([]);
  });
});

describe("the comparison itself", () => {
  const own = new Map<string, RecordFigure>([
    ["large", { value: 1000, scale: 1 }],
    ["small", { value: 1e-9, scale: 100 }],
    ["none", { value: null, scale: 1 }],
    ["word", { value: "rising", scale: 1 }],
  ]);
  const same = { large: "1000", small: "1e-9", none: "NA", word: "rising" };

  it("finds no difference between equal figures", () => {
    expect(differences(own, new Map(Object.entries(same)))).toEqual([]);
  });

  it.each([
    ["a number that is off by two parts in a thousand million", { large: "1000.000002" }],
    ["a small number that is off by more than the floor", { small: "1.2e-9" }],
    ["a figure where there is none", { none: "0" }],
    ["no figure where there is one", { large: "NA" }],
    ["another word", { word: "falling" }],
    ["a figure that only the other program has", { extra: "1" }],
  ])("finds %s", (_, change) => {
    expect(differences(own, new Map(Object.entries({ ...same, ...change })))).toHaveLength(1);
  });

  it("finds a figure that the other program does not have", () => {
    const { large: _, ...rest } = same;
    expect(differences(own, new Map(Object.entries(rest)))).toHaveLength(1);
    const { none, ...all } = same;
    expect([none, differences(own, new Map(Object.entries(all)))]).toEqual(["NA", []]);
  });
});

function ownFigures(records: readonly CalibrationRecord[]): ReadonlyMap<string, RecordFigure> {
  return new Map(
    records.flatMap((record) =>
      phasesOf(record).flatMap(([name, phase]) =>
        [...recordFigures(record, phase)].map(
          ([figure, value]) => [`${record.calibration.calibration},${name},${figure}`, value] as const,
        ),
      ),
    ),
  );
}

function figuresFromR(rscript: string, records: readonly CalibrationRecord[]): ReadonlyMap<string, string> {
  const folder = mkdtempSync(join(tmpdir(), "spanwright-figures-"));
  try {
    writeFileSync(join(folder, "readings.csv"), flatReadings(records));
    writeFileSync(join(folder, "conditions.csv"), flatConditions(records));
    writeFileSync(join(folder, "standards.csv"), flatStandards(records));
    // Each function runs too seldom to be worth R's compiling it.
    const env = { ...process.env, R_ENABLE_JIT: "0" };
    const printed = execFileSync(rscript, ["--vanilla", script, folder], { encoding: "utf8", maxBuffer: 1e8, env });
    return new Map(
      printed
        .trim()
        .split("\n")
        .map((line) => [line.slice(0, line.lastIndexOf(",")), line.slice(line.lastIndexOf(",") + 1)] as const),
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** One line a figure that differs, or that only one of the two has. */
function differences(own: ReadonlyMap<string, RecordFigure>, other: ReadonlyMap<string, string>): readonly string[] {
  const names = [...new Set([...own.keys(), ...other.keys()])];
  return names
    .filter((name) => !agrees(own.get(name), other.get(name)))
    .map((name) => `${name}: ${own.get(name)?.value ?? "none"} here, ${other.get(name) ?? "no line"} there`);
}

function agrees(own: RecordFigure | undefined, other: string | undefined): boolean {
  // What one of them has not, the other may have as none.
  if (own === undefined || other === undefined) return (own?.value ?? null) === null && (other ?? "NA") === "NA";
  return other.split("|").some((one) => agreesWith(own, one));
}

/** The other program prints every place of a tie; each of them is right. */
function agreesWith(own: RecordFigure, other: string): boolean {
  if (own.value === null || other === "NA") return own.value === null && other === "NA";
  if (typeof own.value === "string") return own.value === other;
  const expected = Number(other);
  const allowed = Math.max(relativeTolerance * Math.abs(expected), absoluteTolerancePartOfSpan * own.scale);
  return Math.abs(own.value - expected) <= allowed;
}

const everyGap = [
  "gap: air temperature: not stated",
  "gap: no alignment_angle is stated",
  "gap: no coverage factor is stated; 2 is taken",
  "gap: no drift is stated",
  "gap: no expanded uncertainty is stated",
  "as left",
  "by non-binary guard band",
  "by guard band",
  "by managed guard band",
  "by simple acceptance",
  "fault signal: at or above 21 mA",
  "fault signal: at or above 4.8 V",
  "fault signal: at or below 0.5 V",
  "fault signal: at or below 3.6 mA",
  "judged by counts",
  "judged by signal",
  "judged by value",
  "k by Student t",
  "k by normal",
  "k by one dominant rectangular contribution",
  "k by two dominant rectangular contributions",
  "no combined uncertainty of the zero error",
  "no controller points",
  "no hysteresis",
  "no linearity",
  "no repeatability",
  "rejected: target slipped",
  "reverse acting",
  "said: cannot be decided",
  "said: conditional fail",
  "said: conditional pass",
  "said: fail",
  "said: pass",
  "source: TH: certificate",
  "source: drift since the certificate",
  "source: hysteresis, one direction read",
  "source: reference alignment",
  "source: resolution of the counts",
  "source: resolution of the displayed value",
  "unit cm",
  "unit ft",
  "unit in",
  "unit m",
  "unit mm",
].sort();

const wantedSources = [
  "TH: certificate",
  "drift since the certificate",
  "hysteresis, one direction read",
  "reference alignment",
  "resolution of the counts",
  "resolution of the displayed value",
];
const wantedGaps = [
  "air temperature: not stated",
  "no alignment_angle is stated",
  "no coverage factor is stated; 2 is taken",
  "no drift is stated",
  "no expanded uncertainty is stated",
  "not stated in a unit of distance",
];

/** What the generated workbook must hold so that agreement on it says something. */
function whatIsCovered(records: readonly CalibrationRecord[]): readonly string[] {
  const found = records.flatMap((record) => [
    `unit ${record.instrument.distanceUnit}`,
    `by ${record.decisionRule.name}`,
    ...(record.instrument.signalUpper < record.instrument.signalLower ? ["reverse acting"] : []),
    ...phasesOf(record).flatMap(([name, phase]) => [
      ...(name === "as_left" ? ["as left"] : []),
      `judged by ${phase.judged}`,
      ...(phase.hysteresis === null ? ["no hysteresis"] : []),
      ...(phase.linearity.independent === null ? ["no linearity"] : []),
      ...(phase.repeatability === null ? ["no repeatability"] : []),
      ...phase.readings.flatMap(({ leftOut }) => leftOut ?? []),
      ...(phase.endPoints === undefined ? ["no controller points"] : []),
      ...(phase.zeroError?.combinedStandardUncertainty === null ? ["no combined uncertainty of the zero error"] : []),
      ...[...phase.points, ...(phase.endPoints ?? [])].flatMap(({ statement, budget }) => [
        `said: ${statement}`,
        `k by ${budget.coverageBasis}`,
        ...budget.lines
          .flatMap(({ source }) => wantedSources.filter((wanted) => source.replace(/-\d+/u, "").endsWith(wanted)))
          .map((source) => `source: ${source}`),
        ...budget.missing
          .flatMap((gap) => wantedGaps.filter((wanted) => gap.endsWith(wanted)))
          .map((gap) => `gap: ${gap}`),
      ]),
    ]),
  ]);
  return [...new Set(found)].sort();
}
