import type { LoopCheck, Standard } from "../../model/calibration.ts";
import type { UnitSource } from "../../model/column.ts";
import type { Candidate, Instrument } from "../../model/instrument.ts";
import type { ToleranceBasis } from "../../model/instrument-words.ts";

/** The row that names the units: of the instrument, or of the candidate, standard or loop check itself. */
export type UnitRow = Partial<Instrument> &
  Pick<Candidate, "accuracyBasis"> &
  Pick<Standard, "uncertaintyUnit"> &
  Pick<LoopCheck, "unit">;

/**
 * The unit in which a number is kept: a symbol of the unit table, or the word that the instrument gives to the
 * controller value.
 *
 * @returns null where the column takes no unit; undefined where the row that should name the unit does not
 */
export function expectedUnit(source: UnitSource, row: UnitRow | undefined): string | null | undefined {
  switch (source) {
    case "none":
      return null;
    case "distance":
      return row?.distanceUnit;
    case "signal":
      return row?.signalUnit;
    case "controller value":
      return row?.valueUnit;
    case "stated by row":
      return row?.uncertaintyUnit;
    case "tolerance":
      return unitOfBasis(row?.toleranceBasis, row);
    case "second tolerance":
      return unitOfBasis(row?.secondToleranceBasis, row);
    case "accuracy":
      return unitOfBasis(row?.accuracyBasis, row);
    default:
      return source;
  }
}

function unitOfBasis(basis: ToleranceBasis | undefined, row: UnitRow | undefined): string | undefined {
  if (basis === "distance") return row?.distanceUnit;
  if (basis === "signal") return row?.signalUnit;
  return basis === undefined ? undefined : "%";
}
