import type { FilingDisk } from "./filing-disk.ts";

/** The bytes of a file, nothing where there is none, or why they cannot be read: that keeps nobody from the others. */
export async function bytesOrWhy(
  disk: Pick<FilingDisk, "read">,
  path: string,
): Promise<Uint8Array | undefined | { why: string }> {
  try {
    return await disk.read(path);
  } catch (fault) {
    return { why: fault instanceof Error ? fault.message : String(fault) };
  }
}
