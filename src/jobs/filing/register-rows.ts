import type { Register, RegisterRow } from "../../record/register-form.ts";

const header = [
  "tag",
  "description",
  "location",
  "criticality",
  "calibration",
  "revision",
  "performed_on",
  "as_found",
  "as_found_error_percent_span",
  "as_left",
  "as_left_error_percent_span",
  "drift_percent_span_per_year",
  "state",
  "due_on",
  "days_left",
  "recommendation",
  "page",
] as const;

/** A register as rows of a table, the first one naming the columns; what is not known is empty. */
export function registerRows({ rows }: Register): readonly (readonly (string | number)[])[] {
  return [header, ...rows.map(cellsOf)];
}

function cellsOf(row: RegisterRow): readonly (string | number)[] {
  return [
    row.tag,
    row.description ?? "",
    row.location ?? "",
    row.criticality ?? "",
    row.calibration,
    row.revision,
    row.performedOn ?? "",
    row.asFound ?? "",
    sixDigits(row.worstAsFound?.errorPercentSpan),
    row.asLeft ?? "",
    sixDigits(row.worstAsLeft?.errorPercentSpan),
    sixDigits("notDetermined" in row.drift ? undefined : row.drift.percentSpanPerYear),
    row.due.state,
    row.due.on ?? "",
    row.due.days ?? "",
    row.recommendation ?? "",
    row.path,
  ];
}

/** Far more than was measured, without the digits that only the computer made. */
function sixDigits(value: number | undefined): number | "" {
  return value === undefined ? "" : Number(value.toPrecision(6));
}
