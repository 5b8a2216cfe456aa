import { spanOf } from "../../record/range.ts";
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
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { riskWords } from "../texts/decision-texts.ts";

type PointsTableProps = {
  title: string;
  record: CalibrationRecord;
  points: readonly JudgedPointRecord[];
  style: NumberStyle;
};

/** Every test point: error and U of its worse direction, the limits there, the risk, the statement. */
export function PointsTable({ title, record, points, style }: PointsTableProps) {
  return (
    <DataTable
      label={title}
      caption={title}
      kind="plain is-wide"
      columns={pointColumns(record, style)}
      rows={points}
      classOf={({ statement }) => (statement === "pass" ? "" : "outside")}
    />
  );
}

function pointColumns(record: CalibrationRecord, style: NumberStyle): readonly Column<JudgedPointRecord>[] {
  const unit = record.instrument.distanceUnit;
  return [
    { heading: "At", unit, isRowHeader: true, text: ({ point }) => writePlain(Number(point.toPrecision(6))) },
    { heading: "Direction", text: ({ direction }) => direction },
    {
      ...{ heading: "Error ± U", unit, kind: "decimal" },
      text: ({ errorDistance, expandedUncertainty }) => withUncertainty(errorDistance, expandedUncertainty),
    },
    {
      heading: "Error ± U",
      unit: "% of span",
      kind: "decimal",
      text: (point) => percentWithUncertainty(record, point),
    },
    {
      ...{ heading: "Tolerance", unit, kind: "number" },
      text: ({ toleranceLow, toleranceHigh }) => limits(toleranceLow, toleranceHigh, style),
    },
    {
      ...{ heading: "Acceptance limits", unit, kind: "number" },
      text: ({ acceptanceLow, acceptanceHigh }) => limits(acceptanceLow, acceptanceHigh, style),
    },
    { heading: "k", kind: "number", text: ({ coverageFactor }) => writeFixed(coverageFactor, 2) },
    {
      ...{ heading: "Test uncertainty ratio", kind: "number" },
      text: ({ testUncertaintyRatio }) => writeSignificant(testUncertaintyRatio, 2),
    },
    { heading: "Risk", kind: "number", text: ({ specificRisk }) => riskWords(specificRisk) },
    {
      heading: "Statement",
      cell: (point) => (
        <>
          {point.statement}
          {closeCall(point)}
        </>
      ),
    },
  ];
}

function withUncertainty(error: number, expandedUncertainty: number): string {
  const { value, uncertainty } = writeWithUncertainty(error, expandedUncertainty);
  return `${error > 0 ? "+" : ""}${value} ± ${uncertainty}`;
}

function percentWithUncertainty({ instrument }: CalibrationRecord, point: JudgedPointRecord): string {
  const percentPerDistance = 100 / spanOf(instrument);
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
  if (writeFixed(Math.abs(error), decimals) !== writeFixed(Math.abs(limit), decimals)) return null;
  const relation = Math.abs(error) > Math.abs(limit) ? "beyond" : "within";
  return (
    <span class="where">
      {writeSigned(error, decimals + 3)} {relation} {writeSigned(limit, decimals + 3)}
    </span>
  );
}
