// Files many small pages into a folder, without waiting for the disk; bundled by large-folder.mjs.

import { monthsLater } from "../../src/analysis/years/next-due.ts";
import { nodeFilingDisk } from "../../src/cli/node-filing-disk.ts";
import { filePage } from "../../src/filing/file-page.ts";
import { filingFolder } from "../../src/filing/filing-folder.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import type { SealedRecord } from "../../src/record/record-schema.ts";

/** The record of one loop, many times: other tags, numbers and days, and nothing else that a register reads. */
export async function fileMany(base: SealedRecord, folder: string, tags: number, years: number): Promise<void> {
  const disk = nodeFilingDisk(() => undefined);
  const { createOnce, append } = disk;
  const hasty = {
    ...disk,
    createOnce: (path: string, content: Uint8Array | string) => createOnce(path, content, "derived"),
    append: (path: string, text: string) => append(path, text, "derived"),
    sweep: async () => undefined,
  };
  const filing = filingFolder(hasty, folder);
  for (let year = 0; year < years; year += 1) {
    for (let number = 0; number < tags; number += 1) {
      const { seal: _, signOff: __, ...content } = base;
      const tag = `XT-${String(number).padStart(5, "0")}`;
      const performedOn = `${2026 - years + year}-${String(1 + (number % 12)).padStart(2, "0")}-15`;
      const record = sealRecord({
        ...content,
        instrument: { ...content.instrument, tag, intervalMonths: 12, intervalAgreedBy: "an invented owner" },
        calibration: { ...content.calibration, tag, calibration: `C-${year}-${number}`, performedOn },
        nextDue: monthsLater(performedOn, 12),
      });
      const json = JSON.stringify(record).replaceAll("<", "\\u003c");
      const page = `<!doctype html>\n<script type="application/json" id="record">${json}</script>\n`;
      await filePage(filing, { bytes: new TextEncoder().encode(page), record }, { paper: "binder 7" });
    }
  }
}
