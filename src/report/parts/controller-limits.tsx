import type { ControllerLimitRecord } from "../../record/controller-limit-schema.ts";
import { phaseTitles } from "../../record/phase-name.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeFixed, writeSigned } from "../../units/write-number.ts";
import { Part } from "../annexes/part.tsx";
import type { NumberStyle } from "../style/number-style.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { limitSentences, limitWords } from "../texts/controller-limit-texts.ts";

/** Alarms and trips of the controller, and the distance at which each acts with the error that was found. */
export function ControllerLimits({ record, style }: { record: CalibrationRecord; style: NumberStyle }) {
  const { controllerLimits } = record;
  if (controllerLimits === undefined) return null;
  const rows = controllerLimits.flatMap((limit): readonly Row[] =>
    limit.found.length === 0 ? [{ limit, found: undefined }] : limit.found.map((found) => ({ limit, found })),
  );
  return (
    <Part id="controller-limits" title="Limits of the controller" kind="set-point-part">
      <p class="small">
        Where the controller's alarms and trips act on a loop with these mean errors, in the direction of the limit. The
        limits are as stated; nobody tripped them here. Filter and delay come on top.
      </p>
      {controllerLimits.flatMap((limit) =>
        limitSentences(record, limit, style).map((sentence) => (
          <p key={sentence}>
            <strong>{sentence}</strong>
          </p>
        )),
      )}
      <DataTable
        label="Table of the controller's limits"
        kind="plain set-points"
        columns={columnsOf(record, style)}
        rows={rows}
      />
    </Part>
  );
}

type Row = { limit: ControllerLimitRecord; found: ControllerLimitRecord["found"][number] | undefined };

function columnsOf(record: CalibrationRecord, { distance }: NumberStyle): readonly Column<Row>[] {
  const unit = record.instrument.distanceUnit;
  const numbers = { unit, kind: "number" } as const;
  return [
    {
      ...{ heading: "Limit", isRowHeader: true },
      text: ({ limit }) => [limit.limit, limit.kind].filter((word) => word !== undefined).join(", "),
    },
    { heading: "Acts", text: ({ limit }) => limitWords(record, limit) },
    { heading: "Final action", text: ({ limit }) => limit.finalAction ?? "" },
    { heading: "Readings", text: ({ found }) => (found === undefined ? "" : phaseTitles[found.phase]) },
    { ...numbers, heading: "Meant at", text: ({ limit }) => writeFixed(limit.meant, distance) },
    {
      ...numbers,
      heading: "Acts at",
      text: ({ found }) => shown(found?.actedAt, (value) => writeFixed(value, distance), found?.notDetermined),
    },
    {
      ...numbers,
      heading: "Off by",
      text: ({ limit, found }) => shown(found?.actedAt, (value) => writeSigned(value - limit.meant, distance)),
    },
    {
      ...numbers,
      heading: "±U",
      text: ({ found }) => shown(found?.expandedUncertainty, (value) => writeFixed(value, distance)),
    },
  ];
}

function shown(value: number | null | undefined, write: (value: number) => string, why?: string): string {
  if (value === undefined || value === null) return why === undefined ? "" : `not determined: ${why}`;
  return write(value);
}
