import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { PDFDocument } from "@cantoo/pdf-lib";
import { expect, test } from "vitest";
import { attachJson } from "../../src/cli/attach-json.ts";
import { temporaryFolder } from "./built-command.ts";

test("the JSON lies inside under its name, byte for byte, and the sides stay", async () => {
  const pdf = join(temporaryFolder(), "a.pdf");
  const empty = await PDFDocument.create();
  empty.addPage([595, 842]);
  empty.setTitle("LT-310 · calibration record");
  writeFileSync(pdf, await empty.save());
  const text = '{"tag":"Größe 槽","error":-0.5}\n';
  await attachJson(pdf, { name: "C-1.json", text });
  const read = await PDFDocument.load(readFileSync(pdf));
  expect(read.getPageCount()).toBe(1);
  expect(read.getTitle()).toBe("LT-310 · calibration record");
  const inside = read
    .getAttachments()
    .map(({ name, data, mimeType }) => ({ name, text: new TextDecoder().decode(data), mimeType }));
  expect(inside).toEqual([{ name: "C-1.json", text, mimeType: "application/json" }]);
});
