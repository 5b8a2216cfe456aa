import type { ProblemList } from "../../problems/problem-list.ts";
import { holdsPackedRecord, jsonOf, withPlainRecord } from "../../record/record-element.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import { renderPage } from "../../report/page.tsx";
import type { Disk, NewFile } from "../disk.ts";
import { writeOrTell } from "../write-or-tell.ts";
import { drawPictures } from "./draw-pictures.ts";

/** The two files of a record, page first, byte for byte: nothing but the record goes into them. */
export async function recordFiles(record: SealedRecord, place: string): Promise<readonly NewFile[]> {
  return [
    { path: `${place}.html`, text: await recordPage(record) },
    { path: `${place}.json`, text: recordJson(record) },
  ];
}

export async function recordPage(record: SealedRecord): Promise<string> {
  return renderPage(record, await drawPictures(record));
}

/** The JSON of a record, for machines. */
export function recordJson(record: object): string {
  return `${jsonOf(record)}\n`;
}

/** Writes both files of a record, or none; gives the path of the page, or nothing and a problem. */
export async function writeRecord(
  disk: Pick<Disk, "writeTogether">,
  files: readonly NewFile[],
  place: string,
  problems: ProblemList,
): Promise<string | undefined> {
  const page = `${place}.html`;
  return (await writeOrTell(() => disk.writeTogether(files), page, problems)) ? page : undefined;
}

/** The same of a record that nobody has signed: nothing, and a problem, where a signed one lies there. */
export async function writeDraft(
  disk: Pick<Disk, "read" | "writeTogether">,
  files: readonly NewFile[],
  place: string,
  problems: ProblemList,
): Promise<string | undefined> {
  if (!(await isSignedThere(disk, place))) return writeRecord(disk, files, place, problems);
  problems.add("signing/would-overwrite", { file: `${place}.html` });
  return undefined;
}

/** A list of signatures that is not empty; in a text that a table gave, the quotation marks are escaped. */
const someSignature = /"signatures"\s*:\s*\[\s*[^\s\]]/u;

/** Whether a signed record lies there, or one that cannot be read any more; then nothing may be written over it. */
export async function isSignedThere(disk: Pick<Disk, "read">, place: string): Promise<boolean> {
  for (const ending of ["html", "json"]) {
    const found = await disk.read(`${place}.${ending}`);
    for (const { bytes } of found?.isFolder === false ? found.files : []) {
      const text = withPlainRecord(new TextDecoder().decode(bytes));
      if (someSignature.test(text) || holdsPackedRecord(text)) return true;
    }
  }
  return false;
}
