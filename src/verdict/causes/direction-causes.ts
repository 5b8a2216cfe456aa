import type { DirectionGap } from "../../analysis/figures/direction-gap.ts";
import { spanOf } from "../../model/range.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { type CausePlace, causeTitles, type Evidence, type Finding, rivalName } from "./finding.ts";
import { placeOf } from "./line-words.ts";
import { isSignificant, type StageEvidence } from "./stage-evidence.ts";
import { thresholds } from "./thresholds.ts";
import { drifts } from "./time-causes.ts";

/** Row 22 where the gap closes at both ends: the sensor itself, what guides the target, or the dwell. */
export const hysteresisTitle = "hysteresis, or an output not settled when it was read";

/**
 * Rows 22 and 23: rising readings that lie apart from falling ones, the same way in every cycle.
 *
 * Play in the rig leaves the same gap everywhere, at the two ends of the range too. A lag leaves half of it at the ends,
 * where the target turned round and the output had settled once. A hysteresis closes at both ends.
 *
 * @param evidence of a phase
 * @returns a finding for each stage with such a gap
 * Source: own reckoning of a lag and of play at the turning points; IEC 61298-2:2008 for the gap itself.
 * @example directionCauses(evidence)[0].row // 23
 */
export function directionCauses(evidence: CauseEvidence): readonly Finding[] {
  return evidence.stages.flatMap((stage) => {
    const { gap } = stage;
    return gap !== undefined && isApart(stage, gap, evidence.mattering) ? [findingOf(evidence, stage, gap)] : [];
  });
}

function isApart(stage: StageEvidence, gap: DirectionGap, mattering: number): boolean {
  const { inner, innerStandardUncertainty, degreesOfFreedom, byCycle } = gap;
  const isInEachCycle = byCycle.every((one) => one / inner >= thresholds.gapOfEachCycle);
  const isOverDrift = !drifts(stage, mattering) || Math.abs(inner) > Math.abs(stage.drift?.total ?? 0);
  return (
    Math.abs(inner) > Math.max(mattering, stage.resolution) &&
    isSignificant(inner, innerStandardUncertainty, degreesOfFreedom) &&
    isInEachCycle &&
    isOverDrift
  );
}

type Named = { row: 22 | 23; title: string; stage: CausePlace; says: string; rivals: string[] };

function findingOf(evidence: CauseEvidence, stage: StageEvidence, gap: DirectionGap): Finding {
  const named = namedOf(stage, gap);
  return {
    ...named,
    says: `${gapWords(gap)} ${named.says}`,
    evidence: gapNumbers(evidence, gap),
    separatedBy:
      named.row === 23
        ? "approach one point from below and from above with the play taken up, or read it with another sensor on the same rig"
        : "read one inner point again after five times the dwell, coming from below and from above",
  };
}

function namedOf(stage: StageEvidence, gap: DirectionGap): Named {
  const { inner, outer, outerStandardUncertainty } = gap;
  const isSensor = placeOf(stage.stage) === "sensor";
  const ratio = outer === undefined ? undefined : outer / inner;
  const unsure = ratio === undefined ? 1 : outerStandardUncertainty / Math.abs(inner);
  const mayBe = (limit: number, side: 1 | -1) => ratio === undefined || side * (ratio - limit) < 2 * unsure;
  const isPlay = isSensor && ratio !== undefined && ratio >= thresholds.playFrom;
  const isLoop = ratio !== undefined && ratio < thresholds.lagFrom;
  const hysteresis = "hysteresis of the sensor or of what guides the target";
  if (isPlay) {
    return {
      row: 23,
      title: causeTitles[23] as string,
      stage: "rig",
      says: "The gap is the same at the ends of the range. This is consistent with play in the rig that moves the target.",
      rivals: mayBe(thresholds.playFrom, 1) ? [rivalName(22)] : [],
    };
  }
  if (isLoop) {
    return {
      row: 22,
      title: hysteresisTitle,
      stage: placeOf(stage.stage),
      says: "It closes at both ends of the range. This is consistent with hysteresis of the sensor or of what guides the target, or with an output that had settled only at the ends.",
      rivals: [],
    };
  }
  const isPlayOpen = isSensor && mayBe(thresholds.playFrom, -1);
  return {
    row: 22,
    title: causeTitles[22] as string,
    stage: placeOf(stage.stage),
    says: "It is smaller where the target turned round. This is consistent with an output that had not settled when it was read: a filter or damping.",
    rivals: [...(isPlayOpen ? [rivalName(23)] : []), hysteresis],
  };
}

function gapWords({ inner }: DirectionGap): string {
  return `Rising readings lie ${inner < 0 ? "below" : "above"} falling ones, the same way in every cycle.`;
}

function gapNumbers({ loop, instrument }: CauseEvidence, gap: DirectionGap): Evidence[] {
  const { inner, outer } = gap;
  const distancePerPercent = spanOf(loop.characteristics.signal) / 100;
  return [
    {
      name: "rising minus falling, inside",
      value: inner,
      unit: "% of span",
      standardUncertainty: gap.innerStandardUncertainty,
    },
    { name: "the same in distance", value: inner * distancePerPercent, unit: instrument.distanceUnit },
    ...(outer === undefined
      ? []
      : [
          {
            name: "rising minus falling, at the ends",
            value: outer,
            unit: "% of span",
            standardUncertainty: gap.outerStandardUncertainty,
          },
        ]),
  ];
}
