import { expect, test } from "vitest";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { checkWorkbook } from "../../src/workbook/check-workbook.ts";
import { checkContext } from "../../src/workbook/checks/check-context.ts";
import { mostReadings } from "../../src/workbook/checks/reading-count.ts";
import { readTables } from "../../src/workbook/read-tables.ts";
import { RowsByOwner } from "../../src/workbook/rows-by-owner.ts";
import type { DraftRow } from "../../src/workbook/table-row.ts";
import { heldOf } from "../held-objects.ts";
import { checked, filesOf, smallestWorkbook } from "./smallest-workbook.ts";

const readingsOfOne = 66;

/** Checks calibrations of 66 readings that are made when they are asked for, and counts those that are held when the last one is asked for. */
async function heldAtOnce(calibrations: number, readings = readingsOfOne) {
  const problems = new ProblemList();
  const stopped = new Set<DraftRow>();
  const tables = await readTables(filesOf(smallestWorkbook), problems);
  const drafts = {
    ...{ instruments: [], outputs: [], standards: [], calibrations: [], trips: [] },
    ...{ loop_checks: [], controller_limits: [], candidates: [] },
  };
  const context = checkContext({ tables, drafts, stopped, today: "2026-11-25", firstLook: false, problems });
  const rows = new RowsByOwner();
  for (let place = 0; place < calibrations * readings; place += 1) rows.add(`C-${place % calibrations}`, place);
  class Made {
    constructor(readonly place: number) {}
  }
  let made = 0;
  let held = 0;
  const read = (place: number) => {
    made += 1;
    if (made === calibrations * readings) held = heldOf(Made);
    const cells = { calibration: `C-${place % calibrations}`, signal: "4" };
    const draft: DraftRow<"readings"> = {
      row: { ...cells, signal: 4, reference: place },
      file: "r.csv",
      line: place,
      cells,
    };
    return { draft: Object.assign(new Made(place), draft), isStopped: false };
  };
  const { kept, ofChecks } = checkWorkbook({ context, stopped, readings: { rows, read } });
  return { held, made, kept: kept.count, codes: ofChecks.all.map(({ code }) => code) };
}

test("the readings of one calibration are held at once, whatever their number, and each is read once", async () => {
  const [few, many] = [await heldAtOnce(21), await heldAtOnce(201)];
  expect([few.made, many.made]).toEqual([21 * readingsOfOne, 201 * readingsOfOne]);
  expect(few.held).toBeGreaterThanOrEqual(readingsOfOne - 1);
  // Those of the calibration before may not yet be let go.
  expect(many.held).toBeLessThanOrEqual(2 * readingsOfOne);
});

test("of a calibration with too many readings not even those of one are held", async () => {
  const { held, made, kept, codes } = await heldAtOnce(1, 4 * mostReadings);
  expect([made, kept]).toEqual([4 * mostReadings, 0]);
  expect(held).toBeLessThan(10);
  expect(codes).toContain("model/too-many-readings");
});

/** Two calibrations whose rows stand in turn, each with something wrong in it. */
const inTurn = {
  ...smallestWorkbook,
  "calibrations.csv": `${smallestWorkbook["calibrations.csv"]}C-2,LT-1,2026-03-05,T. Example,GB-1\n`,
  "readings.csv": `calibration,phase,direction,reference,signal
C-2,as_found,rising,0,4.01
C-1,as_found,rising,0,four
C-2,as_found,rising,25,eight
C-1,as_found,rising,25,
C-2,as_found,rising,50,
C-1,as_found,rising,500,12.01
C-2,as_found,rising,600,16.01
`,
};

test("what is told of rows comes in their order, and what is told of calibrations one after the other", async () => {
  const { problems } = await checked(inTurn);
  const told = problems.map(({ code, place }) => `${place.line} ${code}`);
  expect(told).toEqual([
    ...["3 tables/cell-not-number", "4 tables/cell-not-number"],
    ...["5 model/nothing-measured", "6 model/nothing-measured"],
    ...["8 model/reading-outside-range", "7 model/reading-outside-range"],
    ...["2 model/few-points", "3 model/few-points"],
  ]);
});
