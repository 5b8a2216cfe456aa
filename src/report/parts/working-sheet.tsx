import { phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord, ReadingRecord } from "../../record/record-schema.ts";
import { textAsRendered } from "../escape.ts";
import type { SheetColumn } from "../sheet/sheet-column.ts";
import { sheetColumns } from "../sheet/sheet-columns.ts";
import type { NumberStyle } from "../style/number-style.ts";
import { Wide } from "../table/wide.tsx";
import { TypedNote } from "./typed-note.tsx";

/** The working: one sheet a phase, lettered columns, a formula row, one row a reading. */
export function WorkingSheets({ record, style }: { record: CalibrationRecord; style: NumberStyle }) {
  return (
    <>
      <p>
        Each derived column shows how it follows from the others, in terms of their letters, so that every number can be
        followed with a pocket calculator. Numbers are computed at full precision and rounded only here, with digits
        enough that working from the printed ones gives the printed ones. Beside the number of a row stands its line in
        the table of readings.
      </p>
      <TypedNote record={record} />
      {phasesOf(record).map(({ name, title, phase }) => (
        <Sheet key={name} id={`working-${name}`} title={title} record={record} phase={phase} style={style} />
      ))}
    </>
  );
}

/** A longer sheet shows its first rows, and what is outside or left out, until it is asked for all; on paper it is whole. */
const longestUnfolded = 200;

type SheetProps = { id: string; title: string; record: CalibrationRecord; phase: PhaseRecord; style: NumberStyle };

function Sheet({ id, title, record, phase, style }: SheetProps) {
  const columns = sheetColumns(record, phase, style);
  return (
    <Wide labelledBy={id}>
      {phase.readings.length > longestUnfolded && (
        <label class="unfold">
          <input type="checkbox" /> all {phase.readings.length} rows, not only the first 20 and those that are outside
          or left out
        </label>
      )}
      <table class={columns.length > 12 ? "sheet many" : "sheet"}>
        <caption id={id}>{title}</caption>
        <thead>
          <tr class="letters">
            <td class="corner" colSpan={2} />
            {columns.map(({ letter }) => (
              <th key={letter} scope="col">
                {letter}
              </th>
            ))}
          </tr>
          <tr class="titles">
            <th scope="row">row</th>
            <td>line</td>
            {columns.map((column) => (
              <td key={column.letter} class={column.isNumber ? undefined : "words"}>
                {column.title}
                {column.unit && <span class="unit">{column.unit}</span>}
              </td>
            ))}
          </tr>
          <tr class="formulas">
            <th scope="row">=</th>
            <td />
            {columns.map(({ letter, formula }) => (
              <td key={letter}>{formula}</td>
            ))}
          </tr>
        </thead>
        <tbody dangerouslySetInnerHTML={{ __html: sheetRows(columns, phase.readings) }} />
      </table>
      <LeftOutNotes readings={phase.readings} />
    </Wide>
  );
}

/**
 * As HTML, for a sheet has more cells than all the rest of a page has elements; which of them are words, its style says of
 * their columns.
 */
function sheetRows(columns: readonly SheetColumn[], readings: readonly ReadingRecord[]): string {
  return readings.map((reading, index) => sheetRow(index + 1, reading, columns)).join("");
}

/** Its number in the sheet, the line of the table that it was read from, and its cells. */
function sheetRow(number: number, reading: ReadingRecord, columns: readonly SheetColumn[]): string {
  const state = reading.leftOut !== undefined ? "left-out" : reading.verdict === "fail" ? "outside" : undefined;
  const cells = columns.map(({ title, cell }) => {
    const text = textAsRendered(cell(reading));
    return `<td>${reading.leftOut !== undefined && title !== "verdict" ? `<s>${text}</s>` : text}</td>`;
  });
  const attribute = state === undefined ? "" : ` class="${state}"`;
  return `<tr${attribute}><th scope="row">${number}</th><td>${reading.row}</td>${cells.join("")}</tr>`;
}

/** Why readings were left out, and what was remarked, by row. */
function LeftOutNotes({ readings }: { readings: readonly ReadingRecord[] }) {
  const noted = readings
    .map((reading, index) => ({ ...reading, number: index + 1 }))
    .filter(({ leftOut, remark }) => leftOut !== undefined || remark !== undefined);
  if (noted.length === 0) return null;
  return (
    <ul class="notes">
      {noted.map(({ number, row, leftOut, remark }) => (
        <li key={row}>
          Row {number}: {[leftOut && `left out of every figure, ${leftOut}`, remark].filter(Boolean).join(". ")}
        </li>
      ))}
    </ul>
  );
}
