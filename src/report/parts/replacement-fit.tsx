import type { CandidateFitRecord, CandidatesRecord } from "../../record/candidates-schema.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import {
  introductionWords,
  notComparedWords,
  otherReasons,
  overallReasons,
  overallWords,
  sideBySide,
} from "../texts/replacement-texts.ts";
import { Definitions } from "./definitions.tsx";

/** What could take the sensor's place: each candidate against each demand of the loop, with the reason in each cell. */
export function ReplacementFit({ record: { candidates } }: { record: CalibrationRecord }) {
  if (candidates === undefined) return null;
  const notCompared = notComparedWords(candidates);
  return (
    <section class="replacement" aria-labelledby="replacement-title">
      <h2 id="replacement-title">What could take the sensor's place</h2>
      <p>{introductionWords(candidates)}</p>
      <ol class="notes">
        {candidates.fits.map((fit) => (
          <Summary key={fit.row} fit={fit} />
        ))}
      </ol>
      {sideBySide(candidates).map((fits, group) => (
        <Matrix key={fits[0]?.row} fits={fits} candidates={candidates} group={group} />
      ))}
      <p class="small">
        Best first: by the worst cell; then by how many demands are not met, cannot be told, ask for a change; then by
        how often the accuracy goes into the tolerance; then as in the table.{notCompared && ` ${notCompared}`}
      </p>
      {candidates.fits.some(({ accuracy }) => accuracy !== null) && (
        <Definitions keys={["candidates.ratio", "candidates.standardsUncertainty", "candidates.together"]} />
      )}
    </section>
  );
}

function Summary({ fit }: { fit: CandidateFitRecord }) {
  const reasons = overallReasons(fit);
  const others = otherReasons(fit);
  return (
    <li>
      <strong>
        {fit.candidate}: {overallWords(fit)}
      </strong>
      {fit.overall === "fits" && ": every demand that was compared is met"}
      {reasons.length > 0 && (
        <ul>
          {reasons.map((reason) => (
            <li key={reason}>{reason}</li>
          ))}
        </ul>
      )}
      {others}
    </li>
  );
}

type MatrixProps = { fits: readonly CandidateFitRecord[]; candidates: CandidatesRecord; group: number };

function Matrix({ fits, candidates, group }: MatrixProps) {
  const title = titleOf(candidates, fits, group);
  return (
    <section class="wide" aria-label={title} tabIndex={0}>
      <table class="plain replacement-matrix">
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">What the loop needs</th>
            {fits.map((fit) => (
              <th key={fit.row} scope="col">
                {fit.candidate}
                <span class="where">{overallWords(fit)}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {fits[0]?.cells.map(({ demand, needs }, place) => (
            <tr key={demand}>
              <th scope="row">
                {demand}
                <span class="where">{needs}</span>
              </th>
              {fits.map((fit) => (
                <Cell key={fit.row} cell={fit.cells[place]} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

const resultClasses = {
  fits: "",
  "fits with a change": "asks-change",
  "cannot be told": "is-untold",
  "does not fit": "is-unfit",
} as const;

function Cell({ cell }: { cell: CandidateFitRecord["cells"][number] | undefined }) {
  if (cell === undefined) return <td />;
  return (
    <td class={resultClasses[cell.result]}>
      <strong>{cell.result}</strong>: {cell.offers}
      <span class="where">{cell.reason}</span>
    </td>
  );
}

function titleOf({ fits: all }: CandidatesRecord, fits: readonly CandidateFitRecord[], group: number): string {
  const title = "Candidates against the loop";
  if (fits.length === all.length) return title;
  return `${title}, part ${group + 1}`;
}
