import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { demoRecord } from "../report/demo-records.ts";
import { drawnPage } from "../report/drawn-page.ts";

export type DemoPage = { label: string; record: CalibrationRecord; html: string };

/** Two pages of the demo plant: one with controller values, one with figures that could not be determined. */
export const demoPages: readonly DemoPage[] = await Promise.all(
  [
    { label: "with controller values", tag: "LT-702" },
    { label: "with figures not determined", tag: "LT-640" },
  ].map(async ({ label, tag }) => {
    const record = demoRecord(tag);
    return { label, record, html: await drawnPage(record) };
  }),
);

/** Writes a page into a folder and gives the address by which a browser opens it from the disk. */
export function onDisk(folder: string, { record, html }: DemoPage): string {
  const path = join(folder, `${record.instrument.tag}.html`);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, html);
  return pathToFileURL(path).href;
}
