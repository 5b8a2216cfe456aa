import type { PlaceOverTheYears, RecordOverTheYears } from "../../record/over-the-years-schema.ts";
import { decimalsForSignificant, writeSigned } from "../../units/write-number.ts";
import type { Column } from "../table/column.ts";
import {
  adjustmentWords,
  driftWords,
  errorWords,
  forecastWords,
  placeWords,
  stateWords,
} from "../texts/history-texts.ts";

/** What a filing folder knows of a record that the record over the years does not. */
export type FiledNotes = {
  /** Address of its page, from the page of the history. */
  link?: string;
  /** "Ada Specimen (authorised)", or where the paper with the signatures lies. */
  signedBy: readonly string[];
  /** What was decided about a loop found out of tolerance, and by whom. */
  decided?: string;
};
/** The same by calibration. */
export type NotesOfRecords = Readonly<Record<string, FiledNotes>>;

/** The filed records of a tag, on a page and in a terminal. */
export function historyColumns(unit: string, notes: NotesOfRecords = {}): readonly Column<RecordOverTheYears>[] {
  const isKnown = Object.keys(notes).length > 0;
  return [
    { heading: "Calibrated", name: "calibrated", isRowHeader: true, text: ({ performedOn }) => performedOn },
    {
      ...{ heading: "Record", under: "Calibrated", name: "calibration", text: ({ calibration }) => calibration },
      cell: (record) => <RecordName record={record} link={notes[record.calibration]?.link} />,
    },
    ...stateColumns("As found", ({ asFound }) => asFound, unit),
    {
      ...{ heading: "Change since the record before ± U", unit, kind: "number" },
      text: ({ change }) => (change === null ? "–" : errorWords(change)),
    },
    {
      ...{ heading: "Change a year", under: "Change since the record before ± U" },
      text: ({ change }) => (change === null || change.perYear === null ? "" : perYearWords(change.perYear)),
    },
    {
      ...{ heading: "Adjustment", name: "adjustment", text: adjustmentWords },
      cell: (record) => (record.isAdjusted ? <strong>{adjustmentWords(record)}</strong> : adjustmentWords(record)),
    },
    ...stateColumns("As left", ({ asLeft }) => asLeft, unit),
    ...(isKnown ? personColumns(notes) : []),
  ];
}

/** Only a page has room for them. */
function personColumns(notes: NotesOfRecords): readonly Column<RecordOverTheYears>[] {
  return [
    { heading: "Signed by", text: ({ calibration }) => notes[calibration]?.signedBy.join(", ") ?? "" },
    { heading: "Decided", under: "Signed by", text: ({ calibration }) => decidedWords(notes[calibration]) },
  ];
}

function decidedWords(notes: FiledNotes | undefined): string {
  return notes?.decided === undefined ? "" : `decided: ${notes.decided}`;
}

type State = RecordOverTheYears["asFound"];

/** What was said of a phase, and the error at the place that speaks for the loop. */
function stateColumns(
  phase: "As found" | "As left",
  stateOf: (record: RecordOverTheYears) => State,
  unit: string,
): readonly Column<RecordOverTheYears>[] {
  const heading = `${phase}, error ± U`;
  return [
    {
      ...{ heading: `${phase}, statement`, under: heading, name: phase.toLowerCase() },
      value: (record) => {
        const state = stateOf(record);
        return state === null ? "–" : (state.statement ?? "not determined");
      },
      cell: (record) => {
        const state = stateOf(record);
        return state === null ? null : stateWords(state, unit);
      },
    },
    {
      ...{ heading, unit, kind: "number", name: `error ± U, ${unit}` },
      text: (record) => {
        const state = stateOf(record);
        return state === null ? "–" : errorWords(state.point);
      },
    },
  ];
}

function perYearWords(perYear: number): string {
  return `${writeSigned(perYear, decimalsForSignificant(perYear, 2))} a year`;
}

function RecordName({
  record: { calibration, revision },
  link,
}: {
  record: RecordOverTheYears;
  link: string | undefined;
}) {
  return (
    <>
      {link === undefined ? calibration : <a href={link}>{calibration}</a>}
      {revision > 1 && `, revision ${revision}`}
    </>
  );
}

/** Drift and forecast at a place; one of them speaks for the loop. */
export function driftColumns(
  unit: string,
  leading: PlaceOverTheYears | undefined,
): readonly Column<PlaceOverTheYears>[] {
  return [
    { heading: "Where", isRowHeader: true, text: (place) => placeWords(place, unit) },
    {
      ...{ heading: "Speaks for the loop", under: "Where" },
      text: (place) => (place === leading ? "speaks for the loop" : ""),
    },
    { heading: "Records", kind: "number", text: ({ records }) => String(records) },
    {
      ...{ heading: `Drift, ${unit} a year, with its 95 % confidence interval`, kind: "number" },
      cell: ({ drift, notDetermined }) =>
        drift === null ? <span class="not-determined">{notDetermined.drift}</span> : driftWords(drift),
    },
    { heading: "95 % prediction band", text: (place) => (place.drift === null ? "–" : forecastWords(place)) },
  ];
}
