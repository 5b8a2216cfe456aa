import type { Instrument } from "../../model/instrument.ts";
import { type Figure, isDetermined, notDetermined } from "../figures/figure.ts";
import { milliampFaultLevels } from "../readings/fault-signal.ts";
import { cableResistance, greatestBurden, totalResistance } from "./burden.ts";
import { type Core, copperResistance } from "./copper-resistance.ts";

/** What is in series with the sensor, in Ω, and how the cable's part came about. */
export type LoopBurden = {
  card: number;
  barrier: number;
  cable: { lengthMetres: number; ohmsPerKilometre: number; temperatureCelsius: number; resistance: number };
  total: number;
};

/** The greatest resistance that may be in series, Ω, and what sets it. */
export type BurdenLimit = { greatest: number; setBy: "supply" | "load_max" };

/**
 * What is in series with the sensor: card, barrier and cable there and back, at the cable's hottest temperature.
 *
 * @param instrument its row: card_resistance, barrier_resistance, cable_length, cable_section or cable_awg,
 *   cable_conductor (flexible where empty), cable_temperature (20 °C where empty)
 * @returns Ω; or which of them is not stated. No barrier stated counts as none, but not in a hazardous area
 * Source: `burden.ts` and `copper-resistance.ts`.
 * @example loopBurden({ cardResistance: 250, barrierResistance: 0, cableLength: 100, cableSection: 0.5 }).total //
 *   257.8
 */
export function loopBurden(instrument: Instrument): Figure<LoopBurden> {
  const { cardResistance: card, barrierResistance, hazardousArea, cableLength, cableTemperature = 20 } = instrument;
  if (card === undefined) return notDetermined("card_resistance is not stated");
  if (barrierResistance === undefined && hazardousArea === true) {
    return notDetermined("barrier_resistance is not stated, and the loop stands in a hazardous area");
  }
  if (cableLength === undefined) return notDetermined("cable_length is not stated");
  const core = coreOf(instrument);
  if (core === undefined) return notDetermined("neither cable_section nor cable_awg is stated");
  const ohmsPerKilometre = copperResistance(core, cableTemperature);
  if (!isDetermined(ohmsPerKilometre)) return ohmsPerKilometre;
  const resistance = cableResistance(ohmsPerKilometre, cableLength);
  const barrier = barrierResistance ?? 0;
  return {
    card,
    barrier,
    cable: { lengthMetres: cableLength, ohmsPerKilometre, temperatureCelsius: cableTemperature, resistance },
    total: totalResistance({ card, barrier, cable: resistance }),
  };
}

/**
 * The highest current that a current loop may give: its high fault level, or an end of its signal where that is higher.
 *
 * @param instrument its row: fault_high, signal_lower and signal_upper
 * @returns mA
 * Source: NAMUR NE 43, 21 mA, where fault_high is empty and the signal ends at 20 mA: one from 0 to 20 mA may go as far
 *   (own choice).
 * @example highestCurrent({ signalLower: 4, signalUpper: 20, faultHigh: 22.5 }) // 22.5
 */
export function highestCurrent({
  faultHigh,
  signalLower,
  signalUpper,
}: Pick<Instrument, "faultHigh" | "signalLower" | "signalUpper">): number {
  const end = Math.max(signalLower, signalUpper);
  return Math.max(end, faultHigh ?? (end === 20 ? (milliampFaultLevels.high ?? end) : end));
}

/**
 * The greatest resistance that may be in series with a current output: what the supply can drive the highest current
 * through, where the sensor lives on the loop; and the output's own greatest load. The lesser of the two.
 *
 * @param instrument its row: supply_voltage and supply_min where loop_powered is yes; load_max
 * @returns Ω and what sets it; or what is not stated
 * Source: `burden.ts`; the output's data for load_max.
 * @example burdenLimit({ loopPowered: true, signalLower: 4, signalUpper: 20, supplyVoltage: 24, supplyMin: 12,
 *   loadMax: 600 }) // { greatest: 571.4, setBy: "supply" }
 */
export function burdenLimit(instrument: Instrument): Figure<BurdenLimit> {
  const { loopPowered, supplyVoltage, supplyMin, loadMax } = instrument;
  const limits: BurdenLimit[] = [];
  if (loopPowered === true && supplyVoltage !== undefined && supplyMin !== undefined) {
    limits.push({
      greatest: greatestBurden(supplyVoltage, supplyMin, highestCurrent(instrument) / 1000),
      setBy: "supply",
    });
  }
  if (loadMax !== undefined) limits.push({ greatest: loadMax, setBy: "load_max" });
  const [least] = limits.toSorted((one, other) => one.greatest - other.greatest);
  if (least !== undefined) return least;
  return notDetermined(
    loopPowered === true ? "neither supply_voltage with supply_min nor load_max is stated" : "load_max is not stated",
  );
}

function coreOf({ cableSection, cableAwg, cableConductor = "flexible" }: Instrument): Core | undefined {
  if (cableSection !== undefined) return { sectionSquareMillimetres: cableSection, conductor: cableConductor };
  return cableAwg === undefined ? undefined : { wireGauge: cableAwg };
}
