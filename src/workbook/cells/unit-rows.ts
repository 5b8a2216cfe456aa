import type { Calibration } from "../../model/calibration.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { TableName } from "../../model/table-names.ts";
import type { FindUnitRow } from "../read-rows.ts";
import type { DraftRow } from "../table-row.ts";
import type { UnitRow } from "./expected-unit.ts";

/** Finds the row that names the units of another row, while the tables are read in their order. */
export class UnitRows {
  readonly #unitsByTag = new Map<unknown, UnitRow>();
  readonly #tagByCalibration = new Map<unknown, string | undefined>();
  /** Loops mostly have the same units: one row stands for all of them. */
  readonly #alike = new Map<string, UnitRow>();

  /** Notes the rows of a table that later tables will refer to; of two rows of one name, the first. */
  learn(table: TableName, rows: readonly DraftRow[]): void {
    for (const { row } of rows) {
      if (table === "instruments") {
        const instrument = row as Partial<Instrument>;
        if (!this.#unitsByTag.has(instrument.tag)) this.#unitsByTag.set(instrument.tag, this.#unitsOf(instrument));
      } else if (table === "calibrations") {
        const { calibration, tag } = row as Partial<Calibration>;
        if (!this.#tagByCalibration.has(calibration)) this.#tagByCalibration.set(calibration, tag);
      }
    }
  }

  #unitsOf({
    distanceUnit,
    signalUnit,
    valueUnit,
    toleranceBasis,
    secondToleranceBasis,
  }: Partial<Instrument>): UnitRow {
    const given = { distanceUnit, signalUnit, valueUnit, toleranceBasis, secondToleranceBasis };
    const key = JSON.stringify(given);
    const known = this.#alike.get(key) ?? (JSON.parse(key) as UnitRow);
    this.#alike.set(key, known);
    return known;
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
        return ({ tag }) => this.#unitsByTag.get(tag);
      default:
        return ({ calibration }) => this.#unitsByTag.get(this.#tagByCalibration.get(calibration));
    }
  }
}
