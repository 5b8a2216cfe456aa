import type { FigureKey } from "../../record/figure-definitions.ts";
import { phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord, ReadingRecord, Shares } from "../../record/record-schema.ts";
import type { SheetColumn } from "../sheet/sheet-column.ts";
import { sheetColumns } from "../sheet/sheet-columns.ts";
import type { NumberStyle } from "../style/number-style.ts";
import { Definitions } from "./definitions.tsx";

/** The working: one sheet a phase, lettered columns, a formula row, one row a reading. */
export function WorkingSheets({ record, style }: { record: CalibrationRecord; style: NumberStyle }) {
  return (
    <section aria-labelledby="working-title">
      <h2 id="working-title">Working</h2>
      <p>
        Each derived column shows how it follows from the others, in terms of their letters, so that every number can be
        followed with a pocket calculator. Numbers are computed at full precision and rounded only here.
      </p>
      {phasesOf(record).map(({ name, title, phase }) => (
        <Sheet key={name} id={`working-${name}`} title={title} record={record} phase={phase} style={style} />
      ))}
      <Definitions keys={keysOf(record)} />
    </section>
  );
}

/** Those of one stage alone. */
const singleShares = ["sensor", "wiring", "inputCard", "scaling"] as const satisfies readonly (keyof Shares)[];

/** What the columns of the sheets are, as far as they are there. */
function keysOf(record: CalibrationRecord): readonly FigureKey[] {
  const readings = phasesOf(record).flatMap(({ phase }) => phase.readings);
  const shares = new Set(readings.flatMap((reading) => Object.keys(reading.shares ?? {})));
  const hasSeveral = readings.some((reading) => Object.keys(reading.shares ?? {}).length > 1);
  const single = singleShares.filter((name) => shares.has(name));
  return [
    "indicatedDistance",
    "error",
    "tolerance",
    "partOfTolerance",
    ...(hasSeveral ? single.map((name) => `shares.${name}` as const) : []),
    ...(hasSeveral && [...shares].some((name) => !single.some((known) => known === name))
      ? (["shares.joined"] as const)
      : []),
  ];
}

type SheetProps = { id: string; title: string; record: CalibrationRecord; phase: PhaseRecord; style: NumberStyle };

function Sheet({ id, title, record, phase, style }: SheetProps) {
  const columns = sheetColumns(record, phase, style);
  return (
    <section class="wide" aria-labelledby={id} tabIndex={0}>
      <table class={columns.length > 12 ? "sheet many" : "sheet"}>
        <caption id={id}>{title}</caption>
        <thead>
          <tr class="letters">
            <td class="corner" />
            {columns.map(({ letter }) => (
              <th key={letter} scope="col">
                {letter}
              </th>
            ))}
          </tr>
          <tr class="titles">
            <th scope="row">row</th>
            {columns.map((column) => (
              <td key={column.letter} class={column.isNumber ? "number" : ""}>
                {column.title}
                {column.unit && <span class="unit">{column.unit}</span>}
              </td>
            ))}
          </tr>
          <tr class="formulas">
            <th scope="row">=</th>
            {columns.map(({ letter, formula }) => (
              <td key={letter}>{formula}</td>
            ))}
          </tr>
        </thead>
        <tbody>
          {phase.readings.map((reading) => (
            <SheetRow key={reading.row} columns={columns} reading={reading} />
          ))}
        </tbody>
      </table>
      <LeftOutNotes readings={phase.readings} />
    </section>
  );
}

function SheetRow({ columns, reading }: { columns: readonly SheetColumn[]; reading: ReadingRecord }) {
  const state = reading.leftOut !== undefined ? "left-out" : reading.verdict === "fail" ? "outside" : "";
  return (
    <tr class={state}>
      <th scope="row">{reading.row}</th>
      {columns.map((column) => (
        <td key={column.letter} class={column.isNumber ? "number" : ""}>
          {reading.leftOut !== undefined && column.title !== "verdict" ? (
            <s>{column.cell(reading)}</s>
          ) : (
            column.cell(reading)
          )}
        </td>
      ))}
    </tr>
  );
}

/** Why readings were left out, and what was remarked, by row. */
function LeftOutNotes({ readings }: { readings: readonly ReadingRecord[] }) {
  const noted = readings.filter(({ leftOut, remark }) => leftOut !== undefined || remark !== undefined);
  if (noted.length === 0) return null;
  return (
    <ul class="notes">
      {noted.map(({ row, leftOut, remark }) => (
        <li key={row}>
          Row {row}: {[leftOut && `left out of every figure, ${leftOut}`, remark].filter(Boolean).join(". ")}
        </li>
      ))}
    </ul>
  );
}
