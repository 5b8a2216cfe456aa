import type { CandidateFitRecord, CandidatesRecord } from "../../record/candidates-schema.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { Part } from "../annexes/part.tsx";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import {
  introductionWords,
  notComparedWords,
  otherReasons,
  overallReasons,
  overallWords,
  sideBySide,
  supplyWords,
} from "../texts/replacement-texts.ts";

/** What could take the sensor's place: each candidate against each demand of the loop, with the reason in each cell. */
export function ReplacementFit({ record: { candidates } }: { record: CalibrationRecord }) {
  if (candidates === undefined) return null;
  const notCompared = notComparedWords(candidates);
  return (
    <Part id="replacement" title="What could take the sensor's place" kind="replacement">
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
    </Part>
  );
}

function Summary({ fit }: { fit: CandidateFitRecord }) {
  const reasons = overallReasons(fit);
  const others = otherReasons(fit);
  const supply = supplyWords(fit);
  return (
    <li>
      <strong>
        <bdi>{fit.candidate}</bdi>: {overallWords(fit)}
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
      {supply !== undefined && <p class="small">{supply}.</p>}
    </li>
  );
}

type MatrixProps = { fits: readonly CandidateFitRecord[]; candidates: CandidatesRecord; group: number };

function Matrix({ fits, candidates, group }: MatrixProps) {
  const title = titleOf(candidates, fits, group);
  const demands = (fits[0]?.cells ?? []).map((cell, place) => ({ ...cell, place }));
  return (
    <DataTable
      label={title}
      caption={title}
      kind="plain replacement-matrix"
      columns={matrixColumns(fits)}
      rows={demands}
    />
  );
}

type FitCell = CandidateFitRecord["cells"][number];
type Demand = FitCell & { place: number };

function matrixColumns(fits: readonly CandidateFitRecord[]): readonly Column<Demand>[] {
  return [
    { heading: "What the loop needs", isRowHeader: true, text: ({ demand }) => demand },
    { heading: "Needs", under: "What the loop needs", text: ({ needs }) => needs },
    ...fits.map(
      (fit): Column<Demand> => ({
        heading: (
          <>
            <bdi>{fit.candidate}</bdi>
            <span class="where">{overallWords(fit)}</span>
          </>
        ),
        classOf: ({ place }) => resultClass(fit.cells[place]),
        cell: ({ place }) => <Offer cell={fit.cells[place]} />,
      }),
    ),
  ];
}

function resultClass(cell: FitCell | undefined): string | undefined {
  return cell && resultClasses[cell.result];
}

const resultClasses = {
  fits: "",
  "fits with a change": "asks-change",
  "cannot be told": "is-untold",
  "does not fit": "is-unfit",
} as const;

function Offer({ cell }: { cell: FitCell | undefined }) {
  if (cell === undefined) return null;
  return (
    <>
      <strong>{cell.result}</strong>: {cell.offers}
      <span class="where">{cell.reason}</span>
    </>
  );
}

function titleOf({ fits: all }: CandidatesRecord, fits: readonly CandidateFitRecord[], group: number): string {
  const title = "Candidates against the loop";
  if (fits.length === all.length) return title;
  return `${title}, part ${group + 1}`;
}
