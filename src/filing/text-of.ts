import type { FilingDisk } from "./filing-disk.ts";

/** Every byte counts, those of a byte order mark too. */
const decoder = new TextDecoder("utf-8", { ignoreBOM: true });

/** A file as text; a file that is not there is empty. */
export async function textOf(disk: Pick<FilingDisk, "read">, path: string): Promise<string> {
  return decoder.decode((await disk.read(path)) ?? new Uint8Array());
}
