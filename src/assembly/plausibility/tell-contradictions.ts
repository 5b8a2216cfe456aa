import { isDetermined } from "../../analysis/figures/figure.ts";
import { burdenLimit, loopBurden } from "../../analysis/stages/loop-burden.ts";
import type { TableRow } from "../../model/calibration-case.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { ProblemCode } from "../../problems/catalogue.ts";
import { placeOfRow } from "../../problems/place-of-row.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { isInside } from "../../units/is-inside.ts";
import { writePlain } from "../../units/write-number.ts";
import { isOverloadStated } from "../../verdict/causes/evidence/stated-load.ts";

type Told = { code: ProblemCode; column: string; values: Readonly<Record<string, string>> };

/**
 * Tells what the row of an instrument says against itself: a load that its output may not have, a supply that it does not
 * take, a range that begins where it cannot measure.
 *
 * @param instrument row of the table instruments
 * @param problems list that it goes to
 * Source: `loop-burden.ts`; the sensor's own data as they are stated.
 * @example toldBy((_, problems) => tellContradictions(spoiledRows.instrument, problems)) // []
 */
export function tellContradictions(instrument: TableRow<Instrument>, problems: ProblemList): void {
  const { row, cells } = instrument;
  for (const { code, column, values } of [...ofLoad(row), ...ofSupply(row), ...ofBlindZone(row)]) {
    problems.add(code, placeOfRow(instrument, column), { read: cells[column], values, belongsTo: { tag: row.tag } });
  }
}

const isAbove = (value: number, high: number) => !isInside(value, { low: null, high });

/** What of the burden is stated counts, whether or not all of it is. */
function ofLoad(row: Instrument): readonly Told[] {
  const { signalUnit, cardResistance: card, barrierResistance: barrier = 0, loadMin } = row;
  if (card === undefined) return [];
  const column = "card_resistance";
  if (signalUnit === "V") {
    if (loadMin === undefined || !isOverloadStated(row)) return [];
    const values = { card: writePlain(card), least: writePlain(loadMin) };
    return [{ code: "plausible/load-too-small", column, values }];
  }
  const limit = burdenLimit(row);
  const whole = loopBurden(row);
  const burden = isDetermined(whole) ? whole.total : card + barrier;
  if (!isDetermined(limit) || !isAbove(burden, limit.greatest)) return [];
  const values = {
    burden: rounded(burden),
    greatest: rounded(limit.greatest),
    setBy: limit.setBy === "supply" ? "supply_voltage and supply_min allow" : "load_max allows",
  };
  return [{ code: "plausible/burden-too-great", column, values }];
}

function ofSupply({ supplyVoltage, supplyMin, supplyMax }: Instrument): readonly Told[] {
  if (supplyVoltage === undefined) return [];
  if (isInside(supplyVoltage, { low: supplyMin ?? null, high: supplyMax ?? null })) return [];
  const values = {
    supply: writePlain(supplyVoltage),
    limits: [
      ...(supplyMin === undefined ? [] : [`supply_min ${writePlain(supplyMin)} V`]),
      ...(supplyMax === undefined ? [] : [`supply_max ${writePlain(supplyMax)} V`]),
    ].join(", "),
  };
  return [{ code: "plausible/supply-outside", column: "supply_voltage", values }];
}

function ofBlindZone({ blindZone, rangeLower, distanceUnit }: Instrument): readonly Told[] {
  if (blindZone === undefined || !isAbove(blindZone, rangeLower)) return [];
  const values = { zone: writePlain(blindZone), lower: writePlain(rangeLower), unit: distanceUnit };
  return [{ code: "plausible/range-in-blind-zone", column: "blind_zone", values }];
}

function rounded(ohms: number): string {
  return writePlain(Number(ohms.toPrecision(3)));
}
