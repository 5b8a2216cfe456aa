import type { Doubt } from "./doubt.ts";
import { holdsPackedRecord, mostRecordBytes, withPlainRecord } from "./record-element.ts";
import { type SealedRecord, sealedRecordSchema } from "./record-schema.ts";
import { isJsonObject, type JsonObject } from "./versions/changed-at.ts";
import { formOf, inPresentForm, presentForm } from "./versions/in-present-form.ts";
import type { ReadRecord, WrittenRecord } from "./written-record.ts";

const plainElement = /<script type="application\/json" id="record">(?<json>[^<]*)<\/script>/u;

/** No seal covers them, so that nothing may stand in them that this program does not know. */
const unsealed: readonly unknown[] = ["seal", "signOff"];

/**
 * The record that a file holds: a page with the record's JSON inside, packed or plain, or the JSON alone. Records of every earlier form
 * are read, and of the present form those of a later program too: a field that is not known is kept and listed.
 *
 * @param text of the file
 * @param file its name, for the doubts
 * @returns the record as it stands there, its keys in the order of the file, whatever its seal says; or why there is none
 * Source: own choice.
 * @example readSealedRecord("{}", "a.json").doubts.map(({ about, place }) => `${about} of ${place}`) //
 *   ["file of a.json"]
 */
export function readSealedRecord(text: string, file: string): Reading {
  return sealedRecordReader()(text, file);
}

/** What was read of a file, or why there is no record. */
export type Reading = ReadRecord | { doubts: readonly Doubt[] };

/**
 * Reads one file after the other, as `readSealedRecord` does. The record that was read last is kept, because the file
 * that is read next often holds the same text: the JSON beside a page.
 *
 * @returns `readSealedRecord` with such a memory
 * Source: own choice.
 * @example "doubts" in sealedRecordReader()("{}", "a.json") // true
 */
export function sealedRecordReader(): (text: string, file: string) => Reading {
  let last: { json: string; read: ReadRecord } | undefined;
  return (text, file) => {
    const doubt = (says: string) => ({ doubts: [{ about: "file" as const, place: file, says }] });
    if (text.length > 3 * mostRecordBytes) return doubt(`this is larger than any record: ${text.length} characters`);
    const plain = withPlainRecord(text);
    const embedded = plainElement.exec(plain)?.groups?.json;
    const json = embedded ?? (text.endsWith("\n") ? text.slice(0, -1) : text);
    if (json === last?.json) return last.read;
    if (json.length > mostRecordBytes) return doubt(`its JSON is larger than any record's: ${json.length} characters`);
    const found = parsed(json);
    if (found === undefined) return doubt(notJson(plain, embedded));
    const read = readJson(found);
    if ("says" in read) return doubt(read.says);
    last = { json, read };
    return read;
  };
}

function readJson(found: unknown): ReadRecord | { says: string } {
  const excess = excessOf(found);
  if (excess !== undefined) return { says: `this is no record: its JSON ${excess}` };
  const form = isJsonObject(found) ? formOf(found.schema) : undefined;
  if (!isJsonObject(found) || form === undefined) return { says: `this is JSON, but no record: ${whatItIs(found)}` };
  const record = inPresentForm(found, form);
  if (record === undefined) return { says: `the record is of form ${form}; ${formsRead}${writerOf(found)}` };
  if (found.seal === undefined) return { says: "the record has no seal: nothing shows that it is as it was written" };
  const checked = checkForm(record);
  if ("places" in checked) return { says: `the record does not have form ${form}, at ${checked.places.join(", ")}` };
  return { record: record as SealedRecord, written: found as WrittenRecord, form, ...checked };
}

/** Far more than a record has; whoever goes through it by levels would run out of room somewhere beyond. */
const deepest = 100;

/** A record of 5,000 readings at 5,000 test points has some 65,000; every part that lacks its fields takes time and room to tell. */
const mostParts = 100_000;

/** Whether there is more of it than any record has; by levels and not by calls, for which there would be no room. */
function excessOf(json: unknown): string | undefined {
  let level: readonly object[] = [json].filter(isPart);
  let parts = level.length;
  for (let depth = 1; level.length > 0; depth++) {
    if (depth > deepest) return `is nested deeper than ${deepest} levels`;
    const below: object[] = [];
    for (const part of level) {
      for (const value of Object.values(part)) if (isPart(value)) below.push(value);
      if (parts + below.length > mostParts) return `has more than ${mostParts} objects and lists`;
    }
    parts += below.length;
    level = below;
  }
  return undefined;
}

function isPart(value: unknown): value is object {
  return typeof value === "object" && value !== null;
}

const formsRead = `this program reads forms 1 to ${presentForm}`;

/** Strict is the form that is written; what is read may have fields more. */
function checkForm(record: JsonObject): { unknownFields: readonly string[] } | { places: readonly string[] } {
  const issues = sealedRecordSchema.safeParse(record).error?.issues ?? [];
  const unknownFields: string[] = [];
  const places: string[] = [];
  for (const issue of issues) {
    if (issue.code === "unrecognized_keys" && !unsealed.includes(issue.path[0]))
      unknownFields.push(...issue.keys.map((key) => [...issue.path, key].join(".")));
    else places.push(issue.path.join(".") || "the whole");
  }
  return places.length === 0 ? { unknownFields } : { places: [...new Set(places)].slice(0, 5) };
}

function notJson(text: string, embedded: string | undefined): string {
  if (embedded === undefined && holdsPackedRecord(text))
    return "the record in it cannot be read: it cannot be unpacked";
  const isRecordExpected = embedded !== undefined || text.trimStart().startsWith("{");
  return isRecordExpected
    ? "the record in it cannot be read: it is no JSON"
    : "this is no calibration record: no record is embedded in it";
}

function whatItIs(found: unknown): string {
  if (Array.isArray(found)) return "it is a list";
  if (!isJsonObject(found)) return "it is no object";
  if (found.schema !== undefined) return `its schema is ${JSON.stringify(found.schema).slice(0, 60)}`;
  const names = Object.keys(found);
  if (names.length === 0) return "it is an object without any field";
  const first = names.slice(0, 3).map((name) => JSON.stringify(name.slice(0, 40)));
  return `it has no schema; it begins with ${first.join(", ")}`;
}

function writerOf({ software }: JsonObject): string {
  const version = isJsonObject(software) ? software.version : undefined;
  return typeof version === "string" ? `; spanwright ${version} wrote it and reads it` : "";
}

function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
}
