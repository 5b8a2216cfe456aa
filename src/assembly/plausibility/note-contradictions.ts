import type { CalibrationRows } from "../../model/calibration-case.ts";
import { placeOfRow } from "../../problems/place-of-row.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { withDecimalMark } from "../../units/decimal-mark.ts";
import { judgeLoopChecks } from "../../verdict/loop-check/judge-loop-checks.ts";

/**
 * Notes each row of a loop check that says pass while its number, or another table, says otherwise.
 *
 * @param rows of one calibration
 * @param problems list that it goes to
 * Source: `judgeLoopChecks`.
 * @example toldBy((_, problems) => noteContradictions(spoiledRows, problems)) // []
 */
export function noteContradictions(
  { instrument, calibration, outputs, loopChecks }: CalibrationRows,
  problems: ProblemList,
): void {
  const { findings } = withDecimalMark(instrument.row.decimalMark, () =>
    judgeLoopChecks(
      loopChecks.map(({ row }) => row),
      { instrument: instrument.row, calibration: calibration.row, outputs: outputs.map(({ row }) => row) },
    ),
  );
  for (const [index, { check, outside, isContradiction }] of findings.entries()) {
    const source = loopChecks[index];
    if (!isContradiction || source === undefined) continue;
    problems.add("verdict/loop-check-contradiction", placeOfRow(source, "result"), {
      read: source.cells.result,
      values: { item: check.item, outside: outside.join("; ") },
      belongsTo: { calibration: check.calibration },
    });
  }
}
