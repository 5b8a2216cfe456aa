import type { Drawing } from "../../charts/drawing/draw.ts";
import { phasesOf } from "../../record/phases-of.ts";
import { spanOf } from "../../record/range.ts";
import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import type { CorrectedCurve, ErrorLeftRecord, NewConstants, ReteachPhase } from "../../record/reteach-schema.ts";
import { writeWithUncertainty } from "../../units/round-to-uncertainty.ts";
import { decimalsForSignificant, writePlain, writeSigned } from "../../units/write-number.ts";
import { Part } from "../annexes/part.tsx";
import { type NumberStyle, percentDecimals } from "../style/number-style.ts";
import type { Column } from "../table/column.ts";
import { DataTable, type RowGroup } from "../table/data-table.tsx";
import { constantsWords, curableWords, insideWords, typedConstants } from "../texts/reteach-texts.ts";
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
    <Part id="reteach" title="What re-teaching could do">
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
      <CorrectionTable record={record} phases={phases} />
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
    </Part>
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

/** What is left after a correction; why it is not known where it is not. */
type LeftRow = { name: string; worst: ErrorLeftRecord | undefined; reason: string };

function CorrectionTable({ record, phases }: TableProps) {
  return (
    <DataTable
      label="Worst error left after corrections"
      caption="Worst error left"
      kind="plain budget"
      columns={leftColumns(record)}
      groups={[...phases.flatMap(curveGroups), ...phases.map(constantsGroup)]}
      instead={({ worst, reason }) => (worst === undefined ? `not determined: ${reason}` : undefined)}
    />
  );
}

function curveGroups(titled: TitledPhase): readonly RowGroup<LeftRow>[] {
  return curvesOf(titled).map(({ part, name, curve }) => {
    const why = (of: string) => titled.phase.notDetermined[`${name}.${of}`] ?? "not in these data";
    return {
      title: `${titled.title}, ${part}`,
      rows: [
        { name: "as it is", worst: curve.now, reason: "" },
        { name: "best two constants", worst: curve.best?.worst, reason: why("best") },
        { name: "re-teach at the end points", worst: curve.ends?.worst, reason: why("ends") },
      ],
    };
  });
}

function constantsGroup({ title, phase: { newConstants, notDetermined } }: TitledPhase): RowGroup<LeftRow> {
  const reason = notDetermined.newConstants ?? "not in these data";
  return {
    title: `${title}, new constants in the controller`,
    rows: [{ name: fromWords(newConstants), worst: newConstants?.worst, reason }],
  };
}

/** The quantity that the new constants were reckoned from. */
function fromWords(constants: NewConstants | null): string {
  if (constants === null) return "from the readings";
  if (constants.kind === "inputs at range ends") return `from the ${constants.of}`;
  return constants.kind === "values at counts" ? "from the counts" : "from what the controller showed";
}

function leftColumns({ instrument }: CalibrationRecord): readonly Column<LeftRow>[] {
  const { distanceUnit: unit } = instrument;
  const ofWorst = (words: (worst: ErrorLeftRecord) => string) => (row: LeftRow) =>
    row.worst === undefined ? "" : words(row.worst);
  return [
    { heading: "Correction", isRowHeader: true, text: ({ name }) => name },
    { heading: "Worst error ± U", unit, kind: "number", text: ofWorst(leftWords) },
    { heading: "% of span", kind: "number", text: ofWorst((worst) => percentWords(worst, spanOf(instrument))) },
    {
      ...{ heading: "At", unit, kind: "number" },
      text: ofWorst(({ point, direction }) => `${writePlain(Number(point.toPrecision(6)))}, ${direction}`),
    },
    { heading: "All inside the acceptance limits", text: ofWorst(({ statement }) => insideWords(statement)) },
  ];
}

function leftWords({ errorDistance, expandedUncertainty }: ErrorLeftRecord): string {
  const { value, uncertainty } = writeWithUncertainty(errorDistance, expandedUncertainty);
  return `${errorDistance > 0 ? "+" : ""}${value} ± ${uncertainty}`;
}

function percentWords({ errorPercentSpan, expandedUncertainty }: ErrorLeftRecord, span: number): string {
  return writeSigned(errorPercentSpan, percentDecimals(decimalsForSignificant(expandedUncertainty, 2), span));
}

function Constants({ record, constants }: { record: CalibrationRecord; constants: NewConstants }) {
  return (
    <>
      <h4>New constants for the controller, if it is to be corrected there</h4>
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
      of the day; see annex H.
    </p>
  );
}
