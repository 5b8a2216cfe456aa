import { assembleRecord } from "../../../src/assembly/assemble-record.ts";
import { readWorkbook, type WorkbookReading } from "../../../src/jobs/workbook/read-workbook.ts";
import { phaseStatement } from "../../../src/record/phase-statement.ts";
import type { CalibrationRecord, Statement } from "../../../src/record/record-schema.ts";
import type { CalibrationCase } from "../../../src/workbook/calibration-case.ts";
import { inFolder, memoryDisk } from "../../jobs/memory-disk.ts";
import { type Sheet, workbookOf } from "./workbook-of.ts";

/** What the program said of one loop. */
export type Answer = {
  /** Nothing where a problem stopped it, or the program broke. */
  record: CalibrationRecord | null;
  /** What the program broke with: a bug, whatever was read. */
  broke: string | null;
  /** Codes of the problems that name a row of it, those that only warn too. */
  codes: readonly string[];
};

const today = "2026-11-25";
const loopsOfAWorkbook = 50;

/** Puts loops into workbooks, has the program read and judge them, and gives its answers by name. */
export async function answersOf(sheets: readonly Sheet[]): Promise<ReadonlyMap<string, Answer>> {
  const answers = new Map<string, Answer>();
  for (let from = 0; from < sheets.length; from += loopsOfAWorkbook) {
    const some = sheets.slice(from, from + loopsOfAWorkbook);
    for (const [name, answer] of await answersOfWorkbook(some)) answers.set(name, answer);
  }
  return answers;
}

async function answersOfWorkbook(sheets: readonly Sheet[]): Promise<readonly (readonly [string, Answer])[]> {
  const texts = Object.fromEntries(Object.entries(workbookOf(sheets)).filter(([, text]) => text !== ""));
  const reading = await readWorkbook(memoryDisk(inFolder("loops", texts)), "loops", { today, firstLook: {} });
  const nameOfLine = (file: string, line: number | undefined) =>
    namesOfRows(texts[file.split("/").at(-1) ?? ""] ?? "")[(line ?? 1) - 1];
  return sheets.map(({ name }) => {
    const found = reading.cases.find(({ calibration }) => calibration === name)?.read();
    const codes = reading.problems.all
      .filter(({ place }) => nameOfLine(place.file, "line" in place ? place.line : undefined) === name)
      .map(({ code }) => code);
    const made = found ? recordOf(found, reading) : { record: null, broke: null };
    return [name, { ...made, codes: [...new Set(codes)] }] as const;
  });
}

function recordOf(found: CalibrationCase, { digests }: WorkbookReading): Pick<Answer, "record" | "broke"> {
  try {
    const record = assembleRecord(found, { softwareVersion: "judged", digests, warnings: found.warnings });
    return { record, broke: null };
  } catch (fault) {
    return { record: null, broke: String(fault) };
  }
}

/** The calibration that each line of a table belongs to; tags and standards carry its name. */
function namesOfRows(text: string): readonly (string | undefined)[] {
  return text.split("\n").map((line) => /^(?:T-|RULE-|METER-)?(L\d+\w*)/u.exec(line)?.[1]);
}

/** The word of one phase: of the loop with its outputs. */
export function wordOf({ record }: Answer, phase: "asFound" | "asLeft"): Statement | null {
  return record === null ? null : phaseStatement(record, phase);
}
