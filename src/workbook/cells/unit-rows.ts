import type { Calibration } from "../../model/calibration.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { TableName } from "../../model/table-names.ts";
import type { FindUnitRow } from "../read-rows.ts";
import type { DraftRow } from "../table-row.ts";
import type { UnitRow } from "./expected-unit.ts";

/** Finds the row that names the units of another row, while the tables are read in their order. */
export class UnitRows {
  readonly #instrumentByTag = new Map<unknown, Partial<Instrument>>();
  readonly #tagByCalibration = new Map<unknown, string | undefined>();

  /** Notes the rows of a table that later tables will refer to; of two rows of one name, the first. */
  learn(table: TableName, rows: readonly DraftRow[]): void {
    for (const { row } of rows) {
      if (table === "instruments") {
        const { tag } = row as Partial<Instrument>;
        if (!this.#instrumentByTag.has(tag)) this.#instrumentByTag.set(tag, row as Partial<Instrument>);
      } else if (table === "calibrations") {
        const { calibration, tag } = row as Partial<Calibration>;
        if (!this.#tagByCalibration.has(calibration)) this.#tagByCalibration.set(calibration, tag);
      }
    }
  }

  finderFor(table: TableName): FindUnitRow {
    switch (table) {
      case "instruments":
      case "candidates":
      case "standards":
      case "loop_checks":
        return (row) => row as UnitRow;
      case "outputs":
      case "controller_limits":
      case "calibrations":
        return ({ tag }) => this.#instrumentByTag.get(tag) as UnitRow | undefined;
      default:
        return ({ calibration }) =>
          this.#instrumentByTag.get(this.#tagByCalibration.get(calibration)) as UnitRow | undefined;
    }
  }
}
