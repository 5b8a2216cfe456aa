import type { RegisterRow } from "../../record/register-form.ts";
import { driftWords, dueStates, dueWords, worstErrorWords } from "../register-texts.ts";

/** Every tag by its last record, with what a script needs to search and sort. */
export function RegisterTable({ rows }: { rows: readonly RegisterRow[] }) {
  return (
    <section aria-labelledby="tags-title">
      <h2 id="tags-title">Loops</h2>
      <Find />
      <div class="wide">
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
      </div>
    </section>
  );
}

/** Shown by the script alone: without it there is nothing to search with. */
function Find() {
  return (
    <p id="find" hidden>
      <label>
        Search <input id="search" type="search" />
      </label>{" "}
      <label>
        State{" "}
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
      <td>
        {row.description ?? <span class="not-stated">not stated</span>}
        {row.location !== null && <span class="where">{row.location}</span>}
      </td>
      <td data-value={row.performedOn ?? ""}>
        {row.performedOn ?? "day not stated"}
        <span class="where">
          {row.calibration}, revision {row.revision}
        </span>
      </td>
      <td data-value={worstAsFound === null ? "" : Math.abs(worstAsFound.errorPercentSpan)}>
        {row.asFound ?? "–"}
        <span class="where">{worstErrorWords(worstAsFound, unit)}</span>
      </td>
      <td data-value={worstAsLeft === null ? "" : Math.abs(worstAsLeft.errorPercentSpan)}>
        {row.asLeft ?? "–"}
        {worstAsLeft !== null && <span class="where">{worstErrorWords(worstAsLeft, unit)}</span>}
      </td>
      <td data-value={"notDetermined" in drift ? "" : drift.percentSpanPerYear}>
        {"notDetermined" in drift ? <span class="not-determined">{driftWords(drift)}</span> : driftWords(drift)}
      </td>
      <td data-value={dueStates.indexOf(due.state)}>
        {due.state === "overdue" || due.state === "not in tolerance" ? <strong>{due.state}</strong> : due.state}
        {row.recommendation !== null && row.recommendation !== "leave" && (
          <span class="where">advised: {row.recommendation}</span>
        )}
      </td>
      <td data-value={due.on ?? ""}>{dueWords(due)}</td>
    </tr>
  );
}
