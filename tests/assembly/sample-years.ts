import type { YearRecord } from "../../src/assembly/years/over-the-years.ts";
import type { Statement } from "../../src/record/record-schema.ts";
import type { PhaseSummary } from "../../src/record/record-summary-schema.ts";

/** A phase of an invented loop of 0 to 1000 mm, tolerance ±5 mm, with the errors at 0, 500 and 1000 mm; U is 0.4 mm. */
export function yearPhase(errors: readonly number[], statement: Statement = "pass"): PhaseSummary {
  const [lower = 0, , upper = 0] = errors;
  return {
    statement,
    outputs: null,
    worst: null,
    worstUncertainty: 0.4,
    zeroError: lower / 10,
    spanError: (upper - lower) / 10,
    points: errors.map((errorDistance, index) => ({
      point: 500 * index,
      errorDistance,
      expandedUncertainty: 0.4,
      toleranceLow: -5,
      toleranceHigh: 5,
      statement,
    })),
  };
}

/** A record of that loop, found so on a day; `more` says what is otherwise. */
export function yearRecord(
  performedOn: string | null,
  found: readonly number[] | PhaseSummary | null,
  more: Partial<YearRecord> = {},
): YearRecord {
  return {
    calibration: `C-${performedOn?.slice(0, 7) ?? "?"}`,
    revision: 1,
    performedOn,
    distanceUnit: "mm",
    rangeLower: 0,
    rangeUpper: 1000,
    serial: null,
    pointsOf: "sensor",
    adjustment: "none",
    asFound: found === null ? null : "points" in found ? found : yearPhase(found),
    asLeft: null,
    ...more,
  };
}

/** Five years without a touch after a re-teach: about half a millimetre a year at 500 mm, less elsewhere. */
export const steadyYears: readonly YearRecord[] = [
  yearRecord("2020-03-02", [3.4, 4.4, 2.2], { adjustment: "re-teach", asLeft: yearPhase([0.1, 0.2, -0.1]) }),
  yearRecord("2021-03-01", [0.2, 0.8, 0.1]),
  yearRecord("2022-03-07", [0.4, 1.1, 0]),
  yearRecord("2023-03-06", [0.3, 1.8, 0.2]),
  yearRecord("2024-03-04", [0.5, 2.1, 0.1]),
];
