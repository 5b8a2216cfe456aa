import type { RawTable } from "./files/raw-table.ts";
import { columnNamed } from "./header-columns.ts";

/** A calibration and the tag that it belongs to, as they are written. */
export type NamedCalibration = { calibration: string; tag: string };

/** A tag, a calibration, or both, where not all of them are meant. */
export type AskedCalibration = { tag?: string | undefined; calibration?: string | undefined };

export function isAsked(named: NamedCalibration, { tag, calibration }: AskedCalibration): boolean {
  return (tag === undefined || named.tag === tag) && (calibration === undefined || named.calibration === calibration);
}

/** Every calibration that a workbook names, whatever is wrong with the rest of its row. */
export function namedCalibrations(tables: readonly RawTable[]): readonly NamedCalibration[] {
  const raw = tables.find(({ table }) => table === "calibrations");
  if (raw === undefined) return [];
  const index = (name: string) => raw.header.findIndex((text) => columnNamed("calibrations", text)?.name === name);
  const [calibration, tag] = [index("calibration"), index("tag")];
  return Array.from(raw.rows, ({ cells }) => ({
    calibration: cells[calibration]?.trim() ?? "",
    tag: cells[tag]?.trim() ?? "",
  }));
}
