import type { CandidateFitRecord, CandidatesRecord } from "../../record/candidates-schema.ts";
import { writePlain } from "../../units/write-number.ts";

type FitCellRecord = CandidateFitRecord["cells"][number];

/** Three side by side is what a sheet of paper holds. */
const mostSideBySide = 3;

const overallStart: Readonly<Record<CandidateFitRecord["overall"], string>> = {
  fits: "fits",
  "fits with a change": "fits with changes",
  "cannot be told": "cannot be told",
  "does not fit": "does not fit",
};

/** The overall result, without what led to it. */
export function overallWords({ overall }: CandidateFitRecord): string {
  return overallStart[overall];
}

/** The demands that led to the overall result, and any that are open or ask for a change beside it. */
export function overallReasons({ overall, cells }: CandidateFitRecord): readonly string[] {
  return cells.filter(({ result }) => result === overall && result !== "fits").map(demandWords);
}

/** What else there is: what cannot be told, or asks for a change, of a candidate that falls for another reason. */
export function otherReasons({ overall, cells }: CandidateFitRecord): string | undefined {
  const open = namesOf(cells, "cannot be told", overall);
  const changes = namesOf(cells, "fits with a change", overall);
  const words = [
    ...(open.length > 0 ? [`cannot be told: ${open.join(", ")}`] : []),
    ...(changes.length > 0 ? [`to be changed: ${changes.join(", ")}`] : []),
  ];
  return words.length === 0 ? undefined : `Besides, ${words.join("; ")}.`;
}

function namesOf(
  cells: readonly FitCellRecord[],
  result: FitCellRecord["result"],
  overall: CandidateFitRecord["overall"],
): readonly string[] {
  return result === overall ? [] : cells.filter((cell) => cell.result === result).map(({ demand }) => demand);
}

function demandWords({ demand, reason }: FitCellRecord): string {
  return `${demand}: ${reason}`;
}

/** Why the comparison stands there, and what it is not. */
export function introductionWords({ because }: CandidatesRecord): string {
  const why =
    because === "the loop does not pass"
      ? "The loop as it was left does not pass."
      : "Replacing is among what this record recommends.";
  return `${why} This compares what the tables state of each candidate with what the loop needs: an opinion, for an authorised person to agree to. It recommends none of them, and says nothing of price, delivery or how long one lasts.`;
}

/** What was not held against the loop. */
export function notComparedWords({ notCompared }: CandidatesRecord): string | undefined {
  if (notCompared.length === 0) return undefined;
  const list = notCompared.map(({ demand, columns }) => `${demand} (${columns})`).join(", ");
  return `Not compared, for the tables do not state what the loop has now: ${list}.`;
}

/** The candidates in groups that a page can hold side by side. */
export function sideBySide({ fits }: CandidatesRecord): readonly (readonly CandidateFitRecord[])[] {
  const groups = Math.ceil(fits.length / mostSideBySide);
  return Array.from({ length: groups }, (_, group) => fits.slice(group * mostSideBySide, (group + 1) * mostSideBySide));
}

/** "spare part EX-S-7; 14 days; 320 in the plant's currency; lights: power, output"; nothing where nothing is stated. */
export function supplyWords({ supply }: CandidateFitRecord): string | undefined {
  if (supply === undefined) return undefined;
  const { sparePart, leadTime, price, indicators } = supply;
  return [
    ...(sparePart === undefined ? [] : [`spare part: ${sparePart}`]),
    ...(leadTime === undefined ? [] : [`to be had in ${writePlain(leadTime)} ${leadTime === 1 ? "day" : "days"}`]),
    ...(price === undefined ? [] : [`price: ${price}`]),
    ...(indicators === undefined ? [] : [`indicators: ${indicators}`]),
  ].join("; ");
}
