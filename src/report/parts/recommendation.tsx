import type { PhaseName } from "../../record/phase-name.ts";
import type { RecommendationRecord, RecommendedStepRecord } from "../../record/recommendation-schema.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { Part } from "../annexes/part.tsx";
import { numberStyleOf } from "../style/number-style.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { ifLeftWords, interimWords } from "../texts/if-left-texts.ts";
import {
  actionWords,
  constantsWords,
  laterWords,
  recommendedPhases,
  thresholdOrigin,
  thresholdWords,
  workDoneWords,
} from "../texts/recommendation-texts.ts";

/** What to do, why, by which rule and limits, and what the opinion rests on. */
export function Recommendation({ record }: { record: CalibrationRecord }) {
  const { recommendation, software } = record;
  if (recommendation === undefined) return null;
  const phases = recommendedPhases(record);
  const work = workDoneWords(record);
  const left = ifLeftWords(record, numberStyleOf(record));
  const interim = interimWords(record);
  const history = historyNotSaidYet(recommendation, phases);
  return (
    <Part id="recommendation" title="What to do, and why" kind="recommendation">
      <p>
        An opinion of {software.name} {software.version}. It rests on the statements, causes, forecasts, switched
        outputs and loop checks of this record, on the rules named below and on nothing else: it has not seen the plant.
        It authorises no work; an authorised person has to agree to it, and site procedures say how it is done.
      </p>
      {phases.map(({ name, title, steps }) => (
        <PhaseSteps
          key={name}
          record={record}
          name={name}
          title={`${title}: ${aboutPhase(name, phases.length)}`}
          steps={steps}
        />
      ))}
      {left.length > 0 && (
        <p class="after-findings">
          <strong>If it is left.</strong> {left.join(" ")}
        </p>
      )}
      {interim && (
        <p>
          <strong>Meanwhile.</strong> {interim}
        </p>
      )}
      {work && <p class="after-findings">{work}</p>}
      {history.length > 0 && (
        <p>
          <strong>History.</strong> {history.join(" ")}
        </p>
      )}
      <Thresholds thresholds={recommendation.thresholds} />
    </Part>
  );
}

/** Where a step rests on the history, its reasons have said it. */
function historyNotSaidYet(
  { history }: RecommendationRecord,
  phases: readonly { steps: readonly RecommendedStepRecord[] }[],
): readonly string[] {
  const said = new Set(phases.flatMap(({ steps }) => steps.flatMap(({ reasons }) => reasons.map(({ says }) => says))));
  return history.filter((sentence) => !said.has(sentence));
}

function aboutPhase(name: PhaseName, phases: number): string {
  if (name === "asLeft") return "what to do now";
  return phases > 1 ? "what was asked for" : "what to do";
}

type StepsProps = {
  record: CalibrationRecord;
  name: PhaseName;
  title: string;
  steps: readonly RecommendedStepRecord[];
};

function PhaseSteps({ record, name, title, steps }: StepsProps) {
  return (
    <>
      <h4>{title}</h4>
      {steps.map((step, index) => (
        <article key={step.does} class="finding">
          <h5>
            {steps.length > 1 && `${index + 1}. `}
            {index === 0 ? actionWords(step) : laterWords(step)}
          </h5>
          {step.action !== "leave" && <p>{step.does}</p>}
          <Constants record={record} phase={name} step={step} />
          <ul class="notes">
            {step.reasons.map(({ says }) => (
              <li key={says}>{says}</li>
            ))}
          </ul>
          {step.before && (
            <p>
              <strong>Before that:</strong> {step.before}
            </p>
          )}
          <p class="rule">Rule: {step.rule}.</p>
        </article>
      ))}
    </>
  );
}

/** What to type in, where the step is a re-scale by constants. */
function Constants({
  record,
  phase,
  step,
}: {
  record: CalibrationRecord;
  phase: PhaseName;
  step: RecommendedStepRecord;
}) {
  const words = constantsWords(record, phase, step);
  return words === undefined ? null : (
    <p>
      <strong>Constants:</strong> {words}
    </p>
  );
}

type Threshold = RecommendationRecord["thresholds"][number];

const thresholdColumns: readonly Column<Threshold>[] = [
  { heading: "What is limited", isRowHeader: true, text: ({ about }) => about },
  { heading: "Limit", text: thresholdWords },
  { heading: "From", text: thresholdOrigin },
];

function Thresholds({ thresholds }: { thresholds: readonly Threshold[] }) {
  return (
    <DataTable caption="Limits of these rules" kind="plain thresholds" columns={thresholdColumns} rows={thresholds} />
  );
}
