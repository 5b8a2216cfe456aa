import type { FiledLine } from "./ledger-line.ts";
import { isNumber, isRecordInShort, isText, listOf, objectOf, type RecordInShort } from "./record-in-short.ts";

/** What a register needs of one filed record; what the record does not state is left out. */
export type IndexEntry = {
  /** Number of the line by which it was filed, and what that line says of the page. */
  number: number;
  path: string;
  fileSha256: string;
  summary: RecordInShort;
  description?: string;
  location?: string;
  criticality?: string;
  intervalMonths?: number;
  intervalAgreedBy?: string;
  /** What the record recommends for the loop as it was left. */
  recommendation?: string;
  /** What the record itself says was decided about a loop found out of tolerance. */
  impactDecision?: string;
  procedure?: string;
  /** Who signed, and what for: "Ada Specimen (authorised)"; by the signatures as they read. */
  signedBy?: readonly string[];
  /** Where the paper with the signatures lies, where the ledger names one. */
  paper?: string;
  standards: readonly StandardInShort[];
  /** The tag on the page, where the loop is called otherwise now; never in an index, for names go on changing. */
  filedAs?: string;
};

export type StandardInShort = { standard: string; certificate: string; dueOn: string };

/** What an entry takes from the line that filed its page. */
export type LineInShort = Pick<FiledLine, "number" | "path" | "fileSha256"> & { paper?: string | undefined };

const isStandard = objectOf({ standard: isText, certificate: isText, dueOn: isText });
const isEntry = objectOf(
  {
    ...{ number: Number.isInteger, path: isText, fileSha256: isText },
    ...{ summary: isRecordInShort, standards: listOf(isStandard) },
  },
  {
    ...{ description: isText, location: isText, criticality: isText, intervalAgreedBy: isText },
    ...{ recommendation: isText, impactDecision: isText, intervalMonths: isNumber },
    ...{ procedure: isText, paper: isText, signedBy: listOf(isText) },
  },
);

/** Whether what was read from an index has the form of an entry; whether it says what the page says, `verify` tells. */
export function isIndexEntry(found: unknown): found is IndexEntry {
  return isEntry(found);
}
