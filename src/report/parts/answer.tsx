import { worstPointOf } from "../../record/loop-end.ts";
import { overallOf } from "../../record/overall-of.ts";
import { type PhaseName, phaseWords } from "../../record/phase-name.ts";
import { isInTolerance } from "../../record/phase-statement.ts";
import { phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord, Statement } from "../../record/record-schema.ts";
import { keptTogether } from "../kept-together.ts";
import type { NumberStyle } from "../style/number-style.ts";
import { pointWords, riskWords, ruleInShort } from "../texts/decision-texts.ts";
import { forecastAnswer, monthsWords } from "../texts/history-texts.ts";
import { meaningOf, outsideWords, toleranceFact, verdictWords, worstWords } from "../texts/page-texts.ts";
import { failedOutputs } from "../texts/switching-texts.ts";
import { AnswerFact } from "./answer-fact.tsx";
import { CauseAnswer } from "./causes.tsx";
import { ImpactAnswer } from "./impact.tsx";
import { LoopCheckAnswer } from "./loop-checks.tsx";
import { RecommendationAnswer } from "./recommendation.tsx";

/** The answer: as found, as left, what to do; below it what was done, what is open, and by which rule. */
export function Answer({ record, style }: { record: CalibrationRecord; style: NumberStyle }) {
  const { adjustment, alsoAdjusted = [], adjustmentNote } = record.calibration;
  const forecast = forecastAnswer(record);
  return (
    <section class="answer" aria-labelledby="answer-title">
      <h2 id="answer-title">Result</h2>
      <Incomplete record={record} />
      <div class="answers">
        {phasesOf(record).map(({ name, title, phase }) => (
          <PhaseAnswer key={title} name={name} title={title} record={record} phase={phase} style={style} />
        ))}
        <RecommendationAnswer record={record} />
      </div>
      <FailedOutputs record={record} />
      <dl class="answer-facts">
        <AnswerFact name="Adjustment">
          <strong>{[adjustment ?? "not stated", ...alsoAdjusted].join(", ")}</strong>
          {adjustmentNote && `: ${adjustmentNote}`}
        </AnswerFact>
        <AnswerFact name="Next due">
          <strong>{record.nextDue ?? "not stated"}</strong>
          {`: ${dueNote(record)}`}
        </AnswerFact>
        {forecast && (
          <AnswerFact name="Forecast from the filed records">
            <strong>{forecast}</strong>; 95 % prediction, see “Over the years”
          </AnswerFact>
        )}
        <ImpactAnswer record={record} />
        <LoopCheckAnswer record={record} />
        <AnswerFact name="Tolerance">
          {toleranceFact(record)}
          {toleranceNote(record)}
        </AnswerFact>
        <AnswerFact name="Decision rule">{ruleInShort(record)}</AnswerFact>
      </dl>
    </section>
  );
}

/** What was not proved stands before what was. */
function Incomplete({ record }: { record: CalibrationRecord }) {
  const { complete, missing, loop, word } = overallOf(record);
  if (complete) return null;
  return (
    <div class="answer-box is-open not-complete">
      <p class="verdict">
        Not complete{" "}
        <span class="meaning">
          {word === "not complete" && isInTolerance(loop) ? "in tolerance where it was read" : "not all of it was read"}
        </span>
      </p>
      <ul>
        {missing.map(({ says }) => (
          <li key={says}>{keptTogether(says)}</li>
        ))}
      </ul>
    </div>
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
  return (
    <div class={`answer-box ${phase.complete ? answerClass[phase.verdict] : "is-open"}`}>
      <h3>{title}</h3>
      <p class="verdict">
        {phase.complete || !isInTolerance(phase.verdict) ? verdictWords[phase.verdict].word : "In tolerance where read"}{" "}
        <span class="meaning">
          {phase.complete ? meaningOf(record, phase.verdict) : phase.missing.map(({ says }) => says).join("; ")}
        </span>
      </p>
      <p>{outsideWords(record, phase)}</p>
      <WorstOf record={record} phase={phase} style={style} />
      <FailedOutputs record={record} phase={name} />
      <CauseAnswer record={record} phase={name} />
    </div>
  );
}

/** A wide tolerance stands beside the verdict that it makes easy. */
function toleranceNote({ warnings }: CalibrationRecord) {
  const wide = warnings.find(({ code }) => code === "plausible/tolerance-wide" || code === "plausible/tolerance-fine");
  return wide === undefined ? null : <strong>; {wide.says}</strong>;
}

/** The worst reading, and the worst mean with its uncertainty and the risk that is left. */
function WorstOf({ record, phase, style }: Pick<PhaseAnswerProps, "record" | "phase" | "style">) {
  const reading = worstWords(record, phase, style);
  const point = worstPointOf(phase);
  const ofPart = (of: string | undefined) => (of === undefined || of === "sensor" ? "" : `, ${of}`);
  if (reading === undefined && point === undefined) return null;
  return (
    <dl class="detail">
      {reading && <AnswerFact name={`Worst reading${ofPart(phase.worst?.of)}`}>{keptTogether(reading)}</AnswerFact>}
      {point && (
        <AnswerFact name={`Worst test point${ofPart(phase.worstPoint?.of)}`}>
          {keptTogether(pointWords(record, point))}. Risk that the true error lies outside the tolerance:{" "}
          {keptTogether(riskWords(point.specificRisk))}
        </AnswerFact>
      )}
    </dl>
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
        {phase === undefined && name !== undefined && `, ${phaseWords[name]}`}: {statement}
      </strong>
      ; {keptTogether(why)}.
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
    return `interval of ${monthsWords(instrument.intervalMonths ?? 0)}, agreed by ${instrument.intervalAgreedBy}; ${counts}`;
  }
  if (instrument.intervalMonths === undefined) return "no interval is stated";
  if (instrument.intervalAgreedBy === undefined) return "nobody is named who agreed to the interval";
  const interval = `${monthsWords(instrument.intervalMonths)}, agreed by ${instrument.intervalAgreedBy}`;
  return `a due date is given only where the loop is left in tolerance and the record is complete; the interval is ${interval}`;
}
