import { type ComparedFigures, compareFigures } from "../../proof/compare-figures.ts";
import { differenceDoubts } from "../../proof/difference-doubts.ts";
import type { Doubt } from "../../record/doubt.ts";
import { embeddedJson, withPlainRecord } from "../../record/record-element.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import type { ReadRecord } from "../../record/written-record.ts";
import { rebuildWithinLimit } from "../records/rebuild-within-limit.ts";
import { recordJson } from "../records/write-record.ts";
import { jsonDoubts } from "./json-doubts.ts";

/** What a record and this version's record of the same rows have in common; or why there is none of this version. */
export type SharedFigures = (ComparedFigures & { note?: string }) | { why: string };

type Options = { softwareVersion: string; filedBy?: number | undefined };

const recordElements = /<script[^>]*\bid=["']?record\b[^>]*>([^<]*)<\/script>/gu;
const mostFields = 5;

/**
 * What can be said of a record that another version of the program wrote, beside its seal and signatures: whether each
 * figure that both versions define is what its rows give, and whether its data are written as every version writes
 * them. Its page is not drawn again, because this version draws otherwise; where a ledger filed it, its SHA-256 stands
 * for it. That it was written by another version is no doubt.
 */
export function verifyOtherVersion(
  text: string,
  { record, written, form, unknownFields }: ReadRecord,
  shared: SharedFigures,
  { softwareVersion, filedBy }: Options,
): { doubts: readonly Doubt[]; note: string } {
  const { version } = record.software;
  const isJson = text.trimStart().startsWith("{");
  const differences = "why" in shared ? [] : shared.differences;
  const doubts = [
    ...differenceDoubts(differences),
    ...(differences.length > 0 ? [versionDoubt(version, softwareVersion)] : []),
    ...(isJson ? jsonDoubts(text, jsonOf(written, form)) : embeddedDoubts(text, written)),
  ];
  const parts = [
    `written by spanwright ${version} in form ${form}, verified by ${softwareVersion}`,
    figureWords(shared),
    ...("note" in shared && shared.note !== undefined ? [shared.note] : []),
    ...(isJson ? [] : [pageWords(filedBy)]),
    ...(unknownFields.length > 0 ? [`fields that this version does not know: ${someOf(unknownFields)}`] : []),
  ];
  return { doubts, note: parts.join("; ") };
}

/** The JSON beside a page, as each form is written: the first one was indented. */
function jsonOf(written: object, form: number): string {
  return form === 1 ? `${JSON.stringify(written, null, 2)}\n` : recordJson(written);
}

/** The figures of a record, held against what this version makes of its rows. */
export function sharedFigures(record: SealedRecord): SharedFigures {
  try {
    const rebuilt = rebuildWithinLimit(record);
    if ("doubts" in rebuilt) return { why: rebuilt.doubts.map(({ says }) => says).join("; ") };
    const { made, found, note } = rebuilt;
    return { ...compareFigures(made, found, record.software.version), ...(note === undefined ? {} : { note }) };
  } catch (fault) {
    return { why: fault instanceof Error ? fault.message : String(fault) };
  }
}

function figureWords(shared: SharedFigures): string {
  if ("why" in shared) return `none of its figures could be made again from its rows: ${shared.why}`;
  const { count, differences } = shared;
  if (differences.length > 0) return `${differences.length} of ${count} figures that both versions define differ`;
  return `the ${count} figures that both versions define agree with its rows within 1 in 10^9`;
}

function pageWords(filedBy: number | undefined): string {
  return filedBy === undefined
    ? "the page was not drawn again: whether it shows what the record inside it says was not checked"
    : `the page was not drawn again: its SHA-256 is that in line ${filedBy} of the ledger`;
}

/** What a page holds as its record has to be the one record in it, written as every version writes it. */
function embeddedDoubts(text: string, written: object): readonly Doubt[] {
  const elements = [...withPlainRecord(text).matchAll(recordElements)].map(([, json]) => json);
  const doubt = (says: string): Doubt => ({ about: "page", place: "data inside the page", says });
  if (elements.length !== 1) return [doubt(`it holds ${elements.length} records, and may hold one`)];
  return elements[0] === embeddedJson(written) ? [] : [doubt("the record is not written as a record is written")];
}

/** Either the record was changed, or the versions do not agree: then that one has to be asked. */
function versionDoubt(version: string, softwareVersion: string): Doubt {
  const says = `spanwright ${version} wrote this record and this is ${softwareVersion}, which computes these figures otherwise, or the record was changed: verify it with spanwright ${version}`;
  return { about: "file", place: "software.version", says };
}

function someOf(fields: readonly string[]): string {
  const more = fields.length - mostFields;
  return `${fields.slice(0, mostFields).join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
}
