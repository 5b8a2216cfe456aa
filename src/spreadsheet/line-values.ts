import type { PhaseRecord } from "../record/record-schema.ts";
import type { AddFigure } from "./add-figure.ts";

/** What no formula of a few cells gives: values of the record, and each says so. */
export function lineValues(add: AddFigure, { zeroError, spanError, uncertainLine }: PhaseRecord): void {
  const put = (label: string, value: number | null | undefined, unit: string) => {
    if (value !== null && value !== undefined) add(label, value, unit, null, "value of the record");
  };
  put("combined standard uncertainty of the zero error", zeroError?.combinedStandardUncertainty, "% of span");
  put("combined standard uncertainty of the span error", spanError?.combinedStandardUncertainty, "% of span");
  if (uncertainLine === null) return;
  const { method, slope, intercept, slopeStandardUncertainty, interceptStandardUncertainty } = uncertainLine;
  put(`line, ${method}: slope`, slope, "output per unit of distance");
  put("its standard uncertainty", slopeStandardUncertainty, "");
  put(`line, ${method}: intercept`, intercept, "output");
  put("its standard uncertainty", interceptStandardUncertainty, "");
  put("chi-squared of the line", uncertainLine.chiSquared, `limit ${uncertainLine.chiSquaredLimit}`);
}
