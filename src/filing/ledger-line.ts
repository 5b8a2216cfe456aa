import { canonicalText } from "../proof/canonical-text.ts";
import { digestOf, toHex } from "../record/file-digest.ts";

type Entered = {
  /** From 1, without a gap. */
  number: number;
  /** Date and time with offset. */
  at: string;
  /** Of the page, from the folder on. */
  path: string;
  fileSha256: string;
  sealSha256: string;
  tag: string;
  calibration: string;
  revision: number;
  /** SHA-256 of the line before, without its newline; zeros for the first. */
  previous: string;
};

/** A page was filed: by whom, and where the paper with its signatures lies, if that was said. */
export type FiledLine = Entered & { action: "filed"; by?: string; paper?: string };
/** What was decided about a loop that was found out of tolerance. */
export type DecidedLine = Entered & { action: "decided"; by: string; decision: string };
/** One line of a ledger: an action that is over. */
export type LedgerLine = FiledLine | DecidedLine;

/** What stands in the place of a hash before the first line. */
export const noLine = "0".repeat(64);

const isWhole = (value: unknown) => Number.isInteger(value) && (value as number) >= 1;
const isWords = (value: unknown) => typeof value === "string" && value.trim() !== "";
const matches = (form: RegExp) => (value: unknown) => typeof value === "string" && form.test(value);
const sha256 = matches(/^[0-9a-f]{64}$/u);

const form: Readonly<Record<keyof Entered, (value: unknown) => boolean>> = {
  number: isWhole,
  at: matches(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?(?:Z|[+-]\d\d:\d\d)$/u),
  path: matches(/^\w[\w.-]*\/\w[\w.-]*\.html$/u),
  fileSha256: sha256,
  sealSha256: sha256,
  tag: isWords,
  calibration: isWords,
  revision: isWhole,
  previous: sha256,
};
const required = Object.entries(form);
const furtherOf = {
  filed: { must: [], may: ["by", "paper"] },
  decided: { must: ["by", "decision"], may: [] },
} as const;

/** A line as it stands in a ledger, without its newline. */
export function ledgerText(line: LedgerLine): string {
  return canonicalText(line);
}

/** What a line says; nothing where it does not have the form of a line. */
export function readLedgerLine(text: string): LedgerLine | undefined {
  const found = parsed(text);
  if (found === undefined || !required.every(([name, isRight]) => isRight(found[name]))) return undefined;
  const further = found.action === "filed" || found.action === "decided" ? furtherOf[found.action] : undefined;
  if (further === undefined || !further.must.every((name) => isWords(found[name]))) return undefined;
  const others = Object.keys(found).filter((name) => !Object.hasOwn(form, name) && name !== "action");
  const known: readonly string[] = [...further.must, ...further.may];
  return others.every((name) => known.includes(name) && isWords(found[name])) ? (found as LedgerLine) : undefined;
}

/** The hash by which the next line knows this one. */
export function lineHash(text: string): string {
  return toHex(digestOf(new TextEncoder().encode(text)));
}

function parsed(text: string): Record<string, unknown> | undefined {
  try {
    const found: unknown = JSON.parse(text);
    return typeof found === "object" && found !== null ? (found as Record<string, unknown>) : undefined;
  } catch {
    return undefined;
  }
}
