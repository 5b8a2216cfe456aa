import { renderToString } from "preact-render-to-string";
import type { OverTheYears } from "../record/over-the-years-schema.ts";
import { withDecimalMark } from "../units/decimal-mark.ts";
import type { DecimalMark } from "../units/read-number.ts";
import { writePlain } from "../units/write-number.ts";
import { historyKeys } from "./annexes/glossary-keys.ts";
import type { NotesOfRecords } from "./columns/history-columns.tsx";
import { styleString } from "./escape.ts";
import { htmlDocument } from "./html-document.ts";
import { Definitions } from "./parts/definitions.tsx";
import { Fact } from "./parts/fact.tsx";
import { type HistoryDrawings, OverTheYearsParts } from "./parts/history.tsx";
import { pageStyle } from "./style/page-style.ts";
import { forecastWords, leadingPlaceOf, monthsWords, placeWords, proposalWords } from "./texts/history-texts.ts";

/** A tag over its filed records, with what its last record says of the loop. */
export type TagHistory = {
  tag: string;
  description: string | undefined;
  location: string | undefined;
  distanceUnit: string;
  rangeLower: number;
  rangeUpper: number;
  /** Whole months, and who agreed to them. */
  intervalMonths: number | undefined;
  intervalAgreedBy: string | undefined;
  /** What its last record is written with. */
  decimalMark?: DecimalMark | undefined;
  overTheYears: OverTheYears;
  /** What the ledger says of the loop beside its records, a sentence each. */
  fate?: readonly string[] | undefined;
  /** What the folder knows of each record, by calibration: its page, who signed it, what was decided. */
  notes?: NotesOfRecords | undefined;
};

const contentSecurityPolicy =
  "default-src 'none'; style-src 'unsafe-inline'; font-src data:; base-uri 'none'; form-action 'none'";

/** A tag over its filed records as one self-contained page: no script, no network. */
export function renderHistory(history: TagHistory, drawings: HistoryDrawings): string {
  return htmlDocument({
    title: `${history.tag} · history of its calibrations`,
    contentSecurityPolicy,
    style: `${pageStyle}a{color:inherit}${printedMargins(history)}`,
    body: withDecimalMark(history.decimalMark, () =>
      renderToString(<HistoryPage history={history} drawings={drawings} />),
    ),
  });
}

function HistoryPage({ history, drawings }: { history: TagHistory; drawings: HistoryDrawings }) {
  const { tag, description, location, distanceUnit: unit, rangeLower, rangeUpper, overTheYears: years } = history;
  const { records } = years;
  return (
    <main>
      <header class="heading">
        <div>
          <p class="kind">History of calibrations</p>
          <h1>
            <bdi>{tag}</bdi>
          </h1>
          <p class="subject">
            <bdi>{description ?? "description not stated"}</bdi>
          </p>
        </div>
        <dl class="facts">
          <Fact
            name="Records"
            value={`${records.length}, ${records[0]?.performedOn} to ${records.at(-1)?.performedOn}`}
          />
          <Fact name="Range" value={`${writePlain(rangeLower)} to ${writePlain(rangeUpper)} ${unit}`} />
          <Fact name="Interval" value={intervalWords(history)} />
          <Fact name="Location" value={location} />
        </dl>
      </header>
      <HistoryAnswer years={years} unit={unit} />
      {(history.fate ?? []).length > 0 && (
        <ul class="notes">
          {history.fate?.map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      )}
      <section aria-labelledby="history-title">
        <h2 id="history-title">Over the years</h2>
        <OverTheYearsParts years={years} unit={unit} drawings={drawings} notes={history.notes} />
        <h3>What these figures are</h3>
        <Definitions keys={historyKeys} />
      </section>
      <section aria-labelledby="reading-title">
        <h2 id="reading-title">How to read it</h2>
        <p class="small">
          Of each calibration the last filed revision is taken. The test point whose forecast meets a limit first speaks
          for the loop. An adjustment that was not needed spoils the history: while the loop is found well inside its
          tolerance, leave it as it is. Whether the records may be believed is checked by spanwright verify.
        </p>
      </section>
    </main>
  );
}

function intervalWords({ intervalMonths, intervalAgreedBy }: TagHistory): string | undefined {
  if (intervalMonths === undefined) return undefined;
  return `${monthsWords(intervalMonths)}, ${intervalAgreedBy === undefined ? "nobody is named who agreed" : `agreed by ${intervalAgreedBy}`}`;
}

/** What a reader wants first: the forecast, the reliability, the proposals. */
function HistoryAnswer({ years, unit }: { years: OverTheYears; unit: string }) {
  const place = leadingPlaceOf(years);
  const { staircase, controlChart, reliability, notDetermined } = years;
  return (
    <section class="answer" aria-labelledby="answer-title">
      <h2 id="answer-title">How it stands</h2>
      <div class="answers">
        <div class="answer-box">
          <h3>Forecast</h3>
          <p class="verdict">
            <WithDates text={place === undefined ? "not determined" : forecastWords(place)} />
          </p>
          <p>
            {place === undefined ? "No test point was judged." : `At the ${placeWords(place, unit)}, 95 % prediction.`}
          </p>
        </div>
        <div class="answer-box">
          <h3>Found in tolerance</h3>
          <p class="verdict">
            {reliability === null ? "not determined" : `${reliability.inTolerance} of ${reliability.of}`}
          </p>
          <p>
            {reliability === null
              ? `${notDetermined.reliability}.`
              : "At the end of an interval that began in tolerance."}
          </p>
        </div>
        <div class="answer-box">
          <h3>Interval, to be decided by the owner</h3>
          <p>
            Staircase:{" "}
            <strong>
              <WithDates text={proposalWords(staircase, notDetermined.staircase)} />
            </strong>
          </p>
          <p>
            Control chart:{" "}
            <strong>
              <WithDates text={proposalWords(controlChart, notDetermined.controlChart)} />
            </strong>
          </p>
        </div>
      </div>
    </section>
  );
}

/** No date is broken at its hyphens. */
function WithDates({ text }: { text: string }) {
  const parts = text.split(/(\d{4}-\d\d-\d\d)/u);
  return parts.map((part, index) =>
    index % 2 === 0 ? (
      part
    ) : (
      <span key={part} class="kept-together">
        {part}
      </span>
    ),
  );
}

/** Tag at the head of every printed page, what it is at its foot. */
function printedMargins({ tag, overTheYears }: TagHistory): string {
  const last = overTheYears.records.at(-1)?.performedOn ?? "";
  const foot = styleString(`History of calibrations, up to the record of ${last}`);
  return `@page{@top-left{content:${styleString(tag)}}@bottom-left{content:${foot}}}`;
}
