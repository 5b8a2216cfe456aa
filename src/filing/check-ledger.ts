import { canonicalText } from "../proof/canonical-text.ts";
import type { Doubt } from "../record/doubt.ts";
import { ledgerName } from "./ledger.ts";
import { type LedgerLine, lineHash, noLine, readLedgerLine } from "./ledger-line.ts";

/** A line as it stands in a ledger, at its place from 1 on. */
type Standing = { place: number; line: LedgerLine; hash: string };

/** What was read of a ledger, and every doubt whether its lines are those that were written. */
export type CheckedLedger = { lines: readonly LedgerLine[]; hashes: readonly string[]; doubts: readonly Doubt[] };

/**
 * Checks the chain of a ledger: every line in its form, every number once and in order, every line the one that the
 * next was written after.
 *
 * What a chain cannot show: that lines were taken off its end. Against that, note its head elsewhere (`ledgerHead`).
 */
export function checkLedger(text: string): CheckedLedger {
  const doubts: Doubt[] = [];
  const doubt = (place: number, says: string) =>
    doubts.push({ about: "ledger", place: `${ledgerName}:${place}`, says });
  const texts = text.split("\n");
  const torn = texts.pop() ?? "";
  const standing = texts.flatMap((one, index) => {
    const line = readLedgerLine(one);
    if (line === undefined) doubt(index + 1, "the line was altered or added: it does not have the form of a line");
    else if (!isCanonical(line, one)) doubt(index + 1, "the line was altered or added: it is not in canonical form");
    return line === undefined ? [] : [{ place: index + 1, line, hash: lineHash(one) }];
  });
  checkNumbers(standing, texts.length, doubt);
  checkChain(standing, doubt);
  if (torn !== "") doubt(texts.length + 1, "the line was not finished; the next filing takes it away");
  return { lines: standing.map(({ line }) => line), hashes: standing.map(({ hash }) => hash), doubts };
}

type Note = (place: number, says: string) => void;

/** A number from a file may be one that JSON cannot hold in canonical form; such a line was not written by us. */
function isCanonical(line: LedgerLine, text: string): boolean {
  try {
    return canonicalText(line) === text;
  } catch {
    return false;
  }
}

/** Lost, added and reordered lines, by their numbers. */
function checkNumbers(standing: readonly Standing[], places: number, doubt: Note): void {
  const firstPlace = new Map<number, number>();
  let highest = 0;
  for (const { place, line } of standing) {
    const earlier = firstPlace.get(line.number);
    if (earlier !== undefined)
      doubt(place, `line ${line.number} stands there twice, first at ${earlier}: one was added`);
    else if (line.number < highest)
      doubt(place, `line ${line.number} stands after line ${highest}: they were reordered`);
    firstPlace.set(line.number, earlier ?? place);
    highest = Math.max(highest, line.number);
  }
  const readable = new Set(standing.map(({ place }) => place));
  const unreadable = Array.from({ length: places }, (_, index) => index + 1).filter((place) => !readable.has(place));
  for (const [from, to] of gapsIn([...firstPlace.keys(), ...unreadable.filter((place) => place <= highest)])) {
    doubt(from, from === to ? `line ${from} is missing` : `lines ${from} to ${to} are missing`);
  }
}

/** What is left out from 1 to the highest of some numbers, however high an altered line makes that. */
function gapsIn(numbers: readonly number[]): readonly (readonly [number, number])[] {
  const inOrder = [0, ...numbers].toSorted((one, other) => one - other);
  return inOrder.flatMap((number, index) => {
    const next = inOrder[index + 1] ?? number;
    return next - number > 1 ? [[number + 1, next - 1] as const] : [];
  });
}

/** A line that the next one does not hold the hash of was altered, unless it is the next one that was. */
function checkChain(standing: readonly Standing[], doubt: Note): void {
  const byNumber = new Map(standing.toReversed().map((one) => [one.line.number, one]));
  const isBorneOut = ({ line, hash }: Standing) => byNumber.get(line.number + 1)?.line.previous === hash;
  for (const after of [...byNumber.values()].toSorted((one, other) => one.line.number - other.line.number)) {
    const { number, previous } = after.line;
    const before = byNumber.get(number - 1);
    const expected = number === 1 ? noLine : before?.hash;
    if (expected === undefined || previous === expected) continue;
    if (number === 1) doubt(after.place, "the first line says that there was one before it");
    else if (isBorneOut(after))
      doubt(
        before?.place ?? 0,
        `line ${number - 1} is not the one that line ${number} was written after: it was altered`,
      );
    else if (!byNumber.has(number + 1))
      doubt(after.place, `line ${number - 1} or line ${number} was altered: one does not follow from the other`);
    else
      doubt(
        after.place,
        `line ${number} does not follow from line ${number - 1}, nor line ${number + 1} from it: it was altered`,
      );
  }
}
