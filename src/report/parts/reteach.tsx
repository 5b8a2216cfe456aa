import type { Drawing } from "../../charts/drawing/draw.ts";
import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import type { CorrectedCurve, ErrorLeftRecord, NewConstants, ReteachPhase } from "../../record/reteach-schema.ts";
import { writeWithUncertainty } from "../../units/round-to-uncertainty.ts";
import { decimalsForSignificant, writePlain, writeSigned } from "../../units/write-number.ts";
import { type NumberStyle, percentDecimals } from "../style/number-style.ts";
import { phasesOf } from "../texts/page-texts.ts";
import { constantsWords, curableWords, insideWords, typedConstants } from "../texts/reteach-texts.ts";
import { Definitions } from "./definitions.tsx";
import { Picture } from "./pictures.tsx";

type ReteachProps = { record: CalibrationRecord; style: NumberStyle; drawing: Drawing | undefined };

/** What re-teaching the sensor, or new constants in the controller, could do; an opinion with its arithmetic. */
export function Reteach({ record, style, drawing }: ReteachProps) {
  const { reteach } = record;
  if (reteach === undefined) return null;
  const phases = phasesOf(record).flatMap(({ name, title, phase: { judged } }): readonly TitledPhase[] => {
    const phase = reteach[name];
    return phase === undefined ? [] : [{ title, phase, judged }];
  });
  const last = phases.at(-1)?.phase;
  return (
    <section aria-labelledby="reteach-title">
      <h2 id="reteach-title">What re-teaching could do</h2>
      {phases.flatMap((titled) =>
        curvesOf(titled).map(({ part, curve }) => {
          const words = curableWords(record, curve, style);
          return (
            words && (
              <p key={titled.title + part}>
                <strong>
                  {titled.title}, {part}.
                </strong>{" "}
                {words}
              </p>
            )
          );
        }),
      )}
      {airNote(record)}
      <section class="wide" aria-label="Worst error left after corrections" tabIndex={0}>
        <CorrectionTable record={record} phases={phases} />
      </section>
      <div class="beside">
        {drawing && <Picture drawing={drawing} kind="half" />}
        <div>
          {last?.newConstants && <Constants record={record} constants={last.newConstants} />}
          <p class="small">
            {record.decisionRule.name === "simple acceptance"
              ? "Every reading is judged here."
              : "The mean of each direction at each test point is judged here, as the decision rule does."}{" "}
            A reading that reported a fault is not among them. U is that of the worst point, taken to stay as it is.
            This is arithmetic on the readings above; a re-teach is proved by new readings.
          </p>
        </div>
      </div>
      <Definitions keys={["bestCorrection", "endsCorrection", "halfSpread", "newConstants"]} />
    </section>
  );
}

type TitledPhase = { title: string; phase: ReteachPhase; judged: PhaseRecord["judged"] };

const partWords = {
  signal: "sensor",
  counts: "sensor and input card",
  value: "what the controller showed",
} as const;

type NamedCurve = { name: "sensor" | "controller"; part: string; curve: CorrectedCurve };

function curvesOf({ phase: { sensor, controller }, judged }: TitledPhase): readonly NamedCurve[] {
  return [
    ...(sensor ? [{ name: "sensor", part: partWords[judged], curve: sensor } as const] : []),
    ...(controller ? [{ name: "controller", part: "what the controller showed", curve: controller } as const] : []),
  ];
}

type TableProps = { record: CalibrationRecord; phases: readonly TitledPhase[] };

function CorrectionTable({ record, phases }: TableProps) {
  const { distanceUnit: unit, rangeLower, rangeUpper } = record.instrument;
  const span = rangeUpper - rangeLower;
  return (
    <table class="plain budget">
      <caption>Worst error left</caption>
      <thead>
        <tr>
          <th scope="col">Correction</th>
          <th scope="col" class="number">
            Worst error ± U, {unit}
          </th>
          <th scope="col" class="number">
            % of span
          </th>
          <th scope="col" class="number">
            At, {unit}
          </th>
          <th scope="col">All inside the acceptance limits</th>
        </tr>
      </thead>
      {phases.flatMap((titled) =>
        curvesOf(titled).map(({ part, name, curve }) => {
          const why = (of: string) => titled.phase.notDetermined[`${name}.${of}`] ?? "not in these data";
          return (
            <tbody key={titled.title + part}>
              <GroupRow title={`${titled.title}, ${part}`} />
              <LeftRow name="as it is" worst={curve.now} reason="" span={span} />
              <LeftRow name="best two constants" worst={curve.best?.worst} reason={why("best")} span={span} />
              <LeftRow name="re-teach at the end points" worst={curve.ends?.worst} reason={why("ends")} span={span} />
            </tbody>
          );
        }),
      )}
      {phases.map(({ title, phase }) => (
        <tbody key={title}>
          <GroupRow title={`${title}, new constants in the controller`} />
          <LeftRow
            name={fromWords(phase.newConstants)}
            worst={phase.newConstants?.worst}
            reason={phase.notDetermined.newConstants ?? "not in these data"}
            span={span}
          />
        </tbody>
      ))}
    </table>
  );
}

function GroupRow({ title }: { title: string }) {
  return (
    <tr>
      <th scope="rowgroup" colSpan={5} class="group">
        {title}
      </th>
    </tr>
  );
}

/** The quantity that the new constants were reckoned from. */
function fromWords(constants: NewConstants | null): string {
  if (constants === null) return "from the readings";
  if (constants.kind === "inputs at range ends") return `from the ${constants.of}`;
  return constants.kind === "values at counts" ? "from the counts" : "from what the controller showed";
}

type RowProps = { name: string; worst: ErrorLeftRecord | undefined; reason: string; span: number };

function LeftRow({ name, worst, reason, span }: RowProps) {
  if (worst === undefined) {
    return (
      <tr>
        <th scope="row">{name}</th>
        <td colSpan={4} class="not-determined">
          not determined: {reason}
        </td>
      </tr>
    );
  }
  const { value, uncertainty } = writeWithUncertainty(worst.errorDistance, worst.expandedUncertainty);
  const percent = percentDecimals(decimalsForSignificant(worst.expandedUncertainty, 2), span);
  return (
    <tr>
      <th scope="row">{name}</th>
      <td class="number">
        {worst.errorDistance > 0 ? "+" : ""}
        {value} ± {uncertainty}
      </td>
      <td class="number">{writeSigned(worst.errorPercentSpan, percent)}</td>
      <td class="number">
        {writePlain(Number(worst.point.toPrecision(6)))}, {worst.direction}
      </td>
      <td>{insideWords(worst.statement)}</td>
    </tr>
  );
}

function Constants({ record, constants }: { record: CalibrationRecord; constants: NewConstants }) {
  return (
    <>
      <h3>New constants for the controller, if it is to be corrected there</h3>
      <dl class="typed">
        {typedConstants(record, constants).map(({ label, value }) => (
          <div key={label} class="fact">
            <dt>{label}</dt>
            <dd>
              <strong>{value}</strong>
            </dd>
          </div>
        ))}
      </dl>
      <p class="small">{constantsWords(record, constants)}</p>
    </>
  );
}

/** A re-teach of a sensor that does not correct for the air holds for air like that of the day. */
function airNote({ sound }: CalibrationRecord) {
  if (sound === undefined || sound.isCompensated) return null;
  return (
    <p>
      <strong>The sensor does not correct for the air:</strong> new constants from these readings hold in air like that
      of the day; see “Sound in air”.
    </p>
  );
}
