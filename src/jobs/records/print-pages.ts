import type { ProblemList } from "../../problems/problem-list.ts";
import { checkSeal } from "../../proof/check-seal.ts";
import { pageDifference } from "../../report/page-difference.ts";
import type { Disk } from "../disk.ts";
import { type RecordFile, readRecordFiles } from "./read-record-files.ts";
import { recordJson, recordPage } from "./write-record.ts";

/** What goes into a PDF file beside its sides. */
type Attached = { name: string; text: string };

/** Prints the text of a page into a file that is whole or not there; the reason where it did not work. */
export type Print = (page: string, target: string, attached: Attached) => Promise<{ why: string } | undefined>;

/**
 * Prints each page of a record, with its JSON inside, to a PDF file beside it, one after the other; gives the files that
 * were written.
 *
 * What is printed is made anew from the record, never what lies in the file: that could hold a script, an address, or
 * another word than the record's. A file that this version would write otherwise is told and not printed.
 */
export async function printPages(
  disk: Pick<Disk, "read">,
  pages: readonly string[],
  { print, softwareVersion }: { print: Print; softwareVersion: string },
  problems: ProblemList,
): Promise<readonly string[]> {
  const written: string[] = [];
  for (const file of await readRecordFiles(disk, pages, problems)) {
    const { path, written: record } = file;
    const place = path.replace(/\.html?$/iu, "");
    const target = `${place}.pdf`;
    const attached = { name: `${place.split(/[\\/]/u).at(-1)}.json`, text: recordJson(record) };
    const page = await pageOf(file, softwareVersion);
    const fault = typeof page === "string" ? await print(page, target, attached) : page;
    if (fault === undefined) written.push(target);
    else problems.add("options/cannot-print", { file: path }, { values: fault });
  }
  return written;
}

/** The page of the record in a file; or why it is not to be printed. */
async function pageOf(
  { text, record, written }: RecordFile,
  softwareVersion: string,
): Promise<string | { why: string }> {
  if (text.trimStart().startsWith("{")) return { why: "it is the record's JSON, not its page" };
  if (checkSeal(written).length > 0) return { why: "the content of the record is not the one that was sealed" };
  const page = await recordPage(record);
  const isOfThisVersion = record.software.version === softwareVersion;
  if (!isOfThisVersion || pageDifference(page, text) === undefined) return page;
  return { why: "the page is not what its record gives: it was changed; spanwright verify tells where" };
}
