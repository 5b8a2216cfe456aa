import { checkLedger } from "../../../src/filing/check-ledger.ts";
import { checkLines } from "../../../src/filing/check-lines.ts";
import { recordPage } from "../../../src/jobs/records/write-record.ts";
import { recordVerifier } from "../../../src/jobs/signing/verify-record.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { checkSignatures } from "../../../src/proof/check-signatures.ts";
import { readSigners } from "../../../src/workbook/read-signers.ts";
import { sampleLines, textOfLines } from "../../filing/sample-lines.ts";
import { reportedRecord, softwareVersion } from "../../jobs/reported-records.ts";
import { signersTable } from "../../jobs/signed-disk.ts";
import { ada, ines, signedBy } from "../../proof/sample-signing.ts";
import { drawFrom } from "../../properties/spoiled/draw.ts";
import { judged } from "../../workbook/full-workbook.ts";
import { smallestWorkbook, withText } from "../../workbook/smallest-workbook.ts";
import { spreadsheet } from "../../workbook/spreadsheet.ts";
import { damaged } from "./damage.ts";

/**
 * What came of a damaged file: it was told; or it reads as its undamaged self; or as somebody would read it who has
 * nothing but the file; or, which may not be, it is taken for what it is not, or ends in a fault of the program.
 */
export type Outcome = "told" | "the same" | "read as it stands" | "silent" | "fault";
export type Tried = { kind: Kind; seed: number; how: string; outcome: Outcome; why: string; milliseconds: number };

const encode = (text: string) => new TextEncoder().encode(text);
const workbook = withText("calibrations.csv", "T. Example", "I. Example");
const { record, page, json } = await reportedRecord(workbook);
const signed = signedBy(record, [ines, "performed"], [ada, "authorised"]);
const ledger = textOfLines(sampleLines(12));
const head = checkLedger(ledger).hashes.at(-1);
const readings = smallestWorkbook["readings.csv"];
const { "readings.csv": _, ...otherTables } = smallestWorkbook;
const good = await judged(smallestWorkbook);
const measuredOf = ({ cases }: Awaited<ReturnType<typeof judged>>) =>
  JSON.stringify(cases.map((one) => one.readings.map(({ row }) => row)));

type Attempt = { bytes: Uint8Array; judge: (bytes: Uint8Array) => Promise<Outcome> };

/** Each kind of file with its undamaged bytes, and what is made of damaged ones. */
const attempts = {
  "page of a record": { bytes: encode(await recordPage(record)), judge: (bytes) => verified(bytes, page) },
  "JSON of a record": { bytes: encode(json), judge: (bytes) => verified(bytes, json) },
  ledger: {
    bytes: encode(ledger),
    judge: async (bytes) => {
      const text = new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
      if (text === ledger) return "the same";
      const { lines, hashes, doubts } = checkLedger(text);
      return doubts.length > 0 || checkLines(lines).length > 0 || !hashes.includes(head ?? "") ? "told" : "silent";
    },
  },
  "table of signers": {
    bytes: encode(signersTable()),
    judge: async (bytes) => {
      const problems = new ProblemList();
      const signers = readSigners({ name: "signers.csv", bytes }, problems).map(({ row }) => row);
      return problems.all.length > 0 || checkSignatures(signed, signers).length > 0 ? "told" : "read as it stands";
    },
  },
  "table of readings": {
    bytes: encode(readings),
    judge: async (bytes) => {
      const found = await judged({ ...smallestWorkbook, "readings.csv": bytes });
      if (found.problems.length > 0) return "told";
      return measuredOf(found) === measuredOf(good) ? "the same" : "read as it stands";
    },
  },
  spreadsheet: {
    bytes: await spreadsheet("readings", readings),
    judge: async (bytes) => {
      const found = await judged({ ...otherTables, "book.xlsx": bytes });
      if (found.problems.length > 0) return "told";
      return measuredOf(found) === measuredOf(good) ? "the same" : "silent";
    },
  },
} satisfies Record<string, Attempt>;

export type Kind = keyof typeof attempts;
export const kinds = Object.keys(attempts) as Kind[];

/** Damages a file of a kind as the seed says, and gives it to the program. */
export async function tryDamage(kind: Kind, seed: number): Promise<Tried> {
  const { bytes, judge } = attempts[kind] as Attempt;
  const { bytes: other, how } = damaged(bytes, drawFrom(seed));
  const begun = performance.now();
  const tried = (outcome: Outcome, why = ""): Tried => ({
    ...{ kind, seed, how, outcome, why },
    milliseconds: performance.now() - begun,
  });
  try {
    return tried(await judge(other));
  } catch (fault) {
    return tried("fault", fault instanceof Error ? `${fault.message}\n${fault.stack}` : String(fault));
  }
}

async function verified(bytes: Uint8Array, undamaged: string): Promise<Outcome> {
  const text = new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
  if (text === undamaged) return "the same";
  const { done, value } = await recordVerifier()(text, "a.html", { softwareVersion, signers: undefined }).next();
  return done !== true || value !== undefined ? "told" : "silent";
}
