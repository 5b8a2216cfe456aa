import { CannotFile } from "./cannot-file.ts";
import type { FilingDisk } from "./filing-disk.ts";
import { withFilingLock } from "./filing-lock.ts";
import { Ledger, ledgerName } from "./ledger.ts";
import { type LedgerLine, ledgerText } from "./ledger-line.ts";

/** A folder that records are filed into, with its ledger as far as this process has read it. */
export type FilingFolder = { disk: FilingDisk; path: string; ledger: Ledger };

type Open<Line> = Omit<Line, "number" | "at" | "previous">;
/** Enters an action into the ledger, durably, and gives its line. */
export type Enter = <Line extends LedgerLine>(line: Open<Line>) => Promise<Line>;

export function filingFolder(disk: FilingDisk, path: string): FilingFolder {
  return { disk, path, ledger: new Ledger() };
}

/** Does something to a folder while no other process does, after reading what others have entered meanwhile. */
export async function changeFolder<Result>(
  folder: FilingFolder,
  change: (enter: Enter) => Promise<Result>,
): Promise<Result> {
  return withFilingLock(folder.disk, folder.path, async ({ check, sweep }) => {
    if (folder.ledger.length === 0) await sweep();
    await readOn(folder);
    return change(async (open) => {
      await check();
      return enterLine(folder, open);
    });
  });
}

/** A last line without its newline is the trace of a process that was ended while it wrote: it never was a line. */
async function readOn({ disk, path, ledger }: FilingFolder): Promise<void> {
  const file = `${path}/${ledgerName}`;
  const bytes = await disk.readFrom(file, ledger.length);
  if (bytes === undefined) throw new CannotFile("filing/ledger-broken", { wrong: "lines at its end are gone" });
  const result = ledger.readOn(bytes);
  if ("wrong" in result) throw new CannotFile("filing/ledger-broken", { wrong: result.wrong });
  if (result.torn > 0) await disk.cut(file, ledger.length);
}

async function enterLine<Line extends LedgerLine>(
  { disk, path, ledger }: FilingFolder,
  open: Open<Line>,
): Promise<Line> {
  const number = ledger.count + 1;
  const line = { ...open, number, at: disk.now(), previous: ledger.head } as unknown as Line;
  const text = `${ledgerText(line)}\n`;
  await disk.append(`${path}/${ledgerName}`, text, "durable");
  ledger.readOn(new TextEncoder().encode(text));
  return line;
}
