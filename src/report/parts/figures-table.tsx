import type { FigureKey } from "../../record/figure-definitions.ts";
import { type NamedPhase, phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import { counted } from "../../units/counted.ts";
import type { NumberStyle } from "../style/number-style.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { endWords } from "../texts/page-texts.ts";
import type { FigureRow } from "./figure-row.tsx";
import { figureRows } from "./figure-rows.tsx";

/** The figures of each phase, side by side, one that cannot be had says why; what each is stands in the glossary. */
export function FiguresTable({ record, style }: { record: CalibrationRecord; style: NumberStyle }) {
  const phases = phasesOf(record);
  const shown: ReadonlySet<string> = new Set(figureKeysOf(record));
  const rows = figureRows(record, style).filter(({ key }) => shown.has(key));
  const title = figuresTitle(record);
  return (
    <>
      <p>
        Basis: {record.figureBasis}. {phases.map(({ title, phase }) => countedWords(title, phase)).join(" ")} What each
        figure is, its formula and its source: annex J.
      </p>
      <DataTable
        label="Table of figures"
        {...(title !== "Figures" && { caption: title })}
        kind="figures"
        columns={columnsFor(phases)}
        rows={rows}
      />
    </>
  );
}

/** The figures are of the first stage that was read; where a later one decides, their heading says of what. */
export function figuresTitle(record: CalibrationRecord): string {
  const later = phasesOf(record).find(({ phase }) => phase.endOf !== "sensor");
  if (later === undefined) return "Figures";
  const first = later.phase.judged === "counts" ? "input card" : "sensor";
  return `Figures of what ${endWords[first]}`;
}

/** The figures of the table: an error of the loop only where the loop was read to its end. */
export function figureKeysOf(record: CalibrationRecord): readonly FigureKey[] {
  const hasLoopError = phasesOf(record).some(({ phase }) => phase.loopError);
  return figureRows(record, { distance: 0, percent: 0, value: 0 })
    .map(({ key }) => key)
    .filter((key) => key !== "loopError" || hasLoopError);
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
  ];
}

function countedWords(title: string, { counted: count }: PhaseRecord): string {
  const leftOut = count.leftOut === 0 ? "none left out" : `${count.leftOut} left out`;
  return `${title}: ${counted(count.used, "reading")} used, ${leftOut}, ${counted(count.points, "test point")}, ${counted(count.cycles, "cycle")}.`;
}
