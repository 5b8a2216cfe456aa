import { type Console, complainOf } from "./console.ts";
import { nodeDisk } from "./node-disk.ts";

/** `spanwright check`: every problem of a workbook at its place; writes nothing. */
export async function checkCommand(workbook: string, console: Console): Promise<0 | 2> {
  const { readWorkbook } = await import("../jobs/read-workbook.ts");
  const { problems, counts } = await readWorkbook(nodeDisk, workbook, { today: console.today(), firstLook: {} });
  complainOf(problems, console);
  const stops = problems.all.filter(({ severity }) => severity === "stop").length;
  const notes = problems.all.length - stops;
  const read = `${counts.instruments} instruments, ${counts.calibrations} calibrations, ${counts.readings} readings`;
  console.print(
    `${read}: ${stops === 0 ? "nothing wrong" : `${stops} wrong`}, ${notes === 0 ? "no notes" : `${notes} notes`}`,
  );
  return stops === 0 ? 0 : 2;
}
