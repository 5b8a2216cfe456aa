import type { CalibrationRecord, JudgedPointRecord } from "../../record/record-schema.ts";
import { writeWithUncertainty } from "../../units/round-to-uncertainty.ts";
import {
  decimalsForSignificant,
  writeFixed,
  writePlain,
  writeSigned,
  writeSignificant,
} from "../../units/write-number.ts";
import type { NumberStyle } from "../style/number-style.ts";
import { riskWords } from "../texts/decision-texts.ts";
import { DecimalCell } from "./decimal-cell.tsx";

type PointsTableProps = {
  title: string;
  record: CalibrationRecord;
  points: readonly JudgedPointRecord[];
  style: NumberStyle;
};

/** Every test point: error and U of its worse direction, the limits there, the risk, the statement. */
export function PointsTable({ title, record, points, style }: PointsTableProps) {
  const unit = record.instrument.distanceUnit;
  const errors = points.map((point) => withUncertainty(point.errorDistance, point.expandedUncertainty));
  const percents = points.map((point) => percentWithUncertainty(record, point));
  return (
    <section class="wide" aria-label={title} tabIndex={0}>
      <table class="plain">
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">At, {unit}</th>
            <th scope="col">Direction</th>
            <th scope="col" class="number">
              Error ± U, {unit}
            </th>
            <th scope="col" class="number">
              Error ± U, % of span
            </th>
            <th scope="col" class="number">
              Tolerance, {unit}
            </th>
            <th scope="col" class="number">
              Acceptance limits, {unit}
            </th>
            <th scope="col" class="number">
              k
            </th>
            <th scope="col" class="number">
              Test uncertainty ratio
            </th>
            <th scope="col" class="number">
              Risk
            </th>
            <th scope="col">Statement</th>
          </tr>
        </thead>
        <tbody>
          {points.map((point, index) => (
            <tr key={point.point} class={point.statement === "pass" ? "" : "outside"}>
              <th scope="row">{writePlain(Number(point.point.toPrecision(6)))}</th>
              <td>{point.direction}</td>
              <DecimalCell text={errors[index] ?? ""} column={errors} />
              <DecimalCell text={percents[index] ?? ""} column={percents} />
              <td class="number">{limits(point.toleranceLow, point.toleranceHigh, style)}</td>
              <td class="number">{limits(point.acceptanceLow, point.acceptanceHigh, style)}</td>
              <td class="number">{writeFixed(point.coverageFactor, 2)}</td>
              <td class="number">{writeSignificant(point.testUncertaintyRatio, 2)}</td>
              <td class="number">{riskWords(point.specificRisk)}</td>
              <td>
                {point.statement}
                {closeCall(point)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function withUncertainty(error: number, expandedUncertainty: number): string {
  const { value, uncertainty } = writeWithUncertainty(error, expandedUncertainty);
  return `${error > 0 ? "+" : ""}${value} ± ${uncertainty}`;
}

function percentWithUncertainty({ instrument }: CalibrationRecord, point: JudgedPointRecord): string {
  const percentPerDistance = 100 / (instrument.rangeUpper - instrument.rangeLower);
  return withUncertainty(point.errorPercentSpan, point.expandedUncertainty * percentPerDistance);
}

function limits(low: number | null, high: number | null, style: NumberStyle): string {
  if (low === null || high === null) return "none";
  if (low === -high) return `±${writeFixed(high, style.distance)}`;
  return `${writeFixed(low, style.distance)} / +${writeFixed(high, style.distance)}`;
}

/** Where the printed error and the printed limit look the same, the digits that decided. */
function closeCall(point: JudgedPointRecord) {
  const { errorDistance: error, expandedUncertainty } = point;
  const limit = error < 0 ? point.acceptanceLow : point.acceptanceHigh;
  if (limit === null) return null;
  const decimals = decimalsForSignificant(expandedUncertainty, 2);
  if (Math.abs(error).toFixed(decimals) !== Math.abs(limit).toFixed(decimals)) return null;
  const relation = Math.abs(error) > Math.abs(limit) ? "beyond" : "within";
  return (
    <span class="where">
      {writeSigned(error, decimals + 3)} {relation} {writeSigned(limit, decimals + 3)}
    </span>
  );
}
