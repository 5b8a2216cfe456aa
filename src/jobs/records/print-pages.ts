import type { ProblemList } from "../../problems/problem-list.ts";
import type { Disk } from "../disk.ts";
import { readRecordFiles } from "./read-record-files.ts";

/** Prints a page into a file that is whole or not there; the reason where it did not work. */
export type Print = (page: string, target: string) => Promise<{ why: string } | undefined>;

/** Prints each page of a record to a PDF file beside it, one after the other; gives the files that were written. */
export async function printPages(
  disk: Pick<Disk, "read">,
  pages: readonly string[],
  print: Print,
  problems: ProblemList,
): Promise<readonly string[]> {
  const written: string[] = [];
  for (const { path, text } of await readRecordFiles(disk, pages, problems)) {
    const target = `${path.replace(/\.html?$/iu, "")}.pdf`;
    const isPage = text.startsWith("<!doctype html>");
    const fault = isPage ? await print(path, target) : { why: "it is the record's JSON, not its page" };
    if (fault === undefined) written.push(target);
    else problems.add("options/cannot-print", { file: path }, { values: fault });
  }
  return written;
}
