import { Fragment } from "preact";
import type {
  LateCalibration,
  OpenFinding,
  RegisterRow,
  RegisterStandard,
  WorstError,
} from "../../record/register-form.ts";
import { counted } from "../../units/counted.ts";
import type { Column } from "../table/column.ts";
import { driftWords, dueStates, dueWords, forecastWords, worstErrorWords } from "../texts/register-texts.ts";

/** A register: on its page what belongs together stands in one cell, in its CSV each for itself. */
export const registerColumns: readonly Column<RegisterRow>[] = [
  {
    ...{ heading: "Tag", name: "tag", isRowHeader: true, text: ({ tag }) => tag },
    cell: ({ path, tag }) => (
      <a href={path}>
        <bdi>{tag}</bdi>
      </a>
    ),
  },
  {
    ...{ heading: "What and where", name: "description", text: ({ description }) => description ?? "" },
    cell: ({ description }) => description ?? <span class="not-stated">not stated</span>,
    sortBy: ({ description }) => description ?? "",
  },
  { heading: "Location", under: "What and where", name: "location", text: ({ location }) => location ?? "" },
  {
    ...{ heading: "Serial number", under: "What and where", name: "serial", text: ({ serial }) => serial ?? "" },
    cell: ({ serial }) => serial && `serial number ${serial}`,
  },
  { ...onlyInTables("What and where"), name: "procedure", value: ({ procedure }) => procedure ?? "" },
  { ...onlyInTables("What and where"), name: "standards", value: ({ standards }) => standards.join(", ") },
  {
    ...{ heading: "Criticality", under: "Tag", name: "criticality", text: ({ criticality }) => criticality ?? "" },
    cell: ({ criticality }) => (criticality === "safety" ? criticality : null),
  },
  {
    ...{ heading: "Record", under: "Calibrated", name: "calibration", text: ({ calibration }) => calibration },
    cell: ({ calibration, revision }) => `${calibration}, revision ${revision}`,
  },
  { ...onlyInTables("Calibrated"), name: "revision", value: ({ revision }) => revision },
  {
    ...{ heading: "Signed by", under: "Calibrated", name: "signed_by", text: ({ signedBy }) => signedBy.join(", ") },
    cell: ({ signedBy }) => (signedBy.length === 0 ? "nobody signed it" : signedBy.join(", ")),
  },
  { heading: "Fingerprint", under: "Calibrated", name: "fingerprint", text: ({ fingerprint }) => fingerprint },
  {
    ...{ heading: "Calibrated", name: "performed_on", text: ({ performedOn }) => performedOn ?? "" },
    cell: ({ performedOn }) => <Day day={performedOn} />,
    sortBy: ({ performedOn }) => performedOn ?? "",
  },
  {
    ...{ heading: "As found", name: "as_found", text: ({ asFound }) => asFound ?? "" },
    cell: ({ asFound }) => asFound ?? "–",
    sortBy: ({ worstAsFound }) => sizeOf(worstAsFound),
  },
  {
    ...{ heading: "Worst as found", under: "As found", name: "as_found_error_percent_span" },
    value: ({ worstAsFound }) => sixDigits(worstAsFound?.errorPercentSpan),
    cell: ({ worstAsFound, unit }) => <Words text={worstErrorWords(worstAsFound, unit)} />,
  },
  {
    ...{ heading: "Decided", under: "As found", name: "decision", text: ({ decided }) => decided?.decision ?? "" },
    cell: ({ decided }) => decided && `decided${decided.by === null ? "" : ` by ${decided.by}`}: ${decided.decision}`,
  },
  { ...onlyInTables("As found"), name: "decided_by", value: ({ decided }) => decided?.by ?? "" },
  {
    ...{ heading: "As left", name: "as_left", text: ({ asLeft }) => asLeft ?? "" },
    cell: ({ asLeft }) => asLeft ?? "–",
    sortBy: ({ worstAsLeft }) => sizeOf(worstAsLeft),
  },
  {
    ...{ heading: "Worst as left", under: "As left", name: "as_left_error_percent_span" },
    value: ({ worstAsLeft }) => sixDigits(worstAsLeft?.errorPercentSpan),
    cell: ({ worstAsLeft, unit }) => worstAsLeft && <Words text={worstErrorWords(worstAsLeft, unit)} />,
  },
  { ...onlyInTables("State"), name: "overall", text: ({ overall }) => overall ?? "" },
  {
    ...{ heading: "Drift, % of span a year", kind: "number", name: "drift_percent_span_per_year" },
    value: ({ drift }) => sixDigits("notDetermined" in drift ? undefined : drift.percentSpanPerYear),
    cell: ({ drift }) =>
      "notDetermined" in drift ? <span class="not-determined">{driftWords(drift)}</span> : driftWords(drift),
    sortBy: ({ drift }) => ("notDetermined" in drift ? "" : drift.percentSpanPerYear),
  },
  {
    ...{ heading: "Forecast", under: "Next due", name: "forecast", text: forecastWords },
    cell: (row) => ("notDetermined" in row.forecast ? null : `forecast: ${forecastWords(row)}`),
  },
  {
    ...{ heading: "State", name: "state", text: ({ due }) => due.state },
    cell: ({ due: { state } }) => (isGrave(state) ? <strong>{state}</strong> : state),
    sortBy: ({ due }) => dueStates.indexOf(due.state),
  },
  {
    ...{ heading: "Next due", name: "due_on", text: ({ due }) => due.on ?? "" },
    cell: ({ due }) => <Words text={dueWords(due)} />,
    sortBy: ({ due }) => due.on ?? "",
  },
  { ...onlyInTables("Next due"), name: "days_left", value: ({ due }) => due.days ?? "" },
  {
    ...{ heading: "Advised", under: "State", name: "recommendation", text: ({ recommendation: to }) => to ?? "" },
    cell: ({ recommendation }) =>
      recommendation !== null && recommendation !== "leave" ? <Advised work={recommendation} /> : null,
  },
  {
    ...{ heading: "Missing", under: "State", name: "not_complete", text: ({ missing }) => missing.join(", ") },
    cell: ({ due, missing }) => missing.filter((says) => !due.why?.includes(says)).join("; ") || null,
  },
  {
    ...{ heading: "Late", under: "Calibrated", name: "days_late", value: ({ daysLate }) => daysLate ?? "" },
    cell: ({ daysLate }) => daysLate && <strong>{counted(daysLate, "day")} late</strong>,
  },
  { ...onlyInTables("Tag"), name: "page", value: ({ path }) => path },
];

/** A part of what a page says in another cell. */
function onlyInTables(under: string) {
  return { heading: "", under, cell: () => null };
}

function isGrave(state: RegisterRow["due"]["state"]): boolean {
  return state === "overdue" || state === "not in tolerance" || state === "not complete";
}

function sizeOf(worst: WorstError | null): number | "" {
  return worst === null ? "" : Math.abs(worst.errorPercentSpan);
}

/** Far more than was measured, without the digits that only the computer made. */
function sixDigits(value: number | undefined): number | "" {
  return value === undefined ? "" : Number(value.toPrecision(6));
}

function Day({ day }: { day: string | null }) {
  return day === null ? <>day not stated</> : <span class="day">{day}</span>;
}

function Advised({ work }: { work: string }) {
  return (
    <>
      advised: <span class="kept-together">{work}</span>
    </>
  );
}

/** A line is broken before a bracket or behind a comma only. */
function Words({ text }: { text: string }) {
  const parts = text.split(/(?<=,) | (?=\()/u);
  return (
    <>
      {parts.map((part) => (
        <Fragment key={part}>
          <span class="kept-together">{part}</span>{" "}
        </Fragment>
      ))}
    </>
  );
}

/** What was found out of tolerance and is not decided yet. */
export const openFindingColumns: readonly Column<OpenFinding>[] = [
  { heading: "Tag", isRowHeader: true, kind: "day", text: ({ tag }) => tag },
  {
    heading: "Record",
    cell: ({ path, calibration, revision }) => (
      <a href={path}>
        {calibration}, revision {revision}
      </a>
    ),
  },
  { heading: "Calibrated", cell: ({ performedOn }) => <Day day={performedOn} /> },
  { heading: "As found", text: ({ asFound }) => asFound },
  {
    heading: "Open for",
    kind: "number",
    text: ({ days }) => (days === null ? "day not stated" : counted(days, "day")),
  },
];

/** Calibrations that came after the day on which they were due. */
export const lateColumns: readonly Column<LateCalibration>[] = [
  { heading: "Tag", isRowHeader: true, kind: "day", text: ({ tag }) => tag },
  { heading: "Record", cell: ({ path, calibration }) => <a href={path}>{calibration}</a> },
  { heading: "Calibrated", cell: ({ performedOn }) => <Day day={performedOn} /> },
  { heading: "Due on", under: "Calibrated", text: ({ dueOn }) => `due on ${dueOn}` },
  { heading: "Late by", kind: "number", text: ({ days }) => counted(days, "day") },
];

/** The standards that the last records rest on. */
export const registerStandardColumns: readonly Column<RegisterStandard>[] = [
  { heading: "Standard", isRowHeader: true, text: ({ standard }) => standard },
  { heading: "Certificate", text: ({ certificate }) => certificate },
  {
    heading: "Due on",
    cell: ({ dueOn, isOverdue }) => (
      <>
        <Day day={dueOn} /> {isOverdue && <strong>past its day</strong>}
      </>
    ),
  },
  { heading: "Last records that rest on it", kind: "number", text: ({ tags }) => String(tags) },
];
