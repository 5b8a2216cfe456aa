import type { ImpactRecord } from "../../record/impact-schema.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeWithUncertainty } from "../../units/round-to-uncertainty.ts";
import { writePlain, writeSigned } from "../../units/write-number.ts";
import type { NumberStyle } from "../style/number-style.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { outsideStretchWords, signWords, valueErrorWords, windowWords } from "../texts/impact-texts.ts";
import { endWords } from "../texts/page-texts.ts";
import { AnswerFact } from "./answer-fact.tsx";
import { Fact } from "./fact.tsx";

type ImpactProps = { record: CalibrationRecord; style: NumberStyle };

/** Found out of tolerance: since when, how far, where, and what somebody decided or has yet to decide. */
export function Impact({ record, style }: ImpactProps) {
  const { impact } = record;
  if (impact === undefined) return null;
  return (
    <>
      <p>
        <strong>{windowWords(impact)}</strong> {outsideStretchWords(record, impact, style)}
      </p>
      <ErrorsTable record={record} style={style} impact={impact} />
      <Decision record={record} impact={impact} />
    </>
  );
}

/** One line for the first page. */
export function ImpactAnswer({ record: { impact } }: { record: CalibrationRecord }) {
  if (impact === undefined) return null;
  return (
    <AnswerFact name="What it may have touched">
      <strong>{impact.decision === null ? "not decided yet" : `decided by ${impact.decidedBy ?? "not stated"}`}</strong>
      {impact.since === null ? "" : `; in question since ${impact.since.performedOn}`}; annex F
    </AnswerFact>
  );
}

function ErrorsTable({ record, style, impact }: ImpactProps & { impact: ImpactRecord }) {
  const title = `As found, error of what ${endWords[impact.of]}`;
  return (
    <DataTable label={title} caption={title} columns={errorColumns(record, style, impact)} rows={impact.rows}>
      <p class="small">
        {signWords(impact)} Between test points on a straight line, the worse of rising and falling; an outermost point
        stands for places within 2 % of span beyond it, and nothing is said of others.
      </p>
    </DataTable>
  );
}

type ImpactRow = ImpactRecord["rows"][number];

function errorColumns(
  { instrument: { distanceUnit: unit, valueUnit } }: CalibrationRecord,
  style: NumberStyle,
  { rows }: ImpactRecord,
): readonly Column<ImpactRow>[] {
  const ofValue: Column<ImpactRow> = {
    ...{ heading: "Error", unit: valueUnit, kind: "number" },
    text: ({ errorValue }) => valueErrorWords(errorValue),
  };
  return [
    { heading: "Point", isRowHeader: true, text: ({ name }) => name },
    {
      ...{ heading: "Distance", unit, kind: "number" },
      text: ({ distance }) => writePlain(Number(distance.toPrecision(6))),
    },
    { heading: "Error ± U", unit, kind: "number", text: errorWords },
    ...(rows.some(isValueOfItsOwn) ? [ofValue] : []),
    {
      ...{ heading: "Tolerance", unit, kind: "number" },
      text: ({ toleranceLow, toleranceHigh }) =>
        `${writeSigned(toleranceLow, style.distance)} / ${writeSigned(toleranceHigh, style.distance)}`,
    },
    {
      heading: "Outside",
      cell: ({ isOutside }) => (isOutside === null ? "not known" : isOutside ? <strong>outside</strong> : "inside"),
    },
  ];
}

/** Where the controller shows the distance itself, its error would stand there twice. */
function isValueOfItsOwn({ errorValue, errorDistance }: ImpactRow): boolean {
  if (errorValue === null || errorDistance === null) return false;
  return Math.abs(errorValue - errorDistance) > 1e-9 * Math.abs(errorDistance);
}

function errorWords({ errorDistance, expandedUncertainty }: ImpactRow): string {
  if (errorDistance === null || expandedUncertainty === null) return "not measured there";
  const { value, uncertainty } = writeWithUncertainty(errorDistance, expandedUncertainty);
  return `${errorDistance > 0 ? "+" : ""}${value} ± ${uncertainty}`;
}

/** What was decided; lines for ink where nothing was. */
function Decision({ record: { calibration }, impact }: { record: CalibrationRecord; impact: ImpactRecord }) {
  const isOpen = impact.decision === null;
  return (
    <>
      <dl class="facts impact-facts">
        <Fact name="What it may have touched" value={calibration.affected} />
        <Fact name="Decision" value={impact.decision ?? undefined} />
        <Fact name="Decided by" value={impact.decidedBy ?? undefined} />
        <Fact name="Decided on" value={impact.decidedOn ?? undefined} />
        <Fact name="Owner told on" value={calibration.ownerToldOn} />
      </dl>
      {isOpen && (
        <DataTable
          caption="To be decided and signed, even if the decision is that nothing was touched"
          columns={inkColumns}
          rows={["to be decided"]}
        />
      )}
    </>
  );
}

const inkColumns: readonly Column<string>[] = ["Decision and its reason", "Name", "Date", "Signature"].map(
  (heading) => ({
    ...{ heading, classOf: () => "ink", text: () => "" },
  }),
);
