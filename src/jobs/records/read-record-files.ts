import type { ProblemList } from "../../problems/problem-list.ts";
import { readSealedRecord } from "../../record/read-sealed-record.ts";
import type { ReadRecord } from "../../record/written-record.ts";
import type { Disk } from "../disk.ts";

/** A file that holds a record: a page, or the JSON alone. */
export type RecordFile = ReadRecord & { path: string; text: string };

/** Reads files of records, in the order in which they are named; what is none is a problem. */
export async function readRecordFiles(
  disk: Pick<Disk, "read">,
  paths: readonly string[],
  problems: ProblemList,
): Promise<readonly RecordFile[]> {
  const files: RecordFile[] = [];
  for (const path of paths) {
    const found = await disk.read(path);
    const [file] = found?.files ?? [];
    if (found === undefined || found.isFolder || file === undefined) {
      problems.add("options/no-such-record", { file: path });
      continue;
    }
    const text = new TextDecoder().decode(file.bytes);
    const read = readSealedRecord(text, path);
    if ("record" in read) files.push({ path, text, ...read });
    else problems.add("options/not-a-record", { file: path });
  }
  return files;
}
