import { expect, test } from "vitest";
import { assembleOverTheYears } from "../../../src/assembly/years/assemble-over-the-years.ts";
import { overTheYears } from "../../../src/assembly/years/over-the-years.ts";
import type { Instrument } from "../../../src/model/instrument.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { recordSummary } from "../../../src/record/record-summary.ts";
import { demoRecord } from "../../report/demo-records.ts";

const { overTheYears: _, history: __, ...record } = demoRecord("LT-310");
const before = { ...recordSummary(sealRecord(record)), calibration: "C-2025-015", performedOn: "2025-09-17" };

test("without a folder of filed records there is no such part", () => {
  expect(assembleOverTheYears(record)).toEqual({});
});

test("the record at hand is the last point of its history", () => {
  const { overTheYears: found } = assembleOverTheYears({ ...record, history: [before] });
  expect(found?.records.map(({ calibration }) => calibration)).toEqual(["C-2025-015", record.calibration.calibration]);
  expect(found).toEqual(
    overTheYears([before, recordSummary(sealRecord(record))], {
      intervalMonths: record.instrument.intervalMonths,
      instrument: record.instrument,
    }),
  );
});

test("what is allowed at the ends of the range is what its row states, with a kink between the test points too", () => {
  const instrument: Instrument = {
    ...record.instrument,
    ...({ tolerance: 0.5, toleranceBasis: "percent of reading", toleranceMinus: undefined } as const),
    ...({ secondTolerance: 6, secondToleranceBasis: "distance", toleranceCombined: "greater" } as const),
  };
  const { overTheYears: found } = assembleOverTheYears({ ...record, instrument, history: [before] });
  const ends = found?.places.filter(({ kind }) => kind !== "test point") ?? [];
  expect(ends.length).toBe(2);
  for (const { distance, toleranceHigh } of ends) expect(toleranceHigh).toBe(Math.max(0.005 * distance, 6));
});

test("with an empty folder it is alone, and that is not enough", () => {
  const { overTheYears: found } = assembleOverTheYears({ ...record, history: [] });
  expect(found?.records).toHaveLength(1);
  expect(found?.places[0]?.notDetermined.drift).toMatch(/^not enough: one record/u);
});
