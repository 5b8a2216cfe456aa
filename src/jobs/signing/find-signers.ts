import type { Signer } from "../../model/signer.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { whatIsWrong } from "../../problems/sentence.ts";
import { fileDigest } from "../../record/file-digest.ts";
import { readSigners } from "../../workbook/read-signers.ts";
import type { Disk } from "../disk.ts";

const tableName = "signers.csv";

/** A table of signers, where it lies, and which it was: whoever can change it decides who has signed. */
export type SignersTable = {
  path: string;
  sha256: string;
  signers: readonly Signer[];
  /** Why nobody in it is a signer, in words; nothing where it can be read. */
  unusable?: string | undefined;
};

/**
 * The table of signers: at the path that was given, else beside the record, else in the folder above, where a folder of
 * filed records has it. Nothing, and a problem, where there is none or where it cannot be read.
 */
export async function findSigners(
  disk: Pick<Disk, "read">,
  record: string,
  given: string | undefined,
  problems: ProblemList,
): Promise<SignersTable | undefined> {
  const paths = given === undefined ? placesFor(record) : [given];
  for (const path of paths) {
    const read = await disk.read(path);
    const [file] = read?.isFolder === false ? read.files : [];
    if (file === undefined) continue;
    const before = problems.all.length;
    const signers = readSigners({ ...file, name: path }, problems).map(({ row }) => row);
    const heading = problems.all.slice(before).find(({ code }) => code === "signing/signers-heading");
    return { path, sha256: fileDigest(file.bytes).sha256, signers, unusable: heading && whatIsWrong(heading) };
  }
  problems.add("signing/no-signers", { file: given ?? record });
  return undefined;
}

function placesFor(record: string): readonly string[] {
  const folder = folderOf(record);
  return [`${folder}/${tableName}`, `${folderAbove(folder)}/${tableName}`];
}

function folderOf(path: string): string {
  const cut = Math.max(path.lastIndexOf("/"), path.lastIndexOf("\\"));
  return cut === -1 ? "." : path.slice(0, cut);
}

function folderAbove(folder: string): string {
  return folder === "." || /(?:^|[\\/])\.\.?$/u.test(folder) ? `${folder}/..` : folderOf(folder);
}
