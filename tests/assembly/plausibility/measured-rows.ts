import { type MeasuredRows, measuredPhase, tellOf } from "../../../src/assembly/plausibility/measured-phase.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { fullWorkbook, judged } from "../../workbook/full-workbook.ts";
import type { Texts } from "../../workbook/smallest-workbook.ts";

/** The rows of the one calibration of a workbook, as the checks of its numbers take them. */
export async function measuredRows(texts: Texts = fullWorkbook): Promise<MeasuredRows> {
  const [found] = (await judged(texts)).cases;
  if (found === undefined) throw new Error("measuredRows: the calibration is stopped");
  return { ...found, markOf: () => () => "point" };
}

/** One phase of it, and where its problems go. */
export async function phaseOf(texts: Texts = fullWorkbook, phase: "as_found" | "as_left" = "as_found") {
  const rows = await measuredRows(texts);
  const problems = new ProblemList();
  const measured = measuredPhase(rows, phase, tellOf("C-1", problems));
  if (measured === undefined) throw new Error(`phaseOf: nothing ${phase}`);
  return { rows, measured, told: () => problems.all.map(({ code, place }) => `${code} ${place.line}`), problems };
}
