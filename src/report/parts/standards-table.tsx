import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writePlain } from "../../units/write-number.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { withUnit } from "./stated-facts.ts";

/** The standards used, each with its certificate, its due date and its uncertainty. */
export function StandardsTable({ record }: { record: CalibrationRecord }) {
  if (record.standards.length === 0) {
    return <p>Standards used: none is named, so this record does not show to what its results are traceable.</p>;
  }
  return (
    <DataTable
      label="Standards used"
      caption="Standards used; through their certificates the results are traceable as stated"
      columns={standardColumns}
      rows={record.standards}
    />
  );
}

type Standard = CalibrationRecord["standards"][number];

/** A column of what may not be stated. */
function stated(heading: string, words: (standard: Standard) => string | undefined, kind?: "day"): Column<Standard> {
  return {
    ...{ heading, text: (standard) => words(standard) ?? "", ...(kind && { kind }) },
    cell: (standard) => (words(standard) ? <bdi>{words(standard)}</bdi> : <span class="not-stated">not stated</span>),
  };
}

const standardColumns: readonly Column<Standard>[] = [
  { heading: "Standard", isRowHeader: true, cell: ({ standard }) => <bdi>{standard}</bdi> },
  stated("What it is", ({ description, serial }) => [description, serial].filter(Boolean).join(", ")),
  stated("Certificate", ({ certificate }) => certificate),
  stated("Calibrated on", ({ calibratedOn }) => calibratedOn, "day"),
  stated("Due on", ({ dueOn }) => dueOn, "day"),
  stated("Traceable to", ({ traceableTo }) => traceableTo),
  stated("U (k)", standardUncertaintyWords),
  stated("Resolution", ({ resolution, uncertaintyUnit }) => withUnit(resolution, uncertaintyUnit)),
];

/** "0.9 mm (k = 2)"; nothing where it is not stated. */
export function standardUncertaintyWords(standard: Standard): string | undefined {
  const uncertainty = withUnit(standard.expandedUncertainty, standard.uncertaintyUnit);
  if (uncertainty === undefined) return undefined;
  return standard.coverageFactor === undefined
    ? `${uncertainty} (k not stated)`
    : `${uncertainty} (k = ${writePlain(standard.coverageFactor)})`;
}
