import type { Instrument, Output } from "../model/instrument.ts";
import { ProblemList } from "../problems/problem-list.ts";
import { applicableItems } from "../verdict/loop-check/loop-items.ts";
import { loopLimits } from "../verdict/loop-check/loop-limits.ts";
import { buildWorkbook } from "../workbook/build-workbook.ts";
import { remarkedTable } from "../workbook/text-rows.ts";
import type { CheckMeaning } from "./parts/checks-part.tsx";
import type { SheetData } from "./sheet-data.ts";
import { rawTables } from "./state/entry-tables.ts";

/** The loop of a sheet as the reader of tables understands it, and what each item of its loop check asks for. */
export type SheetLoop = {
  instrument: Instrument;
  outputs: readonly Output[];
  checks: ReadonlyMap<string, CheckMeaning>;
};

/**
 * Reads the rows that came with a sheet, once.
 *
 * @param data of the sheet
 * @returns its loop
 * @throws TypeError where the row of the instrument cannot be read, which the command tells before it writes a sheet
 * Source: `buildWorkbook`.
 */
export function loopOfSheet(data: SheetData): SheetLoop {
  const tables = rawTables(
    data.carried.map((table) => remarkedTable(table, "point")),
    "point",
  );
  const workbook = buildWorkbook(tables, { today: data.madeOn }, new ProblemList());
  const [{ row: instrument } = { row: undefined }] = workbook.instruments;
  if (instrument === undefined) throw new TypeError("loopOfSheet: the row of the instrument cannot be read");
  const outputs = Array.from(workbook.outputs, ({ row }) => row);
  const calibration = { calibration: data.calibration, tag: data.tag };
  const limits = loopLimits({ instrument, calibration, outputs });
  const items = applicableItems(instrument, outputs);
  return {
    instrument,
    outputs,
    checks: new Map(items.map((item) => [item.key, { item, limit: limits.get(item.key) }])),
  };
}
