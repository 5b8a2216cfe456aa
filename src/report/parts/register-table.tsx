import { Fragment } from "preact";
import type { RegisterRow, WorstError } from "../../record/register-form.ts";
import { driftWords, dueStates, dueWords, worstErrorWords } from "../texts/register-texts.ts";

/** Every tag by its last record, with what a script needs to search and sort. */
export function RegisterTable({ rows }: { rows: readonly RegisterRow[] }) {
  return (
    <section aria-labelledby="tags-title">
      <h2 id="tags-title">Loops</h2>
      <Find />
      <section class="wide" aria-label="Loops, a row each" tabIndex={0}>
        <table id="register" class="plain register">
          <thead>
            <tr>
              <th scope="col">Tag</th>
              <th scope="col">What and where</th>
              <th scope="col">Calibrated</th>
              <th scope="col">As found</th>
              <th scope="col">As left</th>
              <th scope="col">Drift, % of span a year</th>
              <th scope="col">State</th>
              <th scope="col">Next due</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <Row key={row.tag} row={row} />
            ))}
          </tbody>
        </table>
      </section>
    </section>
  );
}

/** Shown by the script alone: without it there is nothing to search with. */
function Find() {
  return (
    <p id="find" class="find" hidden>
      <label>
        Search
        <input id="search" type="search" />
      </label>{" "}
      <label>
        State
        <select id="state">
          <option value="">all</option>
          {dueStates.map((state) => (
            <option key={state}>{state}</option>
          ))}
        </select>
      </label>{" "}
      <output id="shown" />
    </p>
  );
}

function Row({ row }: { row: RegisterRow }) {
  const { due, drift, worstAsFound, worstAsLeft, unit } = row;
  return (
    <tr data-state={due.state}>
      <th scope="row">
        <a href={row.path}>{row.tag}</a>
        {row.criticality === "safety" && <span class="where">safety</span>}
      </th>
      <td data-value={row.description ?? ""}>
        {row.description ?? <span class="not-stated">not stated</span>}
        {row.location !== null && <span class="where">{row.location}</span>}
      </td>
      <td data-value={row.performedOn ?? ""}>
        {row.performedOn === null ? "day not stated" : <span class="day">{row.performedOn}</span>}
        <span class="where">
          {row.calibration}, revision {row.revision}
        </span>
      </td>
      <td data-value={worstAsFound === null ? "" : Math.abs(worstAsFound.errorPercentSpan)}>
        {row.asFound ?? "–"}
        <WorstReading worst={worstAsFound} unit={unit} />
      </td>
      <td data-value={worstAsLeft === null ? "" : Math.abs(worstAsLeft.errorPercentSpan)}>
        {row.asLeft ?? "–"}
        {worstAsLeft !== null && <WorstReading worst={worstAsLeft} unit={unit} />}
      </td>
      <td class="number" data-value={"notDetermined" in drift ? "" : drift.percentSpanPerYear}>
        {"notDetermined" in drift ? <span class="not-determined">{driftWords(drift)}</span> : driftWords(drift)}
      </td>
      <td data-value={dueStates.indexOf(due.state)}>
        {due.state === "overdue" || due.state === "not in tolerance" ? <strong>{due.state}</strong> : due.state}
        {row.recommendation !== null && row.recommendation !== "leave" && (
          <span class="where">
            advised: <span class="kept-together">{row.recommendation}</span>
          </span>
        )}
      </td>
      <td data-value={due.on ?? ""}>
        <Words text={dueWords(due)} />
      </td>
    </tr>
  );
}

function WorstReading({ worst, unit }: { worst: WorstError | null; unit: string }) {
  return (
    <span class="where">
      <Words text={worstErrorWords(worst, unit)} />
    </span>
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
