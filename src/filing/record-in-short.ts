import { adjustments } from "../model/calibration-words.ts";
import { distanceUnits } from "../model/instrument-words.ts";
import { isDay } from "../model/is-day.ts";
import { judgedParts } from "../model/loop-stages.ts";
import { statements } from "../model/statement.ts";
import { overallWords } from "../record/overall-words.ts";
import type { PhaseName } from "../record/phase-name.ts";
import type { PhaseSummary, RecordSummary } from "../record/record-summary-schema.ts";

/** A phase in short: of its test points what a drift needs. */
export type PhaseInShort = Omit<PhaseSummary, "points"> & { places: PlaceInShort[] };
/** Distance, error, lower and upper limit of a test point: a list, for a folder has a hundred thousand of them. */
type PlaceInShort = [point: number, errorDistance: number, toleranceLow: number, toleranceHigh: number];
export type RecordInShort = Omit<RecordSummary, PhaseName> & {
  asFound: PhaseInShort | null;
  asLeft: PhaseInShort | null;
};

/** Whether a value may stand in a place. */
export type Check = (value: unknown) => boolean;

/** An object with these fields and no other; those of `stateable` may be absent. */
export function objectOf(
  certain: Readonly<Record<string, Check>>,
  stateable: Readonly<Record<string, Check>> = {},
): Check {
  const names = Object.keys(certain);
  const checks = new Map(Object.entries({ ...certain, ...stateable }));
  return (value) => {
    if (typeof value !== "object" || value === null || Array.isArray(value)) return false;
    if (!names.every((name) => Object.hasOwn(value, name))) return false;
    return Object.entries(value).every(([name, field]) => checks.get(name)?.(field) === true);
  };
}

export const isText: Check = (value) => typeof value === "string";
export const isNumber: Check = Number.isFinite;

export function listOf(isOne: Check): Check {
  return (value) => Array.isArray(value) && value.every(isOne);
}

function orNull(is: Check): Check {
  return (value) => value === null || is(value);
}

function oneOf(words: readonly string[]): Check {
  return (value) => words.includes(value as string);
}

const isPlace: Check = (value) => Array.isArray(value) && value.length === 4 && value.every(isNumber);
const isRevision: Check = (value) => Number.isSafeInteger(value) && (value as number) >= 1;

const isDate: Check = (value) => typeof value === "string" && isDay(value);

const isPhase = orNull(
  objectOf({
    statement: orNull(oneOf(statements)),
    outputs: orNull(oneOf(statements)),
    worst: orNull(
      objectOf({ of: oneOf(judgedParts), reference: isNumber, errorDistance: isNumber, errorPercentSpan: isNumber }),
    ),
    worstUncertainty: orNull(isNumber),
    zeroError: orNull(isNumber),
    spanError: orNull(isNumber),
    places: listOf(isPlace),
  }),
);

/**
 * Whether what was read from an index has the form of a record in short. A check of our own, because every look into a
 * folder asks it of every record there, and the schemas of a record would take longer to make than the rest of `due`.
 */
export const isRecordInShort: Check = objectOf(
  {
    ...{ tag: isText, calibration: isText, revision: isRevision, sha256: isText, performedOn: orNull(isDate) },
    ...{ distanceUnit: oneOf(distanceUnits), rangeLower: isNumber, rangeUpper: isNumber },
    ...{
      serial: orNull(isText),
      adjustment: orNull(oneOf(adjustments)),
      pointsOf: orNull(oneOf(["sensor", "controller"])),
    },
    ...{ asFound: isPhase, asLeft: isPhase, nextDue: orNull(isDate) },
  },
  { overall: objectOf({ word: oneOf(overallWords), missing: listOf(isText) }) },
);
