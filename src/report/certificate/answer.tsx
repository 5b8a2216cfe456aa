import { sentenceCase } from "../../charts/chart-words.ts";
import { worstPointOf } from "../../record/loop-end.ts";
import { overallOf } from "../../record/overall-of.ts";
import { type PhaseName, phaseWords } from "../../record/phase-name.ts";
import { isInTolerance, phaseStatement } from "../../record/phase-statement.ts";
import { type NamedPhase, phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord, Statement } from "../../record/record-schema.ts";
import { keptTogether } from "../kept-together.ts";
import { AnswerFact } from "../parts/answer-fact.tsx";
import { ImpactAnswer } from "../parts/impact.tsx";
import { LoopCheckAnswer } from "../parts/loop-checks.tsx";
import type { NumberStyle } from "../style/number-style.ts";
import { pointWords, riskWords } from "../texts/decision-texts.ts";
import { forecastAnswer } from "../texts/history-texts.ts";
import { meaningOf, outsideWords, verdictWords, worstWords } from "../texts/page-texts.ts";
import { failedOutputs } from "../texts/switching-texts.ts";

/** The answer: as found and as left side by side, what decided, what is open; outputs and loop check in it. */
export function Answer({ record, style }: { record: CalibrationRecord; style: NumberStyle }) {
  return (
    <section class="answer" aria-labelledby="answer-title">
      <h2 id="answer-title">Result</h2>
      <Incomplete record={record} />
      <div class="answers">
        {phasesOf(record).map((named) => (
          <PhaseAnswer key={named.title} named={named} record={record} style={style} />
        ))}
      </div>
      <FailedOutputs record={record} />
      <FurtherAnswers record={record} />
    </section>
  );
}

function FurtherAnswers({ record }: { record: CalibrationRecord }) {
  const forecast = forecastAnswer(record);
  return (
    <dl class="answer-facts">
      <LoopCheckAnswer record={record} />
      <ImpactAnswer record={record} />
      {forecast && (
        <AnswerFact name="Forecast from the filed records">
          <strong>{forecast}</strong>; 95 % prediction, annex G
        </AnswerFact>
      )}
    </dl>
  );
}

/** The word of the record stands before those of its parts where it was not all proved. */
function Incomplete({ record }: { record: CalibrationRecord }) {
  const { complete, missing, loop, word } = overallOf(record);
  if (complete) return null;
  const beside = isInTolerance(loop) ? "in tolerance where it was read" : "not all of it was read";
  return (
    <div class={`answer-box ${word === "not complete" ? "is-open" : answerClass[word]} not-complete`}>
      <p class="verdict">
        {sentenceCase(word)} <span class="meaning">{word === "not complete" ? beside : "and not complete"}</span>
      </p>
      <ul>
        {missing.map(({ says }) => (
          <li key={says}>{keptTogether(says)}</li>
        ))}
      </ul>
    </div>
  );
}

type PhaseAnswerProps = { named: NamedPhase<PhaseRecord>; record: CalibrationRecord; style: NumberStyle };

function PhaseAnswer({ named: { name, title, phase }, record, style }: PhaseAnswerProps) {
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
  const statement = phaseStatement(record, name) ?? phase.verdict;
  const isWhole = phase.complete || !isInTolerance(statement);
  return (
    <div class={`answer-box ${isWhole ? answerClass[statement] : "is-open"}`}>
      <h3>{title}</h3>
      <p class="verdict">
        {isWhole ? verdictWords[statement].word : "In tolerance where read"}{" "}
        <span class="meaning">{meaningWords(record, phase, statement)}</span>
      </p>
      <ToleranceNotes record={record} phase={name} />
      <p>{outsideWords(record, phase)}</p>
      <WorstOf record={record} phase={phase} style={style} />
      <FailedOutputs record={record} phase={name} />
    </div>
  );
}

/** What the word of a phase means, or what is missing of it; and that its readings alone would have another. */
function meaningWords(record: CalibrationRecord, phase: PhaseRecord, statement: Statement): string {
  if (phase.verdict !== null && statement !== phase.verdict) {
    const readings = `the readings: ${phase.verdict}, ${meaningOf(record, phase.verdict)}`;
    return `by a switched output; ${readings}`;
  }
  const meaning = meaningOf(record, statement);
  if (phase.complete) return meaning;
  const missing = phase.missing.map(({ says }) => says).join("; ");
  return statement.includes("fail") ? `${meaning}; ${missing}` : missing;
}

const wideTolerances: ReadonlySet<string> = new Set(["plausible/tolerance-wide", "plausible/output-tolerance-wide"]);
const fineTolerances: ReadonlySet<string> = new Set(["plausible/tolerance-fine", "plausible/tolerance-none"]);

/** A wide tolerance stands beside the verdict that it makes easy; one too fine to be read beside that of its phase. */
function ToleranceNotes({ record: { warnings }, phase }: { record: CalibrationRecord; phase: PhaseName }) {
  const notes = warnings.filter(
    ({ code, says }) => wideTolerances.has(code) || (fineTolerances.has(code) && says.includes(phaseWords[phase])),
  );
  return notes.map(({ says }) => (
    <p key={says} class="tolerance-note">
      <strong>{keptTogether(sentenceCase(says))}.</strong>
    </p>
  ));
}

type WorstProps = { record: CalibrationRecord; phase: PhaseRecord; style: NumberStyle };

/** The worst reading, and the worst mean with its uncertainty and the risk that is left. */
function WorstOf({ record, phase, style }: WorstProps) {
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
        Switched output <bdi>{output}</bdi>
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
