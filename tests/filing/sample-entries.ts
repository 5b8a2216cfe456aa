import type { IndexEntry } from "../../src/filing/index-entry.ts";
import type { PhaseInShort, RecordInShort } from "../../src/filing/record-in-short.ts";
import type { Statement } from "../../src/record/record-schema.ts";

/** A phase whose error line runs from `zero` to `zero + span`, percent of span, with a test point at either end. */
export function phaseInShort(statement: Statement, zero = 0, span = 0): PhaseInShort {
  const worst = { of: "sensor", reference: 100, errorDistance: zero, errorPercentSpan: zero } as const;
  return {
    ...{ statement, outputs: null, worst, worstUncertainty: 0.1, zeroError: zero, spanError: span },
    places: [
      [0, zero, -2, 2],
      [100, zero + span, -2, 2],
    ],
  };
}

let count = 0;

/** An invented loop of 0 to 100 mm, found and left in tolerance; `more` says what is otherwise. */
export function entry(summary: Partial<RecordInShort>, more: Partial<IndexEntry> = {}): IndexEntry {
  count += 1;
  const full: RecordInShort = {
    tag: "LT-1",
    calibration: `C-${count}`,
    revision: 1,
    sha256: "a".repeat(64),
    performedOn: "2026-01-01",
    distanceUnit: "mm",
    rangeLower: 0,
    rangeUpper: 100,
    serial: null,
    pointsOf: "sensor",
    adjustment: "none",
    asFound: phaseInShort("pass"),
    asLeft: null,
    nextDue: null,
    ...summary,
  };
  return {
    number: count,
    path: `${full.tag}/${full.performedOn}_${full.calibration}_r${full.revision}.html`,
    fileSha256: "b".repeat(64),
    summary: full,
    standards: [],
    ...more,
  };
}
