import type { CalibrationRecord, JudgedPointRecord } from "../../record/record-schema.ts";
import { writeFixed, writePlain, writeSignificant } from "../../units/write-number.ts";
import { DecimalCell } from "./decimal-cell.tsx";

/** What has a budget: a test point, a set point. */
type Budgeted = Pick<JudgedPointRecord, "budget" | "coverageFactor" | "expandedUncertainty" | "monteCarlo">;

/** "1650 mm, falling, U = 2.1 mm". */
export function budgetTitle({ instrument }: CalibrationRecord, point: JudgedPointRecord): string {
  const at = writePlain(Number(point.point.toPrecision(6)));
  return `${at} ${instrument.distanceUnit}, ${point.direction}, U = ${writeSignificant(point.expandedUncertainty, 2)} ${instrument.distanceUnit}`;
}

/** The budget of one test point, a line a contribution, the sum below, and what it could not take in. */
export function BudgetTable({ record, point, label }: { record: CalibrationRecord; point: Budgeted; label: string }) {
  const unit = record.instrument.distanceUnit;
  const { budget } = point;
  const columns = columnsOf(budget);
  return (
    <section class="wide" aria-label={`Uncertainty budget at ${label}`} tabIndex={0}>
      <table class="plain budget">
        <thead>
          <tr>
            <th scope="col">Contribution</th>
            <th scope="col" class="number">
              Value
            </th>
            <th scope="col">Distribution</th>
            <th scope="col" class="number">
              Divisor
            </th>
            <th scope="col" class="number">
              Sensitivity, {unit} per unit
            </th>
            <th scope="col" class="number">
              Standard uncertainty, {unit}
            </th>
            <th scope="col" class="number">
              Degrees of freedom
            </th>
            <th scope="col" class="number">
              Share
            </th>
          </tr>
        </thead>
        <tbody>
          {budget.lines.map((line) => (
            <Line key={line.source} record={record} line={line} columns={columns} />
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Combined</th>
            <td colSpan={4}>
              k = {writeFixed(point.coverageFactor, 2)} ({budget.coverageBasis},{" "}
              {writePlain(100 * budget.coverageProbability)} %): U = {writeSignificant(point.expandedUncertainty, 2)}{" "}
              {unit}
            </td>
            <DecimalCell text={writeSignificant(budget.combinedUncertainty, 3)} column={columns.uncertainties} />
            <DecimalCell text={degreesWords(budget.effectiveDegreesOfFreedom)} column={columns.degrees} />
            <td />
          </tr>
        </tfoot>
      </table>
      <MonteCarloLine record={record} point={point} />
      {budget.missing.length > 0 && <p class="small">Not in the budget: {budget.missing.join("; ")}.</p>}
    </section>
  );
}

type BudgetLine = Budgeted["budget"]["lines"][number];
type Columns = Readonly<Record<"sensitivities" | "uncertainties" | "degrees", readonly string[]>>;

/** What is written in the columns whose decimal points stand below each other. */
function columnsOf({ lines, combinedUncertainty, effectiveDegreesOfFreedom }: Budgeted["budget"]): Columns {
  const uncertainties = [...lines.map((line) => line.standardUncertainty), combinedUncertainty];
  const degrees = [...lines.map((line) => line.degreesOfFreedom), effectiveDegreesOfFreedom];
  return {
    sensitivities: lines.map(sensitivityOf),
    uncertainties: uncertainties.map((value) => writeSignificant(value, 3)),
    degrees: degrees.map(degreesWords),
  };
}

function Line({ record, line, columns }: { record: CalibrationRecord; line: BudgetLine; columns: Columns }) {
  const unit = line.unit === "value" ? (record.instrument.valueUnit ?? "") : line.unit;
  return (
    <tr>
      <th scope="row">{line.source}</th>
      <td class="number">
        {writeSignificant(line.value, 3)} {unit}
      </td>
      <td>{line.distribution}</td>
      <td class="number">{writeSignificant(line.divisor, 3)}</td>
      <DecimalCell text={sensitivityOf(line)} column={columns.sensitivities} />
      <DecimalCell text={writeSignificant(line.standardUncertainty, 3)} column={columns.uncertainties} />
      <DecimalCell text={degreesWords(line.degreesOfFreedom)} column={columns.degrees} />
      <td class="number">{writeFixed(100 * line.share, 0)} %</td>
    </tr>
  );
}

function sensitivityOf({ sensitivity }: BudgetLine): string {
  return writeSignificant(sensitivity, 4);
}

/** The same budget by drawing, beside what it gave. */
function MonteCarloLine({ record, point }: { record: CalibrationRecord; point: Budgeted }) {
  if (point.monteCarlo === undefined) return null;
  const { draws, halfWidth, standardUncertainty, agrees, reason } = point.monteCarlo;
  const unit = record.instrument.distanceUnit;
  return (
    <p class="small">
      By drawing (JCGM 101:2008, {writePlain(draws)} draws): standard uncertainty{" "}
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
