import { type NamedPhase, phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import { counted } from "../../units/counted.ts";
import type { NumberStyle } from "../style/number-style.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { Definitions } from "./definitions.tsx";
import type { FigureRow } from "./figure-row.tsx";
import { figureRows } from "./figure-rows.tsx";

/** The figures of each phase, side by side, each with what it means; one that cannot be had says why. */
export function FiguresTable({ record, style }: { record: CalibrationRecord; style: NumberStyle }) {
  const phases = phasesOf(record);
  const rows = figureRows(record, style).filter(
    ({ key }) => key !== "loopError" || phases.some(({ phase }) => phase.loopError),
  );
  const keys = rows.map(({ key }) => key);
  return (
    <section aria-labelledby="figures-title">
      <h2 id="figures-title">Figures</h2>
      <p>
        Basis: {record.figureBasis}. {phases.map(({ title, phase }) => countedWords(title, phase)).join(" ")}
      </p>
      <DataTable label="Table of figures" kind="figures" columns={columnsFor(phases)} rows={rows} />
      <Definitions title="Formulas and sources of these figures" keys={keys} said={keys} />
    </section>
  );
}

function columnsFor(phases: readonly NamedPhase<PhaseRecord>[]): readonly Column<FigureRow>[] {
  return [
    {
      ...{ heading: "Figure", isRowHeader: true },
      cell: ({ name, unit }) => (
        <>
          {name} <span class="unit">{unit}</span>
        </>
      ),
    },
    ...phases.map(
      ({ title, phase }): Column<FigureRow> => ({ heading: title, kind: "number", cell: ({ cell }) => cell(phase) }),
    ),
    { heading: "What it is", classOf: () => "meaning", text: ({ meaning }) => meaning },
  ];
}

function countedWords(title: string, { counted: count }: PhaseRecord): string {
  const leftOut = count.leftOut === 0 ? "none left out" : `${count.leftOut} left out`;
  return `${title}: ${counted(count.used, "reading")} used, ${leftOut}, ${counted(count.points, "test point")}, ${counted(count.cycles, "cycle")}.`;
}
