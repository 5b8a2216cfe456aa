import type { Conductor } from "../../model/instrument-words.ts";
import { type Figure, notDetermined } from "../figures/figure.ts";

/** One core of a cable: its cross-section in mm² with the kind of core, or its American wire gauge. */
export type Core = { sectionSquareMillimetres: number; conductor: Conductor } | { wireGauge: number };

/**
 * Greatest resistance of a copper core at 20 °C, Ω/km, by cross-section in mm².
 *
 * Source: IEC 60228 (classes 1 and 2 plain; 5 and 6 plain and tinned); under 0.5 mm² DIN VDE 0295 alone.
 */
const ohmsPerKilometre: Readonly<Record<Conductor, ReadonlyMap<number, number>>> = {
  flexible: new Map([
    [0.14, 134],
    [0.25, 76],
    [0.34, 53],
    [0.5, 39],
    [0.75, 26],
    [1, 19.5],
    [1.5, 13.3],
    [2.5, 7.98],
  ]),
  "flexible tinned": new Map([
    [0.14, 138],
    [0.25, 79],
    [0.34, 56],
    [0.5, 40.1],
    [0.75, 26.7],
    [1, 20],
    [1.5, 13.7],
    [2.5, 8.21],
  ]),
  "solid or stranded": new Map([
    [0.5, 36],
    [0.75, 24.5],
    [1, 18.1],
    [1.5, 12.1],
    [2.5, 7.41],
  ]),
};

/** Resistivity of annealed copper at 20 °C: 17.241 Ω·mm²/km. Source: International Annealed Copper Standard. */
const annealedCopper = 17.241;

/** Change of the resistance of copper for each kelvin, of that at 20 °C. Source: as `annealedCopper`. */
const temperatureCoefficient = 0.00393;

/**
 * Resistance of one copper core for a kilometre of length: the greatest that its standard allows, or that of a solid
 * wire of its gauge; at a temperature t that of 20 °C times 1 + 0.00393 (t − 20).
 *
 * @param core cross-section in mm² as tables list it, with the kind of core; or American wire gauge, 1 to 40
 * @param temperatureCelsius temperature of the core, °C
 * @returns Ω/km, one way; or the reason why there is none. As many digits as the table has: two or three
 * Source: IEC 60228 and DIN VDE 0295 (table); ASTM B258 (gauge n: d = 0.127 mm · 92^((36 − n)/39)); International
 *   Annealed Copper Standard (17.241 Ω·mm²/km, 0.00393 per kelvin).
 * @example copperResistance({ sectionSquareMillimetres: 0.75, conductor: "flexible" }, 20) // 26
 */
export function copperResistance(core: Core, temperatureCelsius: number): Figure<number> {
  const atTwenty = "wireGauge" in core ? gaugeResistance(core.wireGauge) : tableResistance(core);
  if (typeof atTwenty !== "number") return atTwenty;
  return atTwenty * (1 + temperatureCoefficient * (temperatureCelsius - 20));
}

/**
 * Cross-section of a solid wire of a gauge n: A = π/4 · d², d = 0.127 mm · 92^((36 − n)/39).
 *
 * @param wireGauge n, 1 to 40
 * @returns mm²
 * Source: ASTM B258.
 * @example gaugeSection(36) // 0.01267 = π/4 · 0.127²
 */
export function gaugeSection(wireGauge: number): number {
  const diameterMillimetres = 0.127 * 92 ** ((36 - wireGauge) / 39);
  return (Math.PI / 4) * diameterMillimetres ** 2;
}

function gaugeResistance(wireGauge: number): Figure<number> {
  if (wireGauge > 40) return notDetermined(`a wire gauge of ${wireGauge} is finer than 40, and no signal cable is`);
  return annealedCopper / gaugeSection(wireGauge);
}

function tableResistance({ sectionSquareMillimetres, conductor }: Exclude<Core, { wireGauge: number }>) {
  const table = ohmsPerKilometre[conductor];
  const found = table.get(sectionSquareMillimetres);
  if (found !== undefined) return found;
  const known = [...table.keys()].join(", ");
  return notDetermined(
    `no table value for a ${conductor} core of ${sectionSquareMillimetres} mm²; there are ${known} mm²`,
  );
}
