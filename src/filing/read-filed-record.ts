import { fileDigest } from "../record/file-digest.ts";
import type { ReadRecord } from "../record/written-record.ts";
import { bytesOrWhy } from "./bytes-or-why.ts";
import type { FilingDisk } from "./filing-disk.ts";
import type { FiledLine } from "./ledger-line.ts";

/**
 * The record of a page that was filed, if the page is still the one that the ledger names; or why there is none.
 * What reads records is loaded here, for a folder whose index is whole is listed without reading one.
 */
export async function readFiledRecord(
  disk: Pick<FilingDisk, "read">,
  folder: string,
  { path, fileSha256 }: Pick<FiledLine, "path" | "fileSha256">,
): Promise<ReadRecord | { says: string }> {
  const bytes = await bytesOrWhy(disk, `${folder}/${path}`);
  if (bytes === undefined) return { says: "the page is missing" };
  if ("why" in bytes) return { says: `the page cannot be read: ${bytes.why}` };
  if (fileDigest(bytes).sha256 !== fileSha256) return { says: "the page is not the one that was filed" };
  const { readSealedRecord } = await import("../record/read-sealed-record.ts");
  const found = readSealedRecord(new TextDecoder().decode(bytes), path);
  return "record" in found ? found : { says: found.doubts.map(({ says }) => says).join("; ") };
}
