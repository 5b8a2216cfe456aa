import { readFile, writeFile } from "node:fs/promises";

/** A file that lies inside a PDF file. */
export type Attached = { name: string; text: string };

/** Puts a record's JSON into the PDF file of its page, as the data from which that was made (ISO 32000-2, 7.11.4, 14.13). */
export async function attachJson(pdf: string, { name, text }: Attached): Promise<void> {
  const { AFRelationship, PDFDocument } = await import("@cantoo/pdf-lib");
  const document = await PDFDocument.load(await readFile(pdf), { updateMetadata: false });
  await document.attach(new TextEncoder().encode(text), name, {
    mimeType: "application/json",
    description: "the calibration record as data",
    afRelationship: AFRelationship.Source,
  });
  await writeFile(pdf, await document.save({ useObjectStreams: false }));
}
