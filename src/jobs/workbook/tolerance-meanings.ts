import { loopOf } from "../../analysis/readings/loop.ts";
import { toleranceAt } from "../../analysis/readings/tolerance.ts";
import type { TableRow } from "../../model/calibration-case.ts";
import type { Instrument } from "../../model/instrument.ts";
import { toleranceWords } from "../../record/tolerance-words.ts";
import { withDecimalMark } from "../../units/decimal-mark.ts";
import { writePlain } from "../../units/write-number.ts";

/** As many are said back; of a plant with a thousand tags the first show how its words are understood. */
const mostSaid = 10;

/** What each tolerance that was written in words means, with what it allows at both ends of the range. */
export function toleranceMeanings(instruments: Iterable<TableRow<Instrument>>): readonly string[] {
  const said: string[] = [];
  let inWords = 0;
  for (const one of instruments) {
    if (!/[^\d\s.,±]/u.test(one.cells.tolerance ?? "")) continue;
    inWords += 1;
    if (said.length < mostSaid) said.push(withDecimalMark(one.row.decimalMark, () => meaning(one)));
  }
  const more = inWords - said.length;
  return more > 0 ? [...said, `${more} more tolerances in words`] : said;
}

function meaning({ row, cells }: TableRow<Instrument>): string {
  const { toleranceTerms, characteristics } = loopOf(row);
  const ends = [row.rangeLower, row.rangeUpper].map((reference) => {
    const { low, high } = toleranceAt(toleranceTerms, characteristics.signal, reference);
    const limits = -low === high ? `±${shown(high)}` : `−${shown(-low)} / +${shown(high)}`;
    return `${limits} ${row.distanceUnit} at ${writePlain(reference)} ${row.distanceUnit}`;
  });
  return `${row.tag}: the tolerance "${cells.tolerance}" is ${toleranceWords(row)}: ${ends.join(", ")}`;
}

function shown(value: number): string {
  return writePlain(Number(value.toPrecision(4)));
}
