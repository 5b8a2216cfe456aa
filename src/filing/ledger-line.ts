import crypto from "node:crypto";
import { canonicalText } from "../proof/canonical-text.ts";
import { digestOf, toHex } from "../record/file-digest.ts";

type Entered = {
  /** From 1, without a gap. */
  number: number;
  /** Date and time with offset. */
  at: string;
  /** SHA-256 of the line before, without its newline; zeros for the first. */
  previous: string;
};

type AboutPage = Entered & {
  /** Of the page, from the folder on. */
  path: string;
  fileSha256: string;
  sealSha256: string;
  tag: string;
  calibration: string;
  revision: number;
};

/**
 * A page was filed: by whom, and where the paper with its signatures lies, if that was said; by which table of signers
 * its signatures were checked, and which row the index got of it, each as its SHA-256.
 */
export type FiledLine = AboutPage & {
  action: "filed";
  by?: string;
  paper?: string;
  signersSha256?: string;
  rowSha256?: string;
};
/** What was decided about a loop that was found out of tolerance. */
export type DecidedLine = AboutPage & { action: "decided"; by: string; decision: string };
/** A filed page counts no more: who said so, and why. It stays where it lies. */
export type WithdrawnLine = AboutPage & { action: "withdrawn"; by: string; reason: string };
/** A page that was withdrawn in error counts again. */
export type RestoredLine = AboutPage & { action: "restored"; by: string; reason: string };
/** A page was kept long enough, and is no longer there: who disposed of it, and by which rule. */
export type DisposedLine = AboutPage & { action: "disposed"; by: string; reason: string };

type AboutTag = Entered & { tag: string; by: string; reason: string };
/** A loop is no longer in use. */
export type RetiredLine = AboutTag & { action: "retired" };
/** A loop is called otherwise from now on; or it is the same as another, whose history is its own too. */
export type RenamedLine = AboutTag & { action: "renamed"; to: string };
/** A loop was moved to another place. */
export type RelocatedLine = AboutTag & { action: "relocated"; place: string };
/** The sensor of a loop was put on another loop. */
export type TransferredLine = AboutTag & { action: "transferred"; to: string };
/** What became of a loop, page or no page. */
export type TagLine = RetiredLine | RenamedLine | RelocatedLine | TransferredLine;

/** The index was made anew from the pages: how many rows it has, and the SHA-256 of theirs, one after the other. */
export type IndexedLine = Entered & { action: "indexed"; rows: number; rowsSha256: string };
/** One line of a ledger: an action that is over. */
export type LedgerLine = PageLine | TagLine | IndexedLine;
/** A line about a page. */
export type PageLine = FiledLine | DecidedLine | WithdrawnLine | RestoredLine | DisposedLine;

/** What stands in the place of a hash before the first line. */
export const noLine = "0".repeat(64);

type Check = (value: unknown) => boolean;
type Checks = Readonly<Record<string, Check>>;

const isWhole: Check = (value) => Number.isInteger(value) && (value as number) >= 1;
const isWords: Check = (value) => typeof value === "string" && value.trim() !== "";
const matches =
  (form: RegExp): Check =>
  (value) =>
    typeof value === "string" && form.test(value);
const sha256 = matches(/^[0-9a-f]{64}$/u);

const entered: Readonly<Record<keyof Entered, Check>> = {
  number: isWhole,
  at: matches(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?(?:Z|[+-]\d\d:\d\d)$/u),
  previous: sha256,
};
const aboutPage: Readonly<Record<keyof AboutPage, Check>> = {
  ...entered,
  path: matches(/^\w[\w.-]*\/\w[\w.-]*\.html$/u),
  fileSha256: sha256,
  sealSha256: sha256,
  tag: isWords,
  calibration: isWords,
  revision: isWhole,
};
const aboutTag: Checks = { ...entered, tag: isWords, by: isWords, reason: isWords };
const forms: Readonly<Record<LedgerLine["action"], { must: Checks; may: Checks }>> = {
  filed: { must: aboutPage, may: { by: isWords, paper: isWords, signersSha256: sha256, rowSha256: sha256 } },
  decided: { must: { ...aboutPage, by: isWords, decision: isWords }, may: {} },
  withdrawn: { must: { ...aboutPage, by: isWords, reason: isWords }, may: {} },
  restored: { must: { ...aboutPage, by: isWords, reason: isWords }, may: {} },
  disposed: { must: { ...aboutPage, by: isWords, reason: isWords }, may: {} },
  retired: { must: aboutTag, may: {} },
  renamed: { must: { ...aboutTag, to: isWords }, may: {} },
  relocated: { must: { ...aboutTag, place: isWords }, may: {} },
  transferred: { must: { ...aboutTag, to: isWords }, may: {} },
  indexed: { must: { ...entered, rows: isWhole, rowsSha256: sha256 }, may: {} },
};

/** A line as it stands in a ledger, without its newline. */
export function ledgerText(line: LedgerLine): string {
  return canonicalText(line);
}

/** What a line says; nothing where it does not have the form of a line. */
export function readLedgerLine(text: string): LedgerLine | undefined {
  const { action, ...found } = parsed(text) ?? {};
  const form =
    typeof action === "string" && Object.hasOwn(forms, action) ? forms[action as LedgerLine["action"]] : undefined;
  if (form === undefined || !Object.keys(form.must).every((name) => Object.hasOwn(found, name))) return undefined;
  const checks: Checks = { ...form.must, ...form.may };
  const isRight = Object.entries(found).every(([name, value]) => Object.hasOwn(checks, name) && checks[name]?.(value));
  return isRight ? ({ ...found, action } as LedgerLine) : undefined;
}

/** The hash by which the next line knows this one. */
export function lineHash(text: string | Uint8Array): string {
  const bytes = typeof text === "string" ? new TextEncoder().encode(text) : text;
  // The one call costs a third, and is of Node 20.12 and later.
  return typeof crypto.hash === "function" ? crypto.hash("sha256", bytes) : toHex(digestOf(bytes));
}

function parsed(text: string): Record<string, unknown> | undefined {
  try {
    const found: unknown = JSON.parse(text);
    return typeof found === "object" && found !== null ? (found as Record<string, unknown>) : undefined;
  } catch {
    return undefined;
  }
}
