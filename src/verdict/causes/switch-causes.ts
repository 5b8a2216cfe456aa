import { isDetermined } from "../../analysis/figure.ts";
import { spanOf } from "../../analysis/ideal-characteristic.ts";
import { switchedOutput, type TripMean } from "../../analysis/switched-output.ts";
import type { Output } from "../../model/instrument.ts";
import { studentTQuantile } from "../../numeric/student-t-quantile.ts";
import { inputMatch } from "../input-match.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { causeTitles, type Evidence, type Finding, rivalName } from "./finding.ts";
import { lineErrorAt } from "./stage-evidence.ts";
import { thresholds } from "./thresholds.ts";

/**
 * Rows 27 and 32: a switched output that trips in the wrong place, or that its input cannot read.
 *
 * A sensor that indicates too much by e switches too early by e. If the output trips off by about −e, what moved is what
 * both share: mount, datum, air. If the analog value is right there and the trip is not, the teach of the switch moved.
 *
 * @param evidence of a phase
 * @returns findings for each output of the tag
 * Source: own reckoning, as `setPointShares`; common practice of the trade for PNP and NPN.
 * @example switchCauses(evidence)[0].row // 27
 */
export function switchCauses(evidence: CauseEvidence): readonly Finding[] {
  return evidence.outputs.flatMap((output) => [...mismatch(evidence, output), ...switchPoint(evidence, output)]);
}

function mismatch({ trips }: CauseEvidence, output: Output): readonly Finding[] {
  const match = inputMatch(output);
  if (!isDetermined(match) || match.statement === "pass") return [];
  const seen = trips.filter((trip) => trip.output === output.output).length;
  return [
    {
      row: 32,
      title: causeTitles[32] as string,
      stage: "switched output",
      says: `${output.output} is a ${output.polarity} output on a ${output.controllerInput} input, where it needs a ${match.needs} one. This is consistent with an input that never changes, or stands at 1 through a leakage.`,
      evidence: [{ name: "changes of state that were recorded", value: seen, unit: "" }],
      rivals: ["a wrong entry in the table outputs: labels of inputs differ from maker to maker"],
      separatedBy: "watch the sensor's indicator and the input bit together, and measure which way the current flows",
    },
  ];
}

function switchPoint(evidence: CauseEvidence, output: Output): readonly Finding[] {
  const { operating } = switchedOutput(evidence.trips.filter((trip) => trip.output === output.output));
  const sensor = evidence.stages.find(({ stage }) => stage === "sensor");
  if (!isDetermined(operating) || sensor?.line === undefined) return [];
  const span = spanOf(evidence.loop.characteristics.signal);
  const off = operating.mean - output.setPoint;
  const least =
    output.setPointTolerance === undefined
      ? (evidence.mattering / 100) * span
      : thresholds.matteringPartOfTolerance * output.setPointTolerance;
  if (Math.abs(off) <= least || Math.abs(off) <= tripFactor(operating) * tripUncertainty(operating)) return [];
  const place = (100 * (output.setPoint - evidence.instrument.rangeLower)) / span;
  const analog = lineErrorAt(sensor, place);
  const shift = (-analog.percentSpan * span) / 100;
  const unsure = Math.hypot((2 * analog.standardUncertainty * span) / 100, 2 * tripUncertainty(operating));
  return [findingOf(evidence, output, { off, shift, unsure: Math.max(unsure, least / 2) })];
}

/** A few trips only: twice their uncertainty, as Student's t has it for so few. */
function tripFactor({ count }: TripMean): number {
  return studentTQuantile(0.97725, Math.max(1, count - 1));
}

/** With one trip nothing tells the scatter: the trip is taken as it is. */
function tripUncertainty({ standardDeviation, count }: TripMean): number {
  return isDetermined(standardDeviation) ? standardDeviation / Math.sqrt(count) : 0;
}

function findingOf(
  { instrument }: CauseEvidence,
  output: Output,
  { off, shift, unsure }: { off: number; shift: number; unsure: number },
): Finding {
  const unit = instrument.distanceUnit;
  const isShared = Math.abs(off - shift) <= Math.max(unsure, Math.abs(off) / 4);
  const isTeach = Math.abs(shift) <= Math.max(unsure, Math.abs(off) / 4);
  const numbers: Evidence[] = [
    { name: "set point", value: output.setPoint, unit },
    { name: "switches off it by", value: off, unit },
    { name: "the analog value explains", value: shift, unit },
  ];
  const name = output.output;
  const says = isShared
    ? `${name} trips off its set point by what the analog value is off, too. This is consistent with a shift that both share: mount, datum or air.`
    : isTeach
      ? `The analog value is right near the set point of ${name}, and its trip is not. This is consistent with a switch point that drifted or was taught elsewhere.`
      : `${name} trips off its set point by more than the analog value explains. This is consistent with a shift that both share and a switch point that was taught elsewhere.`;
  return {
    row: 27,
    title: isShared ? "switch point and analog value shifted together" : (causeTitles[27] as string),
    stage: "switched output",
    says,
    evidence: numbers,
    rivals: isShared ? [rivalName(10), rivalName(20)] : isTeach ? [] : [rivalName(10)],
    separatedBy:
      "read the taught set point from the sensor, and compare it with the distance that the sensor shows at the trip",
  };
}
