import { link, open, rm } from "node:fs/promises";
import { dirname } from "node:path";
import { CannotWrite } from "../jobs/disk.ts";
import { makeFolder } from "./make-folder.ts";

const ownerAlone = 0o600;

/** A file that its owner alone may read: written beside its place, and linked there only if nothing is there. */
export async function writeSecretFile(path: string, text: string): Promise<void> {
  const temporary = `${path}.${crypto.randomUUID()}.tmp`;
  try {
    await makeFolder(dirname(path));
    const file = await open(temporary, "wx", ownerAlone);
    try {
      await file.writeFile(text);
      await file.sync();
    } finally {
      await file.close();
    }
    await link(temporary, path);
  } catch (fault) {
    throw new CannotWrite(fault instanceof Error ? fault.message : String(fault));
  } finally {
    await rm(temporary, { force: true }).catch(() => undefined);
  }
}
