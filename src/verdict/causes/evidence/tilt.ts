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
 * @example tiltOf(1.0154) // 10.0
 */
export function tiltOf(gain: number): number {
  return (Math.acos(Math.min(gain, 1 / gain)) * 180) / Math.PI;
}

/**
 * The tilt that fits a gain about the face of a sensor that sends a beam, where nothing that is stated contradicts it.
 *
 * @param evidence of a phase: principle, beam_angle, alignment_angle, target_tilt
 * @param gain about the face
 * @returns of the axis where it reads long; of the target where an ultrasonic or a radar sensor reads short, and its beam
 *   is wide enough for that echo
 * Source: `tiltOf`; that a tilt which is stated is known within 1° is own choice. A laser sees where its axis meets the
 *   target, however that stands.
 * @example tiltThatFits({ instrument: { principle: "laser" }, calibration: {} }, 1.0154) // "axis-tilted"
 */
export function tiltThatFits(
  { instrument, calibration }: Pick<CauseEvidence, "instrument" | "calibration">,
  gain: number,
): "axis-tilted" | "target-tilted" | undefined {
  const { principle, beamAngle = 180 } = instrument;
  const needed = tiltOf(gain);
  const isFitting = (stated: number | undefined) => stated === undefined || needed <= stated + angleKnownWithin;
  const isEcho = principle === "ultrasonic" || principle === "radar";
  const isOptical = principle === "laser" || principle === "photoelectric";
  if (gain > 1) return (isEcho || isOptical) && isFitting(calibration.alignmentAngle) ? "axis-tilted" : undefined;
  const isSeen = isEcho && needed <= beamAngle / 2;
  return isSeen && isFitting(calibration.targetTilt) ? "target-tilted" : undefined;
}
