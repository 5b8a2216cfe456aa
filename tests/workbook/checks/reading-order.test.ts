import { expect, test } from "vitest";
import { withFile } from "../smallest-workbook.ts";
import { told } from "./told.ts";

type Row = readonly [
  direction: string,
  reference: number,
  cycle?: number | string,
  point?: number | string,
  rejected?: string,
];

function readings(...rows: readonly Row[]) {
  const lines = rows.map(([direction, reference, cycle = 1, point = "", rejected = ""]) =>
    ["C-1", "as_found", direction, reference, 4 + reference / 6.25, cycle, point, rejected].join(","),
  );
  return told(
    withFile(
      "readings.csv",
      `calibration,phase,direction,reference,signal,cycle,point,rejected\n${lines.join("\n")}\n`,
    ),
  );
}
const up: readonly Row[] = [0, 25, 50, 75, 100].map((reference) => ["rising", reference]);
const down: readonly Row[] = [100, 75, 50, 25, 0].map((reference) => ["falling", reference]);
const inCycle = (rows: readonly Row[], cycle: number | string): readonly Row[] =>
  rows.map(([direction, reference]) => [direction, reference, cycle]);

test("out and back, again and again, is in order, whether the cycles are numbered or not", async () => {
  expect(await readings(...up, ...down)).toEqual([]);
  expect(await readings(...up, ...down, ...inCycle(up, 2), ...inCycle(down, 2))).toEqual([]);
  expect(await readings(...inCycle([...up, ...down, ...up, ...down], ""))).toEqual([]);
});

test("rising readings that fall are told once a run, at the first that does", async () => {
  expect(await readings(...down.map(([, reference]): Row => ["rising", reference]))).toEqual([
    "model/readings-out-of-order readings:3:reference",
  ]);
});

test("falling readings that rise are told, in each cycle", async () => {
  const wrong = up.map(([, reference]): Row => ["falling", reference]);
  expect(await readings(...wrong, ...inCycle(wrong, 2))).toEqual([
    "model/readings-out-of-order readings:3:reference",
    "model/readings-out-of-order readings:8:reference",
  ]);
});

test("readings of one named point may scatter, and those at one place may repeat", async () => {
  const points = [0, 25, 50, 75, 100].flatMap((point): Row[] => [
    ["rising", point + 0.1, 1, point],
    ["rising", point - 0.1, 1, point],
  ]);
  expect(await readings(...points)).toEqual([]);
  expect(await readings(...up.flatMap((row) => [row, row]))).toEqual([]);
});

test("a rejected reading does not count", async () => {
  expect(await readings(...up.slice(0, 4), ["rising", 10, 1, "", "slipped"], ["rising", 100])).toEqual([]);
});
