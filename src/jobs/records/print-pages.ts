import type { ProblemList } from "../../problems/problem-list.ts";
import type { Disk } from "../disk.ts";
import { readRecordFiles } from "./read-record-files.ts";
import { recordJson } from "./write-record.ts";

/** What goes into a PDF file beside its sides. */
type Attached = { name: string; text: string };

/** Prints a page into a file that is whole or not there; the reason where it did not work. */
export type Print = (page: string, target: string, attached: Attached) => Promise<{ why: string } | undefined>;

/** Prints each page of a record, with its JSON inside, to a PDF file beside it, one after the other; gives the files that were written. */
export async function printPages(
  disk: Pick<Disk, "read">,
  pages: readonly string[],
  print: Print,
  problems: ProblemList,
): Promise<readonly string[]> {
  const written: string[] = [];
  for (const { path, text, written: record } of await readRecordFiles(disk, pages, problems)) {
    const place = path.replace(/\.html?$/iu, "");
    const target = `${place}.pdf`;
    const attached = { name: `${place.split(/[\\/]/u).at(-1)}.json`, text: recordJson(record) };
    const isPage = text.startsWith("<!doctype html>");
    const fault = isPage ? await print(path, target, attached) : { why: "it is the record's JSON, not its page" };
    if (fault === undefined) written.push(target);
    else problems.add("options/cannot-print", { file: path }, { values: fault });
  }
  return written;
}
