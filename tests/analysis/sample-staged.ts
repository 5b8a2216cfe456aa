import type { StageReading } from "../../src/analysis/readings/repeated-readings.ts";
import type { Reading } from "../../src/model/calibration.ts";
import type { Direction } from "../../src/model/calibration-words.ts";
import { frozen } from "../charts/frozen.ts";

/** Cycles out and back over points of 0 to 100 %, a reading a minute; the error of each is asked for. */
export function outAndBack(
  points: readonly number[],
  cycles: number,
  errorAt: (reading: Omit<StageReading, "error">) => number,
): readonly StageReading[] {
  const runs = Array.from({ length: cycles }, (_, cycle) =>
    (["rising", "falling"] as const).flatMap((direction: Direction) =>
      (direction === "rising" ? points : points.toReversed()).map((point) => ({ cycle: cycle + 1, direction, point })),
    ),
  ).flat();
  return frozen(
    runs.map((run, index) => {
      const reading = { ...run, index, input: run.point, elapsed: index };
      return { ...reading, error: errorAt(reading) };
    }),
  );
}

/** The readings of 0 to 100 mm in six steps, out and back, as a sheet holds them. */
export function sheetOf(
  cycles: number,
  read: (reference: number, place: number) => Partial<Reading>,
): readonly Reading[] {
  return outAndBack([0, 20, 40, 60, 80, 100], cycles, () => 0).map(({ point, direction, cycle, index }) => ({
    calibration: "C-1",
    phase: "as_found",
    point,
    reference: point,
    direction,
    cycle,
    ...read(point, index),
  }));
}
