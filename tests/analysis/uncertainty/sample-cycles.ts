import { directions } from "../../../src/model/calibration-words.ts";
import { frozen } from "../../charts/frozen.ts";
import { curveReading } from "../sample-loop.ts";

const errors = [
  [11, 23, 4, -8, 15, -3, 9, 2],
  [41, 38, 22, 30, 29, 47, 33, 26],
  [-17, -9, -30, -22, -14, -28, -12, -33],
];

const nearly = [13, 19, 9, -12, 10, 1, 4, 6];

/** Four points out and back in three cycles that differ by far more than they scatter, invented; percent of span. */
export const shiftedCycles = frozen(readingsOf(errors));

/** Two cycles that are not shown to differ, F = 0.056 by R, invented. */
export const agreeingCycles = frozen(readingsOf([...errors.slice(0, 1), nearly]));

function readingsOf(rows: readonly (readonly number[])[]) {
  return rows.flatMap((row, cycle) =>
    row.map((hundredths, place) =>
      curveReading([0, 25, 50, 100][place % 4]!, hundredths / 100, directions[place < 4 ? 0 : 1], cycle + 1),
    ),
  );
}
