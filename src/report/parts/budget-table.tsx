import type { CalibrationRecord, JudgedPointRecord } from "../../record/record-schema.ts";
import { writeFixed, writeSignificant } from "../../units/write-number.ts";
import { plainNumber } from "../number-style.ts";

/** What has a budget: a test point, a set point. */
type Budgeted = Pick<JudgedPointRecord, "budget" | "coverageFactor" | "expandedUncertainty" | "monteCarlo">;

/** "1650 mm, falling, U = 2.1 mm". */
export function budgetTitle({ instrument }: CalibrationRecord, point: JudgedPointRecord): string {
  const at = plainNumber(Number(point.point.toPrecision(6)));
  return `${at} ${instrument.distanceUnit}, ${point.direction}, U = ${writeSignificant(point.expandedUncertainty, 2)} ${instrument.distanceUnit}`;
}

/** The budget of one test point, a line a contribution, the sum below, and what it could not take in. */
export function BudgetTable({ record, point, label }: { record: CalibrationRecord; point: Budgeted; label: string }) {
  const unit = record.instrument.distanceUnit;
  const { budget } = point;
  return (
    <section class="wide" aria-label={`Uncertainty budget at ${label}`} tabIndex={0}>
      <table class="plain budget">
        <thead>
          <tr>
            <th scope="col">Contribution</th>
            <th scope="col">Value</th>
            <th scope="col">Distribution</th>
            <th scope="col">Divisor</th>
            <th scope="col">Sensitivity, {unit} per unit</th>
            <th scope="col">Standard uncertainty, {unit}</th>
            <th scope="col">Degrees of freedom</th>
            <th scope="col">Share</th>
          </tr>
        </thead>
        <tbody>
          {budget.lines.map((line) => (
            <tr key={line.source}>
              <th scope="row">{line.source}</th>
              <td class="number">
                {writeSignificant(line.value, 3)} {line.unit}
              </td>
              <td>{line.distribution}</td>
              <td class="number">{writeSignificant(line.divisor, 3)}</td>
              <td class="number">{writeSignificant(line.sensitivity, 4)}</td>
              <td class="number">{writeSignificant(line.standardUncertainty, 3)}</td>
              <td class="number">{degreesWords(line.degreesOfFreedom)}</td>
              <td class="number">{writeFixed(100 * line.share, 0)} %</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Combined</th>
            <td colSpan={4}>
              k = {writeFixed(point.coverageFactor, 2)} ({budget.coverageBasis},{" "}
              {plainNumber(100 * budget.coverageProbability)} %): U = {writeSignificant(point.expandedUncertainty, 2)}{" "}
              {unit}
            </td>
            <td class="number">{writeSignificant(budget.combinedUncertainty, 3)}</td>
            <td class="number">{degreesWords(budget.effectiveDegreesOfFreedom)}</td>
            <td />
          </tr>
        </tfoot>
      </table>
      <MonteCarloLine record={record} point={point} />
      {budget.missing.length > 0 && <p class="small">Not in the budget: {budget.missing.join("; ")}.</p>}
    </section>
  );
}

/** The same budget by drawing, beside what it gave. */
function MonteCarloLine({ record, point }: { record: CalibrationRecord; point: Budgeted }) {
  if (point.monteCarlo === undefined) return null;
  const { draws, halfWidth, standardUncertainty, agrees, reason } = point.monteCarlo;
  const unit = record.instrument.distanceUnit;
  return (
    <p class="small">
      By drawing (JCGM 101:2008, {plainNumber(draws)} draws): standard uncertainty{" "}
      {writeSignificant(standardUncertainty, 3)} {unit}, half of the shortest interval {writeSignificant(halfWidth, 3)}{" "}
      {unit}; {agrees ? "agrees with the budget." : `does not agree: ${reason}.`}
    </p>
  );
}

function degreesWords(degreesOfFreedom: number | null): string {
  if (degreesOfFreedom === null) return "unlimited";
  return degreesOfFreedom > 1000
    ? "over 1000"
    : writeFixed(degreesOfFreedom, Number.isInteger(degreesOfFreedom) ? 0 : 1);
}
