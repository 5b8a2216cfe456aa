import type { CalibrationRecord } from "./record-schema.ts";

/** What was typed into entry sheets: into which, when, and what was typed again. */
export type TypedEntries = {
  sheets: readonly string[];
  first: string;
  last: string;
  /** Lines of their tables, with what stood there before. */
  again: readonly { table: string; line: number; before: string }[];
};

type SourceRows = CalibrationRecord["inputs"]["rows"];
type SourceRow = SourceRows["readings"][number];

/** The tables into which a technician types. */
export const typedTables = ["calibrations", "readings", "trips", "loop_checks"] as const satisfies (keyof SourceRows)[];

/**
 * What the rows of a record say of where and when they were typed.
 *
 * @param record with its rows as they were typed
 * @returns undefined where no row came from an entry sheet
 * Source: ISO/IEC 17025:2017, 7.5.1 and 7.5.2: original observations are kept, with what they were before a change.
 * @example typedEntries({ inputs: { rows: { readings: [{ line: 2, cells: { typed_in: "S-1", typed_at: "10:31" } }] } } }).first
 *   // "10:31"
 */
export function typedEntries({ inputs }: { inputs: { rows: Partial<SourceRows> } }): TypedEntries | undefined {
  const rows = typedTables.flatMap((table) =>
    ((inputs.rows[table] ?? []) as readonly SourceRow[]).map((row) => ({ table, ...row })),
  );
  const moments = rows.flatMap(({ cells }) => cells.typed_at ?? []).toSorted();
  const sheets = [...new Set(rows.flatMap(({ cells }) => cells.typed_in ?? []))].toSorted();
  const [first, last] = [moments[0], moments.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  return {
    ...{ sheets, first, last },
    again: rows.flatMap(({ table, line, cells }) =>
      cells.typed_before === undefined ? [] : [{ table, line, before: cells.typed_before }],
    ),
  };
}
