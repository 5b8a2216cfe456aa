import type { Drawing } from "../../charts/drawing/draw.ts";
import { phaseTitles } from "../../record/phase-name.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import type { SoundRecord } from "../../record/sound-schema.ts";
import { writeFixed, writePlain, writeSigned } from "../../units/write-number.ts";
import { Part } from "../annexes/part.tsx";
import type { NumberStyle } from "../style/number-style.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { airWords, effectsWords, explainedWords, taughtWords } from "../texts/sound-texts.ts";
import { Picture } from "./pictures.tsx";

type SoundProps = { record: CalibrationRecord; style: NumberStyle; drawing: Drawing | undefined };

/** Sound in air: what the air of the day does to an ultrasonic sensor, and what other air would do. */
export function Sound({ record, style, drawing }: SoundProps) {
  const { sound } = record;
  if (sound === undefined) return null;
  return (
    <Part id="sound" title="Sound in air">
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
    </Part>
  );
}

type TableProps = { record: CalibrationRecord; explained: SoundRecord["explained"][number]; style: NumberStyle };

function ExplainedTable({ record, explained, style }: TableProps) {
  const title = `${phaseTitles[explained.phase]}, what the air explains`;
  const columns = explainedColumns(record.instrument.distanceUnit, style.distance);
  return <DataTable label={title} caption={title} columns={columns} rows={explained.points} />;
}

type ExplainedPoint = SoundRecord["explained"][number]["points"][number];

function explainedColumns(unit: string, decimals: number): readonly Column<ExplainedPoint>[] {
  return [
    {
      ...{ heading: "Reference", unit, kind: "number", isRowHeader: true },
      text: ({ reference }) => writeFixed(reference, decimals),
    },
    { heading: "Mean error", unit, kind: "number", text: ({ error }) => writeSigned(error, decimals) },
    { heading: "Error of the air", unit, kind: "number", text: ({ airError }) => writeSigned(airError, decimals) },
    { heading: "Left without it", unit, kind: "number", text: ({ left }) => writeSigned(left, decimals) },
  ];
}

function Expected({ record, sound, style }: { record: CalibrationRecord; sound: SoundRecord; style: NumberStyle }) {
  if (sound.expected.length === 0) return null;
  const title = sound.isCompensated ? "What the sensor corrects at the extremes" : "Error to expect from the air";
  const columns = expectedColumns(record, style.distance);
  return <DataTable label={title} caption={title} columns={columns} rows={sound.expected} />;
}

type ExpectedAir = SoundRecord["expected"][number];

function expectedColumns({ instrument }: CalibrationRecord, decimals: number): readonly Column<ExpectedAir>[] {
  const { distanceUnit: unit, rangeLower, rangeUpper } = instrument;
  const [lower, upper] = [`${writePlain(rangeLower)} ${unit}`, `${writePlain(rangeUpper)} ${unit}`];
  return [
    {
      ...{ heading: "Air", isRowHeader: true },
      text: ({ extreme, temperature }) => `${extreme}, ${writePlain(temperature)} °C`,
    },
    {
      ...{ heading: "Validity", under: "Air" },
      text: ({ isInStatedRange }) => (isInStatedRange ? "" : "outside the 0 to 30 °C that the formula is stated for"),
    },
    { heading: "Speed of sound", unit: "m/s", kind: "number", text: ({ speed }) => writeFixed(speed, 1) },
    { heading: `At ${lower}`, kind: "number", text: ({ errorAtLower }) => writeSigned(errorAtLower, decimals) },
    { heading: `At ${upper}`, kind: "number", text: ({ errorAtUpper }) => writeSigned(errorAtUpper, decimals) },
    {
      ...{ heading: `Tolerance at ${upper}`, kind: "number" },
      text: ({ toleranceAtUpper }) => `±${writeFixed(toleranceAtUpper, decimals)}`,
    },
  ];
}
