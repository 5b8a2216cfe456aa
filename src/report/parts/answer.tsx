import type { CalibrationRecord, PhaseRecord, Statement } from "../../record/record-schema.ts";
import { pointWords, riskWords, ruleWords, worstPointOf } from "../decision-texts.ts";
import type { NumberStyle } from "../number-style.ts";
import { meaningOf, outsideWords, phasesOf, toleranceWords, verdictWords, worstWords } from "../page-texts.ts";

/** The answer: as found, as left, next due; in words first, colour second. */
export function Answer({ record, style }: { record: CalibrationRecord; style: NumberStyle }) {
  return (
    <section class="answer" aria-labelledby="answer-title">
      <h2 id="answer-title">Result</h2>
      <div class="answers">
        {phasesOf(record).map(({ title, phase }) => (
          <PhaseAnswer key={title} title={title} record={record} phase={phase} style={style} />
        ))}
        <div class="answer-box">
          <h3>Work done and next due</h3>
          <p>
            Adjustment: <strong>{record.calibration.adjustment ?? "not stated"}</strong>
            {record.calibration.adjustmentNote && <>. {record.calibration.adjustmentNote}</>}
          </p>
          <p>
            Next due: <strong>{record.nextDue ?? "not stated"}</strong>. {dueNote(record)}
          </p>
        </div>
      </div>
      <p class="rule">
        Tolerance {toleranceWords(record)}. Decision rule: {ruleWords(record)}.
      </p>
    </section>
  );
}

type PhaseAnswerProps = { title: string; record: CalibrationRecord; phase: PhaseRecord; style: NumberStyle };

function PhaseAnswer({ title, record, phase, style }: PhaseAnswerProps) {
  const worst = worstWords(record, phase, style);
  if (phase.verdict === null) {
    return (
      <div class="answer-box">
        <h3>{title}</h3>
        <p class="verdict">Not determined</p>
        <p>{phase.notDetermined.verdict}</p>
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
    </div>
  );
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
    return `The interval of ${instrument.intervalMonths} months was agreed by ${instrument.intervalAgreedBy}.`;
  }
  if (instrument.intervalMonths === undefined) return "No interval is stated.";
  if (instrument.intervalAgreedBy === undefined) return "Nobody is named who agreed to the interval.";
  return "A due date is given only where the loop is left in tolerance.";
}
