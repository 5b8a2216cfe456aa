import type { Doubt } from "./doubt.ts";
import { recordFormat, type SealedRecord, sealedRecordSchema } from "./record-schema.ts";

const recordElement = /<script type="application\/json" id="record">(?<json>[^<]*)<\/script>/u;

/**
 * The record that a file holds: a page with the record's JSON inside, or the JSON alone.
 *
 * @param text of the file
 * @param file its name, for the doubts
 * @returns the record as it stands there, its keys in the order of the file, whatever its seal says; or why there is none
 * Source: own choice.
 * @example readSealedRecord("{}", "a.json") // { doubts: [{ about: "file", place: "a.json", says: "..." }] }
 */
export function readSealedRecord(text: string, file: string): { record: SealedRecord } | { doubts: readonly Doubt[] } {
  const doubt = (says: string) => ({ doubts: [{ about: "file" as const, place: file, says }] });
  const json = text.trimStart().startsWith("{") ? text : recordElement.exec(text)?.groups?.json;
  if (json === undefined) return doubt("this is no calibration record: no record is embedded in it");
  const found = parsed(json);
  if (found === undefined) return doubt("the record in it cannot be read: it is no JSON");
  const { schema, software } = (found ?? {}) as { schema?: unknown; software?: { version?: unknown } | null };
  if (schema !== recordFormat) {
    const writer =
      typeof software?.version === "string" ? `; spanwright ${software.version} wrote it and reads it` : "";
    return doubt(`the record is of the form ${JSON.stringify(schema)}; this program reads ${recordFormat}${writer}`);
  }
  const result = sealedRecordSchema.safeParse(found);
  if (result.success) return { record: found as SealedRecord };
  const places = result.error.issues.slice(0, 5).map(({ path }) => path.join(".") || "the whole");
  return doubt(`the record does not have the form ${recordFormat}, at ${[...new Set(places)].join(", ")}`);
}

function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
}
