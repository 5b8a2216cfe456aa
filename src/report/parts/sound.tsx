import type { Drawing } from "../../charts/drawing/draw.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import type { SoundRecord } from "../../record/sound-schema.ts";
import { writeFixed, writePlain, writeSigned } from "../../units/write-number.ts";
import type { NumberStyle } from "../style/number-style.ts";
import { airWords, effectsWords, explainedWords, taughtWords } from "../texts/sound-texts.ts";
import { Definitions } from "./definitions.tsx";
import { Picture } from "./pictures.tsx";

type SoundProps = { record: CalibrationRecord; style: NumberStyle; drawing: Drawing | undefined };

/** Sound in air: what the air of the day does to an ultrasonic sensor, and what other air would do. */
export function Sound({ record, style, drawing }: SoundProps) {
  const { sound } = record;
  if (sound === undefined) return null;
  return (
    <section aria-labelledby="sound-title">
      <h2 id="sound-title">Sound in air</h2>
      {sound.explained.map((explained) => (
        <p key={explained.phase}>
          <strong>{explainedWords(record, explained, style)}</strong>
        </p>
      ))}
      <div class="beside">
        {drawing && <Picture drawing={drawing} kind="half" />}
        <div>
          {sound.air && <p>{airWords(sound.air)}</p>}
          <p>{taughtWords(record, sound, style)}</p>
          {sound.effects && <p>{effectsWords(record, sound.effects, style)}</p>}
          {Object.values(sound.notDetermined).map((reason) => (
            <p key={reason} class="not-determined">
              Not determined: {reason}.
            </p>
          ))}
        </div>
      </div>
      {sound.explained.map((explained) => (
        <ExplainedTable key={explained.phase} record={record} explained={explained} style={style} />
      ))}
      <Expected record={record} sound={sound} style={style} />
      <p class="small">
        The reference distances are taken as measured from the sensor's face; where another datum was used, the error of
        the air is that of the face's distance. The air is taken as the same from sensor to target. Of air in which the
        sensor was taught, and of the extremes, the temperature alone is known.
      </p>
      <Definitions keys={sound.explained.length > 0 ? [...airKeys, "leftWithoutAir"] : airKeys} />
    </section>
  );
}

const airKeys = ["speedOfSound", "speedOfSound.short", "airError"] as const;

type TableProps = { record: CalibrationRecord; explained: SoundRecord["explained"][number]; style: NumberStyle };

function ExplainedTable({ record, explained, style }: TableProps) {
  const unit = record.instrument.distanceUnit;
  const title = `${explained.phase === "asFound" ? "As found" : "As left"}, what the air explains`;
  return (
    <section class="wide" aria-label={title} tabIndex={0}>
      <table class="plain">
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col" class="number">
              Reference, {unit}
            </th>
            <th scope="col" class="number">
              Mean error, {unit}
            </th>
            <th scope="col" class="number">
              Error of the air, {unit}
            </th>
            <th scope="col" class="number">
              Left without it, {unit}
            </th>
          </tr>
        </thead>
        <tbody>
          {explained.points.map(({ reference, error, airError, left }) => (
            <tr key={reference}>
              <th scope="row" class="number">
                {writeFixed(reference, style.distance)}
              </th>
              <td class="number">{writeSigned(error, style.distance)}</td>
              <td class="number">{writeSigned(airError, style.distance)}</td>
              <td class="number">{writeSigned(left, style.distance)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Expected({ record, sound, style }: { record: CalibrationRecord; sound: SoundRecord; style: NumberStyle }) {
  if (sound.expected.length === 0) return null;
  const { distanceUnit: unit, rangeLower, rangeUpper } = record.instrument;
  const title = sound.isCompensated ? "What the sensor corrects at the extremes" : "Error to expect from the air";
  return (
    <section class="wide" aria-label={title} tabIndex={0}>
      <table class="plain">
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">Air</th>
            <th scope="col" class="number">
              Speed of sound, m/s
            </th>
            <th scope="col" class="number">
              At {writePlain(rangeLower)} {unit}
            </th>
            <th scope="col" class="number">
              At {writePlain(rangeUpper)} {unit}
            </th>
            <th scope="col" class="number">
              Tolerance at {writePlain(rangeUpper)} {unit}
            </th>
          </tr>
        </thead>
        <tbody>
          {sound.expected.map((air) => (
            <tr key={air.extreme}>
              <th scope="row">
                {air.extreme}, {writePlain(air.temperature)} °C
                {!air.isInStatedRange && (
                  <span class="where">outside the 0 to 30 °C that the formula is stated for</span>
                )}
              </th>
              <td class="number">{writeFixed(air.speed, 1)}</td>
              <td class="number">{writeSigned(air.errorAtLower, style.distance)}</td>
              <td class="number">{writeSigned(air.errorAtUpper, style.distance)}</td>
              <td class="number">±{writeFixed(air.toleranceAtUpper, style.distance)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
