import { describe, expect, test } from "vitest";
import { assembleRecord, defaultFigureBasis, type RecordContext } from "../../src/assembly/assemble-record.ts";
import type { Calibration, Reading } from "../../src/model/calibration.ts";
import type { CalibrationRows } from "../../src/model/calibration-case.ts";
import type { Instrument } from "../../src/model/instrument.ts";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { recordSchema } from "../../src/record/record-schema.ts";
import { reading } from "../analysis/sample-loop.ts";
import { frozen } from "../charts/frozen.ts";

const context: RecordContext = frozen({ softwareVersion: "0.1.0", digests: new Map(), warnings: [] });
const row = <Row>(line: number, of: Row) => ({ row: of, file: "table.csv", line, cells: {} });

type Changes = { instrument?: Partial<Instrument>; calibration?: Partial<Calibration>; readings?: readonly Reading[] };

function rowsOf({ instrument, calibration, readings = [reading(50, { signal: 12 })] }: Changes = {}): CalibrationRows {
  return frozen({
    calibration: row(2, { calibration: "C-1", tag: "LT-1", performedOn: "2026-08-31", ...calibration }),
    instrument: row(2, {
      tag: "LT-1",
      rangeLower: 0,
      rangeUpper: 100,
      distanceUnit: "mm",
      signalLower: 4,
      signalUpper: 20,
      signalUnit: "mA",
      tolerance: 1,
      toleranceBasis: "distance",
      ...instrument,
    }),
    readings: readings.map((of, index) => row(index + 2, of)),
    standards: [],
    outputs: [],
    trips: [],
    loopChecks: [],
    controllerLimits: [],
    candidates: [],
    files: [],
  });
}

test("12.16 mA at 50 mm within ±1 mm passes as found", () => {
  const record = assembleRecord(
    {
      calibration: { row: { calibration: "C-1", tag: "LT-1" }, file: "calibrations.csv", line: 2, cells: {} },
      instrument: {
        row: {
          tag: "LT-1",
          rangeLower: 0,
          rangeUpper: 100,
          distanceUnit: "mm",
          signalLower: 4,
          signalUpper: 20,
          signalUnit: "mA",
          tolerance: 1,
          toleranceBasis: "distance",
        },
        file: "instruments.csv",
        line: 2,
        cells: {},
      },
      readings: [
        {
          row: { calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.16 },
          file: "readings.csv",
          line: 2,
          cells: { reference: "50", signal: "12.16" },
        },
      ],
      standards: [],
      outputs: [],
      trips: [],
      loopChecks: [],
      controllerLimits: [],
      candidates: [],
      files: [],
    },
    { softwareVersion: "0.1.0", digests: new Map(), warnings: [] },
  );
  expect(record.phases.asFound?.verdict).toBe("pass");
  expect(recordSchema.parse(record)).toEqual(record);
});

test("each phase has its own readings, and one that was not taken is absent", () => {
  const asLeft = reading(50, { phase: "as_left", signal: 12 });
  const both = assembleRecord(rowsOf({ readings: [asLeft, reading(50, { signal: 13 }), asLeft] }), context).phases;
  expect(both.asFound?.readings.map(({ row: line }) => line)).toEqual([3]);
  expect(both.asLeft?.readings.map(({ row: line }) => line)).toEqual([2, 4]);
  expect([both.asFound?.verdict, both.asLeft?.verdict]).toEqual(["fail", "pass"]);
  expect(Object.keys(assembleRecord(rowsOf(), context).phases)).toEqual(["asFound"]);
});

test("a phase that cannot be judged is absent", () => {
  expect(assembleRecord(rowsOf({ readings: [reading(50, { counts: 1 })] }), context).phases).toEqual({});
});

describe("the next due date", () => {
  const agreed = { intervalMonths: 6, intervalAgreedBy: "T. Example" };
  const due = (changes: Changes) => assembleRecord(rowsOf(changes), context).nextDue;
  const bad = reading(50, { signal: 15 });
  const asLeft = reading(50, { phase: "as_left", signal: 12 });
  const asFound = reading(50, { signal: 12 });

  test("stands where somebody agreed to the interval and the loop was left in order", () => {
    const onePoint = { ...agreed, pointsNeeded: 1, endsWithin: 50 };
    const taught = { adjustment: "re-teach" } as const;
    expect(due({ instrument: onePoint, readings: [asFound] })).toBe("2027-02-28");
    expect(due({ instrument: onePoint, readings: [bad, asLeft], calibration: taught })).toBe("2027-02-28");
  });

  test.each<[string, Changes]>([
    ["nobody agreed to the interval", { instrument: { intervalMonths: 6 } }],
    ["there is no interval", { instrument: { intervalAgreedBy: "T. Example" } }],
    ["too little was read to tell", { instrument: agreed, readings: [asFound] }],
    ["the loop fails as found and was not adjusted", { instrument: agreed, readings: [bad] }],
    ["the loop was left outside", { instrument: agreed, readings: [asLeft, { ...bad, phase: "as_left" }] }],
  ])("does not where %s", (_, changes) => {
    expect(due(changes)).toBeUndefined();
  });
});

test("the basis of the figures is the instrument's, else the one that this program follows", () => {
  expect(assembleRecord(rowsOf(), context).figureBasis).toBe(defaultFigureBasis);
  const named = assembleRecord(rowsOf({ instrument: { figureBasis: "house rule 7" } }), context);
  expect(named.figureBasis).toBe("house rule 7");
});

test("a warning is carried with its code, its place and its sentence", () => {
  const problems = new ProblemList();
  problems.add("model/value-unscaled", { file: "readings.csv", line: 3, column: "value" });
  const { warnings } = assembleRecord(rowsOf(), { ...context, warnings: problems.all });
  expect(warnings).toHaveLength(1);
  expect(warnings[0]).toMatchObject({ code: "model/value-unscaled", place: expect.stringContaining("readings.csv:3") });
  expect(warnings[0]?.says).toContain("controller values are given");
});

test("the digest of each file stands beside how it was written; one that is missing is a bug", () => {
  const description = { name: "readings.csv", encoding: "utf-8", delimiter: ",", decimalMark: "point" } as const;
  const file = { ...description, tables: ["readings" as const] };
  const rows = { ...rowsOf(), files: [file] };
  const digest = { sha256: "0".repeat(64), byteLength: 12 };
  const { inputs } = assembleRecord(rows, { ...context, digests: new Map([["readings.csv", digest]]) });
  expect(inputs.files).toEqual([{ ...file, ...digest }]);
  expect(() => assembleRecord(rows, context)).toThrow(new TypeError("assembleRecord: no digest of readings.csv"));
});

describe("the decision rule", () => {
  const prescribed = { decisionRule: "guard band", guardFactor: 0.83, rulePrescribedBy: "A. Example" } as const;

  test("is simple acceptance with a least ratio of 4 where nothing is stated", () => {
    expect(assembleRecord(rowsOf(), context).decisionRule).toEqual({
      name: "simple acceptance",
      guardFactor: 0,
      minimumTestUncertaintyRatio: 4,
    });
  });

  test("is the instrument's, with who prescribed it and when", () => {
    const instrument = { ...prescribed, ruleAgreedOn: "2026-01-20", minimumTur: 3 };
    expect(assembleRecord(rowsOf({ instrument }), context).decisionRule).toEqual({
      name: "guard band",
      guardFactor: 0.83,
      minimumTestUncertaintyRatio: 3,
      prescribedBy: "A. Example",
      agreedOn: "2026-01-20",
    });
  });

  test("of one run is not said to be the instrument's", () => {
    const instrument = { ...prescribed, ruleAgreedOn: "2026-01-20" };
    const { decisionRule } = assembleRecord(rowsOf({ instrument }), {
      ...context,
      ruleOverride: { name: "non-binary guard band" },
    });
    expect(decisionRule).toEqual({
      name: "non-binary guard band",
      guardFactor: 0.83,
      minimumTestUncertaintyRatio: 4,
      prescribedBy: "an option of the command, for this run",
      givenForThisRun: { name: "non-binary guard band" },
    });
  });

  test("a factor of one run stands in the record even where the rule has no use for it", () => {
    const { decisionRule } = assembleRecord(rowsOf(), { ...context, ruleOverride: { guardFactor: 0.5 } });
    expect(decisionRule).toMatchObject({ name: "simple acceptance", guardFactor: 0 });
    expect(decisionRule.givenForThisRun).toEqual({ guardFactor: 0.5 });
    expect(assembleRecord(rowsOf(), context).decisionRule).not.toHaveProperty("givenForThisRun");
  });

  test("decides: 12.16 mA at 50 mm is on the limit of ±1 mm", () => {
    const onLimit = rowsOf({ readings: [reading(50, { signal: 12.16 })] });
    const verdictBy = (name: "simple acceptance" | "guard band" | "non-binary guard band") =>
      assembleRecord(onLimit, { ...context, ruleOverride: { name } }).phases.asFound?.verdict;
    expect(verdictBy("simple acceptance")).toBe("pass");
    // Half a step of 1 mm and of 1 mA: no zone is left.
    expect(verdictBy("guard band")).toBe("cannot be decided");
    expect(verdictBy("non-binary guard band")).toBe("cannot be decided");
  });
});

test("a next due date needs a pass or a conditional pass, not a phase that cannot be decided", () => {
  const instrument = { intervalMonths: 6, intervalAgreedBy: "T. Example" };
  const undecided = assembleRecord(rowsOf({ instrument }), { ...context, ruleOverride: { name: "guard band" } });
  expect(undecided.phases.asFound?.verdict).toBe("cannot be decided");
  expect(undecided.nextDue).toBeUndefined();
});

test("the risk over all such loops stands where the owner states a rate", () => {
  expect(assembleRecord(rowsOf(), context)).not.toHaveProperty("falseAccept");
  const { falseAccept } = assembleRecord(rowsOf({ instrument: { inToleranceRate: 95 } }), context);
  expect(falseAccept).toMatchObject({ inToleranceRate: 95, guardMultiplier: 1 });
});

describe("drawing", () => {
  const description = { name: "readings.csv", encoding: "utf-8", delimiter: ",", decimalMark: "point" } as const;
  const file = { ...description, tables: ["readings" as const] };
  const rows = { ...rowsOf(), files: [file] };
  const drawn = (sha256: string) =>
    assembleRecord(rows, {
      ...context,
      digests: new Map([["readings.csv", { sha256, byteLength: 12 }]]),
      monteCarloDraws: 250_000,
    });

  test("the same tables draw the same numbers, other tables others, and the seed is in the record", () => {
    const [first, again, other] = [drawn("0".repeat(64)), drawn("0".repeat(64)), drawn("1".repeat(64))];
    expect(again).toEqual(first);
    expect(first.monteCarloSeed).toMatch(/^[0-9a-f]{64}$/u);
    expect(first.monteCarloDraws).toBe(250_000);
    expect(other.monteCarloSeed).not.toBe(first.monteCarloSeed);
    const halfWidth = (record: typeof first) => record.phases.asFound?.points[0]?.monteCarlo?.halfWidth;
    expect(halfWidth(first)).toBeGreaterThan(0);
    expect(halfWidth(other)).not.toBe(halfWidth(first));
    expect(recordSchema.parse(first)).toEqual(first);
  });

  test("is not done where nobody asked", () => {
    const record = assembleRecord(rowsOf(), context);
    expect(record).not.toHaveProperty("monteCarloSeed");
    expect(record).not.toHaveProperty("monteCarloDraws");
    expect(record.phases.asFound?.points[0]).not.toHaveProperty("monteCarlo");
  });
});
