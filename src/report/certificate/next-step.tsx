import { phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { keptTogether } from "../kept-together.ts";
import { causeOnFirstPage } from "../texts/cause-texts.ts";
import { interimWords } from "../texts/if-left-texts.ts";
import { constantsWords, firstReasons, headlineParts, recommendationNow } from "../texts/recommendation-texts.ts";

/** What to do next in a line or two, with its first reason, as an opinion. */
export function NextStep({ record }: { record: CalibrationRecord }) {
  const now = recommendationNow(record);
  if (now === undefined) return null;
  const interim = interimWords(record);
  return (
    <section class="next-step" aria-labelledby="next-step-title">
      <h2 id="next-step-title">{now.phase === "asLeft" ? "What to do now" : "What to do"}</h2>
      <p>
        <strong class="do">{keptTogether(headlineParts(now.steps).join(", "))}.</strong>{" "}
        {keptTogether(stepWords(record, now))}
        <Causes record={record} />{" "}
        {interim && (
          <>
            <strong>Meanwhile:</strong> {interim}{" "}
          </>
        )}
        <span class="opinion">An opinion, for an authorised person to agree to; annex E.</span>
      </p>
    </section>
  );
}

type Now = NonNullable<ReturnType<typeof recommendationNow>>;

/** Steps for which the sheet has room. */
const mostSteps = 2;

function stepWords(record: CalibrationRecord, { phase, steps }: Now): string {
  const shown = steps.slice(0, mostSteps).map((step, index) => {
    const words = oneStep(record, phase, step, steps.length);
    return steps.length > 1 ? `${index + 1}. ${words}` : words;
  });
  const rest = steps.length - shown.length;
  return [...shown, ...(rest > 0 ? [`${rest} more in annex E.`] : [])].join(" ");
}

/** What a step is, what to type in, and the reasons for which there is room. */
function oneStep(record: CalibrationRecord, phase: Now["phase"], step: Now["steps"][number], steps: number): string {
  const constants = constantsWords(record, phase, step);
  const reasons = firstReasons(step, steps).map(({ says }) => says);
  return [
    ...(step.action === "leave" ? [] : [step.does]),
    ...(constants === undefined ? [] : [`Constants: ${constants}`]),
    `Why: ${reasons.join(" ")}`,
    ...(step.before === null ? [] : [`Before that: ${step.before}`]),
  ].join(" ");
}

/** The likely causes, where no reason says them. */
function Causes({ record }: { record: CalibrationRecord }) {
  return phasesOf(record).map(({ name, title }) => {
    const cause = causeOnFirstPage(record, name);
    return (
      cause && (
        <span key={name}>
          {" "}
          <strong>Likely cause, {title.toLowerCase()} (opinion):</strong> {keptTogether(cause.says)}
          {cause.others > 0 && ` ${cause.others} more in annex E.`}
        </span>
      )
    );
  });
}
