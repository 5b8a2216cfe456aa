import { Fragment } from "preact";
import type { OpenFinding, RegisterRow, RegisterStandard, WorstError } from "../../record/register-form.ts";
import type { Column } from "../table/column.ts";
import { driftWords, dueStates, dueWords, worstErrorWords } from "../texts/register-texts.ts";

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
    ...{ heading: "Criticality", under: "Tag", name: "criticality", text: ({ criticality }) => criticality ?? "" },
    cell: ({ criticality }) => (criticality === "safety" ? criticality : null),
  },
  {
    ...{ heading: "Record", under: "Calibrated", name: "calibration", text: ({ calibration }) => calibration },
    cell: ({ calibration, revision }) => `${calibration}, revision ${revision}`,
  },
  { ...onlyInTables("Calibrated"), name: "revision", value: ({ revision }) => revision },
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
