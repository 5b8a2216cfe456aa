import type { FindingRecord, PhaseCauses } from "../../record/causes-schema.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { Part } from "../annexes/part.tsx";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { causesOf, evidenceWords, titlesOf } from "../texts/cause-texts.ts";
import { StageLines } from "./stage-lines.tsx";

/** What the readings are consistent with, with the numbers behind it and what would tell it from its rivals. */
export function Causes({ record }: { record: CalibrationRecord }) {
  const phases = causesOf(record);
  if (phases.length === 0) return null;
  return (
    <Part id="causes" title="What is most likely wrong" kind="causes">
      <p>
        An opinion, drawn from the numbers of the readings alone. A finding says what they are consistent with; it does
        not prove it. Measure what tells the candidates apart before anything is changed.
      </p>
      {phases.map(({ name, title, causes }) => (
        <PhaseFindings key={name} title={title} causes={causes} />
      ))}
    </Part>
  );
}

function PhaseFindings({ title, causes }: { title: string; causes: PhaseCauses }) {
  const { findings, notes, stageLines } = causes;
  return (
    <>
      <h4>{title}</h4>
      {findings.length === 0 && (
        <p>
          Nothing stands out: no stage leaves its line, scatters or drifts by more than noise does and by more than half
          the tolerance.
        </p>
      )}
      {findings.map((finding) => (
        <FindingBox key={`${finding.id} ${finding.stage} ${finding.says}`} finding={finding} />
      ))}
      {stageLines.length > 0 && <StageLines title={title} lines={stageLines} />}
      {notes.length > 0 && (
        <ul class="notes">
          {notes.map(({ title: name, says, candidates, evidence, separatedBy }) => (
            <li key={name}>
              <strong>{sentenceStart(name)}.</strong> {says}
              {evidence.length > 0 && ` ${evidence.map((one) => `${one.name}: ${evidenceWords(one)}`).join("; ")}.`}
              {candidates.length > 0 && ` Not excluded: ${titlesOf(candidates)}.`} What would tell: {separatedBy}.
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function FindingBox({ finding }: { finding: FindingRecord }) {
  const { title, stage, says, evidence, rivals, separatedBy } = finding;
  return (
    <article class="finding">
      <h5>
        {sentenceStart(title)} <span class="where">{stage}</span>
      </h5>
      <p>{says}</p>
      <div class="finding-parts">
        <DataTable caption="Evidence" kind="plain evidence" hasNoHead columns={evidenceColumns} rows={evidence} />
        <dl class="open-questions">
          <dt>Not excluded yet</dt>
          <dd>{rivals.length === 0 ? "nothing on this list" : titlesOf(rivals)}</dd>
          <dt>{rivals.length === 0 ? "What would confirm it" : "What would tell them apart"}</dt>
          <dd>{separatedBy}</dd>
        </dl>
      </div>
    </article>
  );
}

const evidenceColumns: readonly Column<FindingRecord["evidence"][number]>[] = [
  { heading: "What", isRowHeader: true, text: ({ name }) => sentenceStart(name) },
  { heading: "Value", kind: "number", text: evidenceWords },
];

/** A title begins a line, but a unit or a number keeps its small letter. */
function sentenceStart(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
