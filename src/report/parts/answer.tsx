import type { CalibrationRecord, PhaseRecord, Statement } from "../../record/record-schema.ts";
import { pointWords, riskWords, ruleWords, worstPointOf } from "../decision-texts.ts";
import type { NumberStyle } from "../number-style.ts";
import {
  meaningOf,
  outsideWords,
  type PhaseName,
  phasesOf,
  phaseTitles,
  toleranceWords,
  verdictWords,
  worstWords,
} from "../page-texts.ts";
import { failedOutputs } from "../switching-texts.ts";
import { CauseAnswer } from "./causes.tsx";
import { ImpactAnswer } from "./impact.tsx";
import { LoopCheckAnswer } from "./loop-checks.tsx";
import { RecommendationAnswer } from "./recommendation.tsx";

/** The answer: as found, as left, next due; in words first, colour second. */
export function Answer({ record, style }: { record: CalibrationRecord; style: NumberStyle }) {
  return (
    <section class="answer" aria-labelledby="answer-title">
      <h2 id="answer-title">Result</h2>
      <div class="answers">
        {phasesOf(record).map(({ name, title, phase }) => (
          <PhaseAnswer key={title} name={name} title={title} record={record} phase={phase} style={style} />
        ))}
        <RecommendationAnswer record={record} />
        <div class="answer-box">
          <h3>Work done and next due</h3>
          <p>
            Adjustment: <strong>{record.calibration.adjustment ?? "not stated"}</strong>
            {record.calibration.adjustmentNote && <>. {record.calibration.adjustmentNote}</>}
          </p>
          <p>
            Next due: <strong>{record.nextDue ?? "not stated"}</strong>. {dueNote(record)}
          </p>
          <ImpactAnswer record={record} />
          <LoopCheckAnswer record={record} />
        </div>
      </div>
      <FailedOutputs record={record} />
      <p class="rule">
        Tolerance {toleranceWords(record)}. Decision rule: {ruleWords(record)}.
      </p>
    </section>
  );
}

type PhaseAnswerProps = {
  name: PhaseName;
  title: string;
  record: CalibrationRecord;
  phase: PhaseRecord;
  style: NumberStyle;
};

function PhaseAnswer({ name, title, record, phase, style }: PhaseAnswerProps) {
  const worst = worstWords(record, phase, style);
  if (phase.verdict === null) {
    return (
      <div class="answer-box">
        <h3>{title}</h3>
        <p class="verdict">Not determined</p>
        <p>{phase.notDetermined.verdict}</p>
        <FailedOutputs record={record} phase={name} />
      </div>
    );
  }
  const point = worstPointOf(phase);
  return (
    <div class={`answer-box ${answerClass[phase.verdict]}`}>
      <h3>{title}</h3>
      <p class="verdict">
        {verdictWords[phase.verdict].word} <span class="meaning">{meaningOf(record, phase.verdict)}</span>
      </p>
      <p>{outsideWords(record, phase)}</p>
      {worst && (
        <p>
          Worst reading{phase.worst?.of === "controller" ? " (controller)" : ""}: {worst}
        </p>
      )}
      {point && (
        <p>
          Worst test point{phase.worstPoint?.of === "controller" ? " (controller)" : ""}: {pointWords(record, point)}.
          Risk that the true error lies outside the tolerance: {riskWords(point.specificRisk)}.
        </p>
      )}
      <FailedOutputs record={record} phase={name} />
      <CauseAnswer record={record} phase={name} />
    </div>
  );
}

/** The switched outputs that do not pass: of a phase with a box of its own, or all the others. */
function FailedOutputs({ record, phase }: { record: CalibrationRecord; phase?: PhaseName }) {
  const hasBox = (name: PhaseName | undefined) => name !== undefined && record.phases[name] !== undefined;
  const failed = failedOutputs(record).filter((one) =>
    phase === undefined ? !hasBox(one.phase) : one.phase === phase,
  );
  return failed.map(({ phase: name, output, statement, why }) => (
    <p key={`${name} ${output}`} class="failed-output">
      <strong>
        Switched output {output}
        {phase === undefined && name !== undefined && `, ${phaseTitles[name].toLowerCase()}`}: {statement}
      </strong>
      ; {why}.
    </p>
  ));
}

const answerClass: Record<Statement, string> = {
  pass: "is-pass",
  "conditional pass": "is-pass",
  "conditional fail": "is-fail",
  fail: "is-fail",
  "cannot be decided": "is-open",
};

function dueNote({ nextDue, instrument }: CalibrationRecord): string {
  if (nextDue !== undefined) {
    const counts = instrument.dueRule === "month end" ? "it runs to the end of that month" : "the day itself counts";
    return `The interval of ${instrument.intervalMonths} months was agreed by ${instrument.intervalAgreedBy}; ${counts}.`;
  }
  if (instrument.intervalMonths === undefined) return "No interval is stated.";
  if (instrument.intervalAgreedBy === undefined) return "Nobody is named who agreed to the interval.";
  return "A due date is given only where the loop is left in tolerance.";
}
