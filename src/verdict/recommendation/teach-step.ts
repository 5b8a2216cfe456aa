import { writeFixed } from "../../units/write-number.ts";
import { mostWords, numberWords } from "../loop-check/limit-words.ts";
import { acceptedBelow } from "./accepted-below.ts";
import { exceeds } from "./beside-threshold.ts";
import { remedyOf } from "./cause-remedy.ts";
import { driftReasons } from "./drift-words.ts";
import type { Forecast, ForecastLeft, PhaseState } from "./phase-state.ts";
import { justTaughtWords, leftWords, partWords } from "./state-words.ts";
import { type RecommendedStep, reasonOf, stepOf } from "./step.ts";

/** A forecast that has two constants. */
export type KnownForecast = Forecast & { best: ForecastLeft };

/**
 * Teaching zero and span anew, where that brings the sensor inside.
 *
 * @param forecast what a re-teach would leave
 * @param state of the phase
 * @returns the step; its rule says where there is little in hand
 * Source: `reteach`; own choice of what is little, `usualThresholds`.
 * @example teachStep(curable, state).does // "Teach both ends of the range anew, at 200 mm and 1200 mm."
 */
export function teachStep(forecast: KnownForecast, state: PhaseState): RecommendedStep {
  const { thresholds, scatter, findings } = state;
  const doubts = doubtsOf(forecast.best, state);
  return stepOf({
    action: "re-teach",
    of: "sensor",
    does: teachWords(forecast, state),
    rule:
      doubts.length === 0
        ? `a zero and span error alone: a re-teach leaves ${thresholds.reteachResidualMax} % of the tolerance or less, and two standard deviations of repeated readings are ${thresholds.reteachScatterMax} % or less`
        : "a new zero and span bring it inside, but with little in hand",
    reasons: [
      ...justTaughtWords(state, "It was taught anew just now, and is off all the same."),
      ...findings.filter((finding) => remedyOf(finding).cures === "sensor").map((finding) => reasonOf(finding)),
      isEndsEnough(forecast, state.rule) ? chanceWords(forecast) : bestLineWords(forecast),
      `At best two constants leave ${leftWords(forecast.best, state)} of these very readings: a bound, which new readings seldom reach.`,
      typeof scatter === "number"
        ? `Two standard deviations of repeated readings are ${partWords(scatter)}.`
        : `How far readings repeat is not determined: ${scatter.notDetermined}.`,
      ...driftReasons(state.drift, state.unit),
      ...doubts,
    ],
    before: refusedInside(state) ?? beforeTeaching(findings, scatter),
  });
}

/** From here on it is said that it can cure it: own choice, nine times in ten. */
const sureFrom = 0.9;

/**
 * What to expect of a re-teach, in a sentence: that it can cure it only where new readings surely pass.
 *
 * @param forecast with the chance, where it is known
 * @returns the sentence
 * Source: `chanceOfPass`; the 0.9 is own choice.
 * @example chanceWords({ chanceOfPass: 0.97 }) // "A new zero and span can cure it: new readings pass with a chance of 0.97."
 */
export function chanceWords({ chanceOfPass }: Pick<Forecast, "chanceOfPass">): string {
  if (chanceOfPass === undefined) {
    return "A new zero and span may cure it; the chance that new readings pass is not determined from these.";
  }
  const chance = writeFixed(chanceOfPass, 2);
  if (chanceOfPass > sureFrom) return `A new zero and span can cure it: new readings pass with a chance of ${chance}.`;
  return `A new zero and span may not be enough: new readings pass with a chance of ${chance}.`;
}

/** The chance is that of a teach at both ends, which is not what is advised here. */
function bestLineWords({ chanceOfPass }: Pick<Forecast, "chanceOfPass">): string {
  const advised = "It takes the best line, and for that the chance that new readings pass is not determined";
  if (chanceOfPass === undefined) return `${advised}.`;
  return `${advised}; after a teach at both ends they pass with a chance of ${writeFixed(chanceOfPass, 2)}.`;
}

/** Inside the tolerance, and yet refused: whoever reads this may ask for a better standard instead. */
function refusedInside({ sensor, rule, worstPoint, unit }: PhaseState): string | undefined {
  if (sensor?.statement !== "fail" || exceeds(sensor.worst, 100) || worstPoint === null) return undefined;
  if (rule.name === "simple acceptance") return undefined;
  const { expandedUncertainty, tolerance } = worstPoint;
  const room = acceptedBelow(worstPoint, rule);
  return (
    "Weigh a better standard against it: every reading is inside the tolerance, and the decision rule does not accept " +
    `it, for U is ${numberWords(expandedUncertainty, unit, 2)} and the tolerance ${numberWords(tolerance, unit, 3)}.` +
    (room === undefined ? "" : ` With a U of ${mostWords(room, unit, 2)} or less it would be accepted as it is.`)
  );
}

function doubtsOf(best: ForecastLeft, { thresholds, scatter }: PhaseState): string[] {
  const { reteachResidualMax, reteachScatterMax } = thresholds;
  return [
    ...(exceeds(best.part, reteachResidualMax)
      ? [`It would leave more than ${reteachResidualMax} % of the tolerance: plan to replace the sensor.`]
      : []),
    ...(typeof scatter === "number" && exceeds(scatter, reteachScatterMax)
      ? [`It scatters by more than ${reteachScatterMax} % of the tolerance: look at target and mount as well.`]
      : []),
  ];
}

function isEndsEnough({ ends, best }: KnownForecast, rule: PhaseState["rule"]): boolean {
  return ends?.statement === "pass" || (rule.name === "non-binary guard band" && ends?.statement === best.statement);
}

function teachWords(forecast: KnownForecast, { unit, rangeLower, rangeUpper, rule }: PhaseState): string {
  const [from, to] = [numberWords(rangeLower, unit), numberWords(rangeUpper, unit)];
  if (isEndsEnough(forecast, rule)) return `Teach both ends of the range anew, at ${from} and ${to}.`;
  return `Teach zero and span anew, for the best line over the range: a teach at its ends, ${from} and ${to}, would not do.`;
}

function beforeTeaching(findings: PhaseState["findings"], scatter: PhaseState["scatter"]): string | null {
  const [hidden] = findings.map(remedyOf).flatMap((remedy) => (remedy.cures === "sensor" ? (remedy.before ?? []) : []));
  return hidden ?? (typeof scatter === "number" ? null : "Read a second cycle first, to see that it repeats.");
}

/**
 * Neither taught nor replaced yet: what a re-teach would leave lies inside the tolerance, and the rule does not accept it.
 *
 * @param forecast what a re-teach would leave
 * @param state of the phase
 * @returns the step
 * Source: own choice: what speaks of the standard is not held against the sensor.
 * @example betterStandard(curable, state).of // "standard"
 */
export function betterStandard({ best }: KnownForecast, state: PhaseState): RecommendedStep {
  const { worstPoint, unit } = state;
  return stepOf({
    action: "cannot be decided",
    of: "standard",
    does: "Measure again with a standard of smaller uncertainty before anything is adjusted.",
    rule: "no zero and span would be accepted, and what the best two leave does not condemn the sensor",
    reasons: [
      `The best zero and span would leave ${leftWords(best, state)}; the decision rule does not accept that.`,
      ...(worstPoint === null
        ? []
        : [
            `At the worst point U is ${numberWords(worstPoint.expandedUncertainty, unit, 2)}, the tolerance ${numberWords(worstPoint.tolerance, unit, 3)}.`,
          ]),
    ],
  });
}
