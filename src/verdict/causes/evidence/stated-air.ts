import { airOf } from "../../../analysis/air/air-effects.ts";
import { speedOfSound } from "../../../analysis/air/speed-of-sound.ts";
import { inUnitOf } from "../../../analysis/stages/staged-readings.ts";
import { isGasOfItsOwn, mediumOf } from "../../../model/medium.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import type { StageEvidence } from "./stage-evidence.ts";

/** What the stated air does to a sensor, percent of span at the two ends; the stage without it. */
export type StatedAir = { gain: number; near: number; far: number; rest: StageEvidence; isStatedUncorrected: boolean };

/** Own choice: how well the temperature of the air between sensor and target is known, K. */
const airKnownWithin = 1;
const perKelvin = 0.0017;

/**
 * What the stated air explains of a sensor's error, and the stage with that taken off.
 *
 * @param evidence of a phase: taught_at, air_temperature, humidity and pressure where they are stated
 * @param stage of the sensor, with a line
 * @returns undefined where it is no ultrasonic sensor, corrects by itself, the air is not stated, the medium is a gas of its own, or its own arithmetic
 *   gives less than matters
 * Source: time of flight, x · (c(taught)/c(day) − 1), with `speedOfSound`; an uncertainty of 1 K is own choice.
 * @example statedAirOf(evidence, stage) // undefined
 */
export function statedAirOf(evidence: CauseEvidence, stage: StageEvidence): StatedAir | undefined {
  const { instrument, calibration, loop, mattering } = evidence;
  const { airTemperature, relativeHumidity, pressure } = calibration;
  const isHeeding =
    instrument.temperatureCompensated !== true &&
    instrument.principle === "ultrasonic" &&
    !isGasOfItsOwn(mediumOf(calibration, instrument));
  if (!isHeeding || instrument.taughtAt === undefined || airTemperature === undefined || stage.line === undefined) {
    return undefined;
  }
  const gain =
    speedOfSound(airOf({ temperatureCelsius: instrument.taughtAt })) /
    speedOfSound(
      airOf({
        temperatureCelsius: airTemperature,
        relativeHumidityPercent: relativeHumidity,
        pressureHectopascals: pressure,
      }),
    );
  const perPercent = inUnitOf(loop, "reference", 1) - inUnitOf(loop, "reference", 0);
  const face = -inUnitOf(loop, "reference", 0) / perPercent;
  const errorAt = (percent: number) => (gain - 1) * (percent - face);
  const [near, far] = [errorAt(0), errorAt(100)];
  if (Math.max(Math.abs(near), Math.abs(far)) <= mattering / 2) return undefined;
  const isStatedUncorrected = instrument.temperatureCompensated === false;
  return {
    gain,
    near,
    far,
    isStatedUncorrected,
    rest: withoutAir(stage, gain - 1, errorAt, airKnownWithin * perKelvin * (100 - face)),
  };
}

/** The line less the air's; what is not known of the air makes it less certain. */
function withoutAir(
  stage: StageEvidence,
  slope: number,
  errorAt: (percent: number) => number,
  unknown: number,
): StageEvidence {
  const line = stage.line as NonNullable<StageEvidence["line"]>;
  const { fit } = line;
  const rest = {
    ...fit,
    slope: fit.slope - slope,
    intercept: fit.intercept - errorAt(0),
    ordinateMean: fit.ordinateMean - errorAt(fit.abscissaMean),
  };
  return {
    ...stage,
    sharedUncertainty: Math.hypot(stage.sharedUncertainty, unknown / 2),
    line: { ...line, fit: rest, gain: line.gain - slope },
  };
}
