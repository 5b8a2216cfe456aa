import type { Texts } from "../../workbook/smallest-workbook.ts";
import { type Random, randomFrom } from "../loops/random.ts";

/** What a hand that copies cells downwards, or a meter that hangs, makes of a column. */
const slips = {
  same: () => (at) => at,
  oneNumber: () => () => 0,
  twoNumbers: (_, rows) => (at) => (at % 2 === 0 ? 0 : rows - 1),
  filledFrom: (random, rows) => {
    const from = random.whole(0, rows - 1);
    return (at) => Math.min(at, from);
  },
} satisfies Record<string, (random: Random, rows: number) => (at: number) => number>;

const kinds = Object.values(slips);
const span = 2000;
const pointCounts = [1, 2, 3, 4, 5, 6, 8, 11];
const phasesRead = [["as_found"], ["as_left"], ["as_found", "as_left"]];
const waysRead = [["rising"], ["falling"], ["rising", "falling"]];

/** A loop of little scatter whose columns are filled down, each in a way of its own; the same seed gives the same tables. */
export function filledColumns(seed: number): Texts {
  const random = randomFrom(seed);
  const cycles = random.whole(1, 3);
  const [points, phases, ways] = [random.pick(pointCounts), random.pick(phasesRead), random.pick(waysRead)];
  const places = phases.flatMap((phase) =>
    Array.from({ length: cycles }, (_, cycle) =>
      ways.flatMap((way) =>
        Array.from({ length: points }, (__, step) => {
          const place = way === "rising" ? step : points - 1 - step;
          return { phase, cycle: cycle + 1, way, part: points === 1 ? 0.5 : place / (points - 1) };
        }),
      ),
    ).flat(),
  );
  const columns = {
    reference: ({ part }: { part: number }) => (200 + span * part + random.normal(0.3)).toFixed(2),
    signal: ({ part }: { part: number }) => (4 + 16 * part + random.normal(0.01)).toFixed(4),
    counts: ({ part }: { part: number }) => (6400 + 25_600 * part + random.normal(5)).toFixed(0),
    value: ({ part }: { part: number }) => (200 + span * part + random.normal(0.5)).toFixed(1),
  };
  const hasPoint = random.isTrue(0.6);
  const isThere = ([name]: [string, unknown]) => name === "reference" || name === "signal" || random.isTrue(0.4);
  const filled = Object.entries(columns)
    .filter(isThere)
    .map(([name, of]) => {
      const texts = places.map(of);
      const from = random.pick(kinds)(random, places.length);
      return { name, texts: texts.map((_, at) => texts[from(at)] as string) };
    });
  const header = ["calibration", "phase", "cycle", "direction", ...(hasPoint ? ["point"] : [])];
  const rows = places.map(({ phase, cycle, way, part }, at) =>
    [
      "C-1",
      phase,
      cycle,
      way,
      ...(hasPoint ? [200 + span * part] : []),
      ...filled.map(({ texts }) => texts[at]),
    ].join(),
  );
  return {
    "instruments.csv":
      "tag,range_lower,range_upper,distance_unit,signal_lower,signal_upper,signal_unit,tolerance,tolerance_basis,counts_lower,counts_upper,value_lower,value_upper,value_unit\n" +
      "LT-1,200,2200,mm,4,20,mA,0.5,percent of span,6400,32000,200,2200,mm\n",
    "calibrations.csv": `calibration,tag,performed_on,performed_by,adjustment\nC-1,LT-1,2026-03-04,T. Example,${random.pick(["none", "re-teach", "re-scale", "repair"])}\n`,
    "readings.csv": `${[...header, ...filled.map(({ name }) => name)].join()}\n${rows.join("\n")}\n`,
  };
}
