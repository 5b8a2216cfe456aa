import type { OverTheYears } from "../../record/over-the-years-schema.ts";
import { writePlain } from "../../units/write-number.ts";
import { driftColumns, historyColumns, type NotesOfRecords } from "../columns/history-columns.tsx";
import { DataTable } from "../table/data-table.tsx";
import { leadingPlaceOf } from "../texts/history-texts.ts";

type TableProps = { years: OverTheYears; unit: string };

/** Every record with what it found and left at the leading place, and the change since the one before. */
export function RecordsTable({ years, unit, notes }: TableProps & { notes?: NotesOfRecords | undefined }) {
  const place = leadingPlaceOf(years);
  const where = place === undefined ? "" : ` at ${writePlain(place.distance)} ${unit}`;
  const title = `Records, with the error${where}`;
  const sameStandards = [...new Set(years.records.flatMap(({ change }) => change?.sameStandards ?? []))].sort();
  return (
    <DataTable
      label={title}
      caption={title}
      kind="plain history"
      columns={historyColumns(unit, notes)}
      rows={years.records}
      classOf={({ isAdjusted }) => (isAdjusted ? "is-break" : undefined)}
    >
      {sameStandards.length > 0 && (
        <p class="small">
          The U of a change leaves out the certificate of {sameStandards.join(", ")} wherever it was the same at both
          visits: what it is off by cancels.
        </p>
      )}
      {years.leftOut.length > 0 && <p class="small">Not taken: {years.leftOut.join("; ")}.</p>}
    </DataTable>
  );
}

/** The drift and the forecast at every test point and at both ends of the fitted line. */
export function DriftTable({ years, unit }: TableProps) {
  const title = "Drift since the last adjustment, and when its forecast meets a limit";
  const columns = driftColumns(unit, leadingPlaceOf(years));
  return (
    <DataTable label={title} caption={title} kind="plain history drifts" columns={columns} rows={years.places}>
      <p class="small">
        Least squares of the error on time, since the last adjustment and from what it left. The band tells where one
        further result is expected, from the scatter of these, pooled over the test points with what a visit does to all
        of them alike taken apart; an error that all of them share, such as that of one standard, is not in it. Limits
        are the tolerance of the last record. The fitted line is that of the sensor.
      </p>
    </DataTable>
  );
}
