import { isTyped } from "../../proof/record-changes.ts";
import type { Amendment, Change } from "../../record/amendment-schema.ts";
import { figureDefinitions } from "../../record/figure-definitions.ts";
import { type PhaseName, phaseTitles } from "../../record/phase-name.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeSignificant } from "../../units/write-number.ts";

/** One thing that changed, in words. */
export type ChangeRow = { place: string; what: string; before: string; after: string };

type Row = { line: number };

const cellPlace = /^inputs\.rows\.(?<table>\w+)\[(?<index>\d+)\](?:\.cells\.(?<column>.*))?$/u;

/** What was typed otherwise, cell by cell or row by row, at its line in the later table. */
export function typedRows({ inputs }: CalibrationRecord, { changes }: Amendment): readonly ChangeRow[] {
  const tables: Readonly<Record<string, readonly Row[] | undefined>> = inputs.rows;
  return changes.filter(isTyped).map((change) => {
    const { table = "", index = "", column } = cellPlace.exec(change.place)?.groups ?? {};
    const isGone = column === undefined && change.after === null;
    const row = isGone ? undefined : tables[table]?.[Number(index)];
    const where = row === undefined ? `${table}, row ${Number(index) + 1} of before` : `${table}, line ${row.line}`;
    return changeRow(change, `${where}: ${column ?? `a row ${isGone ? "less" : "more"}`}`);
  });
}

/** What the record says otherwise of its loop: first the results, then the figures under the names of the page. */
export function resultRows({ changes }: Amendment): readonly ChangeRow[] {
  const named = changes.flatMap((change) => {
    const name = resultName(change.place);
    return name === undefined ? [] : [{ ...name, row: changeRow(change, name.what) }];
  });
  return named.toSorted((one, other) => one.rank - other.rank).map(({ row }) => row);
}

/** Every other field, by its path. */
export function otherRows({ changes }: Amendment): readonly ChangeRow[] {
  return changes
    .filter((change) => !isTyped(change) && resultName(change.place) === undefined)
    .map((change) => changeRow(change, change.place));
}

function changeRow({ place, before, after }: Change, what: string): ChangeRow {
  const digits = digitsThatDiffer(before, after);
  return { place, what, before: valueWords(before, digits), after: valueWords(after, digits) };
}

const ranked: Readonly<Record<string, string>> = {
  "phases.asFound.verdict": "As found: result",
  "phases.asLeft.verdict": "As left: result",
  "phases.asFound.worst.errorPercentSpan": "As found: worst error, % of span",
  "phases.asLeft.worst.errorPercentSpan": "As left: worst error, % of span",
  nextDue: "Next due",
  "recommendation.asFound.action": "Recommendation as found",
  "recommendation.asLeft.action": "Recommendation as left",
};
const ranks = Object.keys(ranked);

/** Figures that the page prints for a phase as one number, by their paths in it. */
const figureNames: ReadonlyMap<string, string> = new Map(
  figureDefinitions.flatMap(({ name, unit, fields }) =>
    fields.filter(isMain).map((field) => [field, nameInPhase(name, unit, field)] as const),
  ),
);

function isMain(field: string): boolean {
  return /^[\w]+\.[\w.]+$/u.test(field) && !/(?:tandardUncertainty|StdError|degreesOfFreedom)$/u.test(field);
}

function nameInPhase(name: string, unit: string, field: string): string {
  const [side] = /(?:positive|negative)$/u.exec(field) ?? [];
  const start = `${name.charAt(0).toLowerCase()}${name.slice(1)}`;
  return `${start}${side === undefined ? "" : `, ${side}`}${unit === "% of span" ? ", % of span" : ""}`;
}

function resultName(place: string): { what: string; rank: number } | undefined {
  const first = ranked[place];
  if (first !== undefined) return { what: first, rank: ranks.indexOf(place) };
  const { phase, field = "" } = /^phases\.(?<phase>asFound|asLeft)\.(?<field>.*)$/u.exec(place)?.groups ?? {};
  const name = figureNames.get(field);
  if (phase === undefined || name === undefined) return undefined;
  return { what: `${phaseTitles[phase as PhaseName]}: ${name}`, rank: ranks.length };
}

const fewestDigits = 3;
const digitsInList = 6;
const mostDigits = 17;

/** As many digits as two numbers need to be told apart. */
function digitsThatDiffer(before: Change["before"], after: Change["after"]): number {
  const [one, other] = [before, after].map((json) => (json === null ? undefined : JSON.parse(json)));
  if (typeof one === "object" || typeof other === "object") return digitsInList;
  if (typeof one !== "number" || typeof other !== "number") return fewestDigits;
  for (let digits = fewestDigits; digits < mostDigits; digits += 1) {
    if (writeSignificant(one, digits) !== writeSignificant(other, digits)) return digits;
  }
  return mostDigits;
}

/** A value as people read it; those along a list with their places in it, counted from 1. */
function valueWords(json: Change["before"], digits: number): string {
  return json === null ? "–" : wordsOf(JSON.parse(json), digits);
}

function wordsOf(value: unknown, digits: number): string {
  if (value === null) return "not determined";
  if (typeof value === "number") return Number.isInteger(value) ? String(value) : writeSignificant(value, digits);
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value !== "object") return String(value);
  const parts = Object.entries(value).map(([name, part]) => `${placeWords(name)} ${wordsOf(part, digits)}`);
  return parts.length === 0 ? "none" : parts.join("; ");
}

/** Columns of a row that was added or taken away keep their names. */
function placeWords(name: string): string {
  if (!/^\d+(?:\.\d+)*$/u.test(name)) return name;
  const places = name.split(".").map((index) => Number(index) + 1);
  return `${places.join(".")}:`;
}
