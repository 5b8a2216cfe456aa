import type { Doubt } from "../record/doubt.ts";
import { fileDigest } from "../record/file-digest.ts";
import { bytesOrWhy } from "./bytes-or-why.ts";
import type { FilingDisk } from "./filing-disk.ts";
import type { FiledLine } from "./ledger-line.ts";

type Folder = {
  disk: Pick<FilingDisk, "read">;
  path: string;
  filed: readonly FiledLine[];
  /** SHA-256 of each file that the ledger does not name, by its path. */
  strange: ReadonlyMap<string, { sha256: string }>;
};

/** What happened to a page that is not where, or not what, the ledger says. */
export async function whatHappened(folder: Folder, line: FiledLine, otherwise: string): Promise<Doubt> {
  const doubt = (says: string): Doubt => ({ about: "folder", place: line.path, says });
  const bytes = await bytesOrWhy(folder.disk, `${folder.path}/${line.path}`);
  if (bytes === undefined) return doubt(missing(folder, line));
  if ("why" in bytes) return doubt(otherwise);
  const { sha256 } = fileDigest(bytes);
  if (sha256 === line.fileSha256) return doubt(otherwise);
  const other = folder.filed.find(({ fileSha256 }) => fileSha256 === sha256);
  if (other === undefined) return doubt(`the page was changed after it was filed by line ${line.number}`);
  const isSame = other.tag === line.tag && other.calibration === line.calibration;
  const what = isSame ? `revision ${other.revision} of the same calibration` : `the page ${other.path}`;
  return doubt(`revision ${line.revision} was replaced by ${what}`);
}

function missing({ strange, filed }: Folder, { fileSha256, number }: FiledLine): string {
  const moved = [...strange].find(([, one]) => one.sha256 === fileSha256)?.[0];
  if (moved !== undefined) return `the page was moved to ${moved}`;
  const twin = filed.find((line) => line.fileSha256 === fileSha256 && line.number !== number);
  return `the page is missing; line ${number} filed it${twin === undefined ? "" : `, and ${twin.path} has the same bytes`}`;
}
