import type { PhaseName } from "../../record/phase-name.ts";
import type { RecommendationRecord, RecommendedStepRecord } from "../../record/recommendation-schema.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { keptTogether } from "../kept-together.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import {
  actionWords,
  constantsWords,
  firstReasons,
  headlineParts,
  laterWords,
  recommendationNow,
  recommendedPhases,
  thresholdOrigin,
  thresholdWords,
  workDoneWords,
} from "../texts/recommendation-texts.ts";

/** What to do, on the first page: in words, with the first reason, as an opinion. */
export function RecommendationAnswer({ record }: { record: CalibrationRecord }) {
  const now = recommendationNow(record);
  if (now === undefined) return null;
  const isMany = now.steps.length > 1;
  return (
    <div class="answer-box what-to-do">
      <h3>{now.phase === "asLeft" ? "What to do now" : "What to do"}</h3>
      <p class="verdict">
        {headlineParts(now.steps).map((words, index, all) => (
          <>
            <span class="kept-together">{index < all.length - 1 ? `${words},` : words}</span>{" "}
          </>
        ))}
      </p>
      {now.steps.map((step, index) => (
        <StepAnswer
          key={step.does}
          record={record}
          phase={now.phase}
          step={step}
          number={isMany ? index + 1 : null}
          of={now.steps.length}
        />
      ))}
      <p class="opinion">An opinion, for an authorised person to agree to. More under “What to do, and why”.</p>
    </div>
  );
}

type StepAnswerProps = {
  record: CalibrationRecord;
  phase: PhaseName;
  step: RecommendedStepRecord;
  /** Null where there is one step only. */
  number: number | null;
  of: number;
};

function StepAnswer({ record, phase, step, number, of }: StepAnswerProps) {
  return (
    <>
      {step.action !== "leave" && (
        <p class="step">
          {number !== null && <strong>{number}. </strong>}
          {keptTogether(step.does)}
        </p>
      )}
      <Constants record={record} phase={phase} step={step} />
      <p class="detail">
        <strong>Why:</strong>{" "}
        {keptTogether(
          firstReasons(step, of)
            .map(({ says }) => says)
            .join(" "),
        )}
      </p>
      {step.before && (
        <p class="detail">
          <strong>Before that:</strong> {step.before}
        </p>
      )}
    </>
  );
}

/** What to do, why, by which rule and limits, and what the opinion rests on. */
export function Recommendation({ record }: { record: CalibrationRecord }) {
  const { recommendation, software } = record;
  if (recommendation === undefined) return null;
  const phases = recommendedPhases(record);
  const work = workDoneWords(recommendation);
  const history = historyNotSaidYet(recommendation, phases);
  return (
    <section class="recommendation" aria-labelledby="recommendation-title">
      <h2 id="recommendation-title">What to do, and why</h2>
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
      {work && <p class="after-findings">{work}</p>}
      {history.length > 0 && (
        <p>
          <strong>History.</strong> {history.join(" ")}
        </p>
      )}
      <Thresholds thresholds={recommendation.thresholds} />
    </section>
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
      <h3>{title}</h3>
      {steps.map((step, index) => (
        <article key={step.does} class="finding">
          <h4>
            {steps.length > 1 && `${index + 1}. `}
            {index === 0 ? actionWords(step) : laterWords(step)}
          </h4>
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
