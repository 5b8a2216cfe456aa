import type { FilingDisk } from "./filing-disk.ts";
import { ledgerName } from "./ledger.ts";

/** Whether records were filed into a folder: then it has a ledger. */
export async function isFilingFolder(disk: Pick<FilingDisk, "namesIn">, folder: string): Promise<boolean> {
  return (await disk.namesIn(folder))?.includes(ledgerName) ?? false;
}
