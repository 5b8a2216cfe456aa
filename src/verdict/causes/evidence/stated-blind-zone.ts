import type { LonePoint } from "../../../analysis/figures/lone-point.ts";
import { inUnitOf } from "../../../analysis/stages/staged-readings.ts";
import type { Sighting } from "../cause.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { placeNumber, placeOf } from "./line-words.ts";
import { lonePoints } from "./lone-points.ts";

/**
 * Whether a test point that is off alone is the nearest one, and lies inside the blind zone that is stated.
 *
 * @param evidence of a phase
 * @param lone the point
 * @returns false where no blind zone is stated
 * Source: the instrument's row.
 * @example isInStatedBlindZone(evidence, { point: 0, end: "lower" }) // false
 */
export function isInStatedBlindZone(
  { instrument: { blindZone }, loop }: CauseEvidence,
  { point, end }: Pick<LonePoint, "point" | "end">,
): boolean {
  return blindZone !== undefined && end === "lower" && inUnitOf(loop, "reference", point) < blindZone;
}

/**
 * The sighting of a blind zone in one test point that is off alone, where the row of the instrument states the zone.
 *
 * @param evidence of a phase
 * @returns one where the nearest point of the sensor's stage is off alone and inside the stated zone
 * Source: `lonePoint`; the instrument's row.
 * @example statedBlindZoneSightings(evidence) // []
 */
export function statedBlindZoneSightings(evidence: CauseEvidence): readonly Sighting[] {
  const { loop, instrument } = evidence;
  const unit = instrument.distanceUnit;
  return lonePoints(evidence)
    .filter(({ stage, lone }) => placeOf(stage.stage) === "sensor" && isInStatedBlindZone(evidence, lone))
    .map(({ lone }) => ({
      says: `The nearest test point, ${placeNumber(inUnitOf(loop, "reference", lone.point))} ${unit}, lies inside the stated blind zone of ${placeNumber(instrument.blindZone as number)} ${unit}, and its readings are off, all alike, while all others lie on one line. This is consistent with a target inside the blind zone of the sensor.`,
      evidence: [
        { name: "distance from the line of the others", value: lone.deviation, unit: "% of span" },
        { name: "farthest of the others from it", value: lone.others, unit: "% of span" },
        { name: "readings there", value: lone.members.length, unit: "" },
      ],
      rivals: ["reference-position-off"],
    }));
}
