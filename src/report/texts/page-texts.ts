import { sentenceCase } from "../../charts/chart-words.ts";
import { faultsIn } from "../../record/loop-end.ts";
import type { CalibrationRecord, PhaseRecord, Statement } from "../../record/record-schema.ts";
import { toleranceWords } from "../../record/tolerance-words.ts";
import { counted } from "../../units/counted.ts";
import { writeFixed, writeSigned } from "../../units/write-number.ts";
import type { NumberStyle } from "../style/number-style.ts";

/** What a verdict means for the loop, in the words of the first page. */
export const verdictWords: Record<Statement, { word: string; meaning: string }> = {
  pass: { word: "Pass", meaning: "in tolerance" },
  "conditional pass": {
    word: "Conditional pass",
    meaning: "in tolerance, but closer to the limit than the guard band",
  },
  "conditional fail": { word: "Conditional fail", meaning: "out of tolerance, by less than the guard band" },
  fail: { word: "Fail", meaning: "not inside the acceptance limits" },
  "cannot be decided": { word: "Cannot be decided", meaning: "the uncertainty is too large for this tolerance" },
};

/** Simple acceptance has no guard band, so that its fail says no more than that. */
export function meaningOf(record: CalibrationRecord, statement: Statement): string {
  const isPlainFail = statement === "fail" && record.decisionRule.name === "simple acceptance";
  return isPlainFail ? "out of tolerance" : verdictWords[statement].meaning;
}

/** The tolerance as it is understood and, where it was written in words, as it was written. */
export function toleranceFact({ instrument, inputs }: CalibrationRecord): string {
  const written = inputs.rows.instruments[0]?.cells.tolerance ?? "";
  const understood = toleranceWords(instrument);
  return /[^\d\s.,±]/u.test(written) && written !== understood ? `${understood} (written: ${written})` : understood;
}

/** Where the worst reading of a phase lies: "+14.2 mm (+0.79 % of span) at 1650 mm, 158 % of the tolerance there". */
export function worstWords(record: CalibrationRecord, phase: PhaseRecord, style: NumberStyle): string | undefined {
  const { worst } = phase;
  if (worst === null) return undefined;
  const unit = record.instrument.distanceUnit;
  const reading = phase.readings.find(({ row }) => row === worst.row);
  const at = writeFixed(reading?.reference ?? 0, phase.decimals.reference);
  const share =
    worst.partOfTolerance === null
      ? "where the tolerance is zero"
      : `${writeFixed(100 * worst.partOfTolerance, 0)} % of the tolerance there`;
  return (
    `${writeSigned(worst.errorDistance, style.distance)} ${unit} ` +
    `(${writeSigned(worst.errorPercentSpan, style.percent)} % of span) at ${at} ${unit}, ${share}`
  );
}

/** How many readings, and how many test points, hold; and of which part of the loop the verdict speaks. */
export function outsideWords(record: CalibrationRecord, phase: PhaseRecord): string {
  const outside = phase.readings.filter(({ verdict }) => verdict === "fail").length;
  const judged = phase.readings.filter(({ verdict }) => verdict !== undefined).length;
  const faults = faultsIn(phase);
  const railed = phase.readings.filter((reading) => reading.railed !== undefined).length;
  const count =
    outside === 0
      ? `${allOf(judged, "reading lies", "readings lie")} inside`
      : outside === judged
        ? `${allOf(judged, "reading lies", "readings lie")} outside`
        : `${outside} of ${judged} readings ${outside === 1 ? "lies" : "lie"} outside`;
  const faultNote = faults === 0 ? "" : `; ${faults} of them reported a fault instead of a distance`;
  const railNote =
    railed === 0
      ? ""
      : `; ${counted(railed, "reading stands", "readings stand")} at an end of the signal, at or beyond`;
  return `${partsWords(phase)}${pointsWords(record, phase)}${count} the tolerance${faultNote}${railNote}.`;
}

function pointsWords({ decisionRule }: CalibrationRecord, { points, endOf, endPoints = [] }: PhaseRecord): string {
  if (decisionRule.name === "simple acceptance") return "";
  const sensor = passedOf(points);
  if (endPoints.length === 0) return `${sentenceCase(sensor)}. `;
  return `Sensor: ${sensor}; ${endOf}: ${passedOf(endPoints)}. `;
}

function passedOf(points: readonly { statement: Statement }[]): string {
  const passed = points.filter(({ statement }) => statement === "pass").length;
  if (passed === points.length) return allOf(passed, "test point passes", "test points pass").toLowerCase();
  return `${passed} of ${points.length} test points ${passed === 1 ? "passes" : "pass"}`;
}

/** "All 12 readings lie", "The only reading lies". */
function allOf(count: number, one: string, many: string): string {
  return count === 1 ? `The only ${one}` : `All ${count} ${many}`;
}

/** A word for each stage that was read, where they differ: "The sensor alone: pass; with the input card: fail. " */
function partsWords({ verdicts, judged }: PhaseRecord): string {
  const { sensor, wiring, inputCard, controller } = verdicts;
  if (judged === "value") return "";
  const words = [
    ["the sensor alone", sensor],
    ["the signal at the input card", wiring],
    ["the raw counts", inputCard],
    ["what the controller shows", controller],
  ].filter((pair): pair is [string, Statement] => typeof pair[1] === "string");
  if (new Set(words.map(([, word]) => word)).size < 2) return "";
  return `${sentenceCase(words.map(([name, word]) => `${name}: ${word}`).join("; "))}. `;
}

/** What the end of the loop did, in a sentence or after "what". */
export const endWords: Readonly<Record<PhaseRecord["endOf"], string>> = {
  sensor: "the sensor gave",
  wiring: "the signal at the input card gave",
  "input card": "the raw counts gave",
  controller: "the controller showed",
};
