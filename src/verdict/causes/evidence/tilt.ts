import type { CauseEvidence } from "./cause-evidence.ts";

/** Own choice: how well an angle is known that was measured on site, °. */
const angleKnownWithin = 1;

/**
 * The tilt that makes a reading too long or too short by a gain about the face: arccos(1/g) of the axis, arccos(g) of the
 * target.
 *
 * @param gain about the face of the sensor, above 0
 * @returns degrees
 * Source: geometry. Along an axis that slants by θ the way to a square target is r / cos θ; a tilted flat target throws
 *   back the ray that meets it square, and that one is r · cos θ long.
 * @example tiltOf(1.0154266) // 10.000
 */
export function tiltOf(gain: number): number {
  return (Math.acos(Math.min(gain, 1 / gain)) * 180) / Math.PI;
}

type Tilted = "axis-tilted" | "target-tilted";

/**
 * The tilt that a gain about the face of a sensor is named by: what shows it beside the gain.
 *
 * @param evidence of a phase: principle, beam_angle, alignment_angle, target_tilt
 * @param gain about the face
 * @returns of the axis where a narrow beam of light or radar reads long; of the target where an echo reads as short as the
 *   tilt that is stated makes it
 * Source: `tiltOf`; that an angle is known within 1° is own choice. A laser sees where its axis meets the target, however
 *   that stands; sound finds the square ray, however its axis stands.
 * @example tiltThatShows({ instrument: { principle: "laser" }, calibration: {} }, 1.0154) // "axis-tilted"
 */
export function tiltThatShows(evidence: Stated, gain: number): Tilted | undefined {
  const open = tiltThatFits(evidence, gain);
  if (open === "axis-tilted") return evidence.instrument.principle === "ultrasonic" ? undefined : open;
  const { targetTilt } = evidence.calibration;
  const isStated = targetTilt !== undefined && Math.abs(tiltOf(gain) - targetTilt) <= angleKnownWithin;
  return isStated ? open : undefined;
}

type Stated = Pick<CauseEvidence, "instrument" | "calibration">;

/**
 * The tilt that may make a gain about the face of a sensor that sends a beam, where nothing that is stated contradicts it.
 *
 * @param evidence of a phase: principle, beam_angle, alignment_angle, target_tilt
 * @param gain about the face
 * @returns of the axis where it reads long; of the target where an ultrasonic or a radar sensor reads short, and its beam
 *   is wide enough for that echo
 * Source: as above.
 * @example tiltThatFits({ instrument: { principle: "ultrasonic" }, calibration: {} }, 0.9848) // "target-tilted"
 */
export function tiltThatFits({ instrument, calibration }: Stated, gain: number): Tilted | undefined {
  const { principle, beamAngle = 180 } = instrument;
  const needed = tiltOf(gain);
  const isFitting = (stated: number | undefined) => stated === undefined || needed <= stated + angleKnownWithin;
  const isEcho = principle === "ultrasonic" || principle === "radar";
  const isOptical = principle === "laser" || principle === "photoelectric";
  if (gain > 1) return (isEcho || isOptical) && isFitting(calibration.alignmentAngle) ? "axis-tilted" : undefined;
  const isSeen = isEcho && needed <= beamAngle / 2;
  return isSeen && isFitting(calibration.targetTilt) ? "target-tilted" : undefined;
}
