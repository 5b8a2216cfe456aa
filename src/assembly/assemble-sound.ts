import { airEffects, airOf, speedsOfSound, withoutAir } from "../analysis/air/air-effects.ts";
import { airError } from "../analysis/air/air-error.ts";
import { type Air, isInStatedRange, speedOfSound } from "../analysis/air/speed-of-sound.ts";
import { loopOf } from "../analysis/readings/loop.ts";
import { toleranceAt } from "../analysis/readings/tolerance.ts";
import { isGasOfItsOwn, type Medium, mediumOf } from "../model/medium.ts";
import { spanOf } from "../model/range.ts";
import type { PhaseName } from "../record/phase-name.ts";
import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import type { SoundRecord } from "../record/sound-schema.ts";
import { effectWeight } from "../verdict/teaching/effect-weight.ts";

/**
 * What the air does to an ultrasonic sensor: the error that the day's air alone explains, what is left without it, and
 * the error to expect in the coldest and the hottest air.
 *
 * References are taken as distances from the sensor's face. The air in which the sensor was taught, and that of the
 * extremes, is known by its temperature alone; 50 % and 1013.25 hPa are taken for it.
 *
 * @param record with its phases
 * @returns the part, where the sensor is ultrasonic
 * Source: O. Cramer, J. Acoust. Soc. Am. 93, 2510 (1993); time of flight; own choice of what is assumed.
 * @example assembleSound(record).sound?.air?.speed // 344.7 at 21 °C, 55 %, 1015 hPa
 */
export function assembleSound(record: CalibrationRecord): Pick<CalibrationRecord, "sound"> {
  const { instrument } = record;
  if (instrument.principle !== "ultrasonic") return {};
  const isCompensated = instrument.temperatureCompensated === true;
  const medium = mediumOf(record.calibration, instrument);
  if (isGasOfItsOwn(medium)) return { sound: soundInGas(isCompensated, medium) };
  const today = airOfDay(record);
  const taught = instrument.taughtAt === undefined ? undefined : airOf({ temperatureCelsius: instrument.taughtAt });
  return {
    sound: {
      isCompensated,
      air: today === undefined ? null : soundAirOf(record, today),
      taught: taught === undefined ? null : { temperature: taught.temperatureCelsius, speed: speedOfSound(taught) },
      effects: today === undefined ? null : effectsOf(record, today),
      errorAtUpperEnd:
        today && taught ? airError(instrument.rangeUpper, speedOfSound(taught), speedOfSound(today)) : null,
      explained: today && taught && !isCompensated ? explainedBy(record, taught, today) : [],
      expected: taught ? extremesOf(record, taught) : [],
      notDetermined: {
        ...(today === undefined && { air: "the air temperature is not stated" }),
        ...(taught === undefined && { taught: "the air temperature when it was taught (taught_at) is not stated" }),
      },
    },
  };
}

/** The formulas are those of air: in another gas nothing of them is said. */
function soundInGas(isCompensated: boolean, medium: Medium): SoundRecord {
  const why = `the medium is stated as ${medium}, and its speed of sound is not that of air`;
  const nothing = { air: null, taught: null, effects: null, errorAtUpperEnd: null, explained: [], expected: [] };
  return { isCompensated, ...nothing, notDetermined: { medium: why } };
}

function airOfDay({ calibration }: CalibrationRecord): Air | undefined {
  const { airTemperature, relativeHumidity, pressure } = calibration;
  if (airTemperature === undefined) return undefined;
  return airOf({
    temperatureCelsius: airTemperature,
    relativeHumidityPercent: relativeHumidity,
    pressureHectopascals: pressure,
  });
}

function soundAirOf({ calibration }: CalibrationRecord, air: Air): SoundRecord["air"] {
  return {
    temperature: air.temperatureCelsius,
    relativeHumidity: air.relativeHumidityPercent,
    pressure: air.pressureHectopascals,
    assumed: [
      ...(calibration.relativeHumidity === undefined ? (["relative humidity"] as const) : []),
      ...(calibration.pressure === undefined ? (["pressure"] as const) : []),
    ],
    ...speedsOfSound(air),
    isInStatedRange: isInStatedRange(air),
  };
}

/** The lesser side of the tolerance at a distance. */
function toleranceOf({ instrument }: CalibrationRecord, reference: number): number {
  const { toleranceTerms, characteristics } = loopOf(instrument);
  const { low, high } = toleranceAt(toleranceTerms, characteristics.signal, reference);
  return Math.min(-low, high);
}

function effectsOf(record: CalibrationRecord, today: Air): SoundRecord["effects"] {
  const reference = record.instrument.rangeUpper;
  const tolerance = toleranceOf(record, reference);
  const { perKelvin, humidity } = airEffects(reference, today);
  const weighed = (distance: number) => ({ distance, weight: effectWeight(distance, tolerance) });
  return { reference, tolerance, perKelvin: weighed(perKelvin), humidity: weighed(humidity) };
}

/** As left only where the sensor still reckons with the air in which it was taught. */
function explainedBy(record: CalibrationRecord, taught: Air, today: Air): SoundRecord["explained"] {
  const { asFound, asLeft } = record.phases;
  const { adjustment = "none" } = record.calibration;
  const isTaughtAnew = adjustment !== "none" && !(adjustment === "re-scale" && asLeft?.judged !== "value");
  const speeds = { taught: speedOfSound(taught), today: speedOfSound(today) };
  return [
    ...(asFound ? explainedIn("asFound", asFound, record, speeds) : []),
    ...(asLeft && !isTaughtAnew ? explainedIn("asLeft", asLeft, record, speeds) : []),
  ];
}

function explainedIn(
  phase: PhaseName,
  { points, readings }: PhaseRecord,
  { instrument }: CalibrationRecord,
  speeds: { taught: number; today: number },
): SoundRecord["explained"] {
  const used = readings.flatMap(({ leftOut, reference, errorDistance }) =>
    leftOut === undefined && errorDistance !== undefined ? [{ reference, error: errorDistance }] : [],
  );
  if (used.length === 0) return [];
  const { worstNow, worstLeft } = withoutAir(used, speeds);
  const means = points.map(({ reference, mean }) => ({ reference, error: mean * (spanOf(instrument) / 100) }));
  return [{ phase, points: means.flatMap((one) => withoutAir([one], speeds).parts), worstNow, worstLeft }];
}

function extremesOf(record: CalibrationRecord, taught: Air): SoundRecord["expected"] {
  const { airMin, airMax, rangeLower, rangeUpper } = record.instrument;
  const extremes = [
    { extreme: "coldest", temperature: airMin },
    { extreme: "hottest", temperature: airMax },
  ] as const;
  return extremes.flatMap(({ extreme, temperature }) => {
    if (temperature === undefined) return [];
    const air = airOf({ temperatureCelsius: temperature });
    const [assumed, speed] = [speedOfSound(taught), speedOfSound(air)];
    return {
      extreme,
      temperature,
      speed,
      isInStatedRange: isInStatedRange(air),
      errorAtLower: airError(rangeLower, assumed, speed),
      errorAtUpper: airError(rangeUpper, assumed, speed),
      toleranceAtUpper: toleranceOf(record, rangeUpper),
    };
  });
}
