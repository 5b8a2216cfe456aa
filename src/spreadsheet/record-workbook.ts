import type { CalibrationRecord } from "../record/record-schema.ts";
import { decisionSheet } from "./decision-sheet.ts";
import { figuresSheet } from "./figures-sheet.ts";
import { outputsSheet } from "./outputs-sheet.ts";
import { overallCells } from "./overall-cells.ts";
import { pictureSheet } from "./picture-sheet.ts";
import { readingsSheet } from "./readings-sheet.ts";
import { uncertaintySheet } from "./uncertainty-sheet.ts";
import type { WrittenSheet } from "./write-workbook.ts";

/** A record as sheets: every number that follows from the readings is a formula, with what the record says beside it. */
export function recordSheets(record: CalibrationRecord): readonly WrittenSheet[] {
  const readings = readingsSheet(record);
  const figures = figuresSheet(readings);
  const uncertainty = uncertaintySheet(record, figures, readings.loop);
  const decision = decisionSheet(record, uncertainty, readings);
  const outputs = outputsSheet(record, decision.factor);
  overallCells(record, decision, outputs.word);
  return [readings, figures, uncertainty, decision, outputs, pictureSheet(record, readings, decision)];
}
