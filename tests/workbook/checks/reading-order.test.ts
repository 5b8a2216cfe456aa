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

test("a run whose direction contradicts every step is told once, at its first reading", async () => {
  const wrong = up.map(([, reference]): Row => ["falling", reference]);
  expect(await readings(...down.map(([, reference]): Row => ["rising", reference]))).toEqual([
    "model/direction-contradicted readings:2:direction",
  ]);
  expect(await readings(...wrong, ...inCycle(wrong, 2))).toEqual([
    "model/direction-contradicted readings:2:direction",
    "model/direction-contradicted readings:7:direction",
  ]);
});

test.each([0, 1, 2, 3, 4, 5, 6, 7, 8, 9])(
  "one direction that is wrong is told at its row: reading %i",
  async (place) => {
    const all = [...up, ...down];
    const [direction = "", reference = 0] = all[place] ?? [];
    const other = direction === "rising" ? "falling" : "rising";
    expect(await readings(...all.with(place, [other, reference]))).toEqual([
      `model/direction-contradicted readings:${place + 2}:direction`,
    ]);
  },
);

test("two rows that changed places are told, and no direction is blamed", async () => {
  const [first, second, third, ...rest] = up as readonly [Row, Row, Row, ...Row[]];
  expect(await readings(first, third, second, ...rest)).toEqual(["model/readings-out-of-order readings:4:reference"]);
});

test("a table that is sorted by place says nothing of the directions", async () => {
  const sorted = up.flatMap(([, reference]): Row[] => [
    ["rising", reference],
    ["falling", reference],
  ]);
  expect(await readings(...sorted)).toEqual([]);
});

test("a point that is read twice in a run is told with its first line; readings that all repeat are not", async () => {
  const named = (rows: readonly Row[]) =>
    rows.map(([direction, reference]): Row => [direction, reference, 1, reference]);
  const twice = [...named(up.slice(0, 3)), ["rising", 50.2, 1, 50] as Row, ...named(up.slice(3))];
  expect(await readings(...twice)).toEqual(["model/read-twice readings:5:point"]);
  expect(await readings(...named(up.flatMap((row) => [row, row])))).toEqual([]);
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
