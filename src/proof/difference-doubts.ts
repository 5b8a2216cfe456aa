import type { Doubt } from "../record/doubt.ts";
import type { Difference } from "./compare-records.ts";

/** As many places as one reads before one asks what is going on. */
const mostTold = 10;
const longestValue = 60;

/**
 * What differs between a record and the one that its rows give, as doubts.
 *
 * Numbers that differ in their last digits only are told as one doubt, for they have one reason; it is a doubt all the
 * same, because the record is then not what this computer makes of its rows, and only a person can say that it does not
 * matter.
 *
 * @param differences `expected` is what the rows give
 * @returns the first of them, how many there are more, and the last digits
 * Source: own choice.
 * @example differenceDoubts([{ place: "nextDue", expected: null, found: '"2027-03-04"', kind: "value" }])
 *   // [{ about: "figures", place: "nextDue", says: 'the rows give nothing, the record says "2027-03-04"' }]
 */
export function differenceDoubts(differences: readonly Difference[]): readonly Doubt[] {
  const others = differences.filter(({ kind }) => kind !== "last digits");
  const told = others.slice(0, mostTold).map((difference) => doubt(difference.place, saying(difference)));
  const more = others.length - told.length;
  return [
    ...told,
    ...(more > 0 ? [doubt("further on", `${more} more places differ from what the rows give`)] : []),
    ...lastDigitDoubts(differences.filter(({ kind }) => kind === "last digits")),
  ];
}

function lastDigitDoubts(differences: readonly Difference[]): readonly Doubt[] {
  const [first] = differences;
  if (first === undefined) return [];
  const [expected, found] = [first.expected, first.found];
  const count = differences.length === 1 ? "one number differs" : `${differences.length} numbers differ`;
  const says = `${count} in the last digits only, by 1 in 10^12 or less, this one first: the rows give ${expected}, the record says ${found}; so it is when another kind of computer, or another Node.js, made the record`;
  return [doubt(first.place, says)];
}

function saying({ expected, found, kind }: Difference): string {
  if (kind === "order") return "its parts are not in the order in which a record is written";
  if (expected === null) return `the rows give nothing, the record says ${shortened(found)}`;
  return `the rows give ${shortened(expected)}, the record ${found === null ? "has nothing" : `says ${shortened(found)}`}`;
}

function shortened(json: string | null): string {
  const characters = [...(json ?? "")];
  return characters.length > longestValue ? `${characters.slice(0, longestValue - 1).join("")}…` : characters.join("");
}

function doubt(place: string, says: string): Doubt {
  return { about: "figures", place: place === "" ? "the whole" : place, says };
}
