import { expect, test } from "vitest";
import { assembleSwitching } from "../../src/assembly/assemble-switching.ts";
import { fourCycles, switchingRecord, switchingRows } from "../record/sample-switching.ts";

const q2 = { ...fourCycles[0], output: "Q2" };

test("a tag without outputs has no such part", () => {
  expect(assembleSwitching(switchingRecord(), { ...switchingRows(), outputs: [] })).toEqual({});
});

test("each output has its own trips, each phase too, and one that was not tripped is there without phases", () => {
  const trips = [...fourCycles, { ...fourCycles[0], phase: "as_left" as const }, q2];
  const rows = switchingRows({ trips });
  const [q1] = rows.outputs;
  if (q1 === undefined) throw new RangeError("no output");
  const named = (output: string) => ({ ...q1, row: { ...q1.row, output } });
  const outputs = [q1, named("Q2"), named("Q3")];
  const { switching = [] } = assembleSwitching(switchingRecord(), { ...rows, outputs });
  const counts = switching.map(({ output, phases }) => [
    output.output,
    phases.asFound?.trips.length,
    phases.asLeft?.trips.length,
  ]);
  expect(counts).toEqual([
    ["Q1", 8, 1],
    ["Q2", 1, undefined],
    ["Q3", undefined, undefined],
  ]);
  expect(switching[2]?.phases).toEqual({});
});

test("the verdict of the phase is that of its readings, whatever the output does", () => {
  const record = switchingRecord({ output: { setPoint: 150 } });
  expect(record.switching?.[0]?.phases.asFound?.statement).toBe("fail");
  expect(record.phases.asFound?.verdict).toBe("pass");
});

test("the trips stand in the record as they were typed, so that it can be rebuilt from itself", () => {
  const { trips } = switchingRecord().inputs.rows;
  expect(trips).toHaveLength(8);
  expect(trips?.[2]).toEqual({ file: "table.csv", line: 4, cells: { reference: "99.9" } });
  expect(switchingRecord({ trips: [] }).inputs.rows).not.toHaveProperty("trips");
});

test("decimals are those that were typed, by the decimal mark of the file", () => {
  const rows = switchingRows();
  const description = { name: "table.csv", encoding: "utf-8", delimiter: ";", decimalMark: "comma" } as const;
  const file = { ...description, tables: ["trips" as const] };
  const trips = rows.trips.map((trip) => ({ ...trip, cells: { reference: "100,25" } }));
  const { switching } = assembleSwitching(switchingRecord(), { ...rows, trips, files: [file] });
  expect(switching?.[0]?.phases.asFound?.decimals).toBe(2);
});
