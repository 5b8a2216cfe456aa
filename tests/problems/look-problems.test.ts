import { expect, test } from "vitest";
import { readWorkbook } from "../../src/jobs/workbook/read-workbook.ts";
import type { lookProblems } from "../../src/problems/look-problems.ts";
import { sentence } from "../../src/problems/sentence.ts";
import { memoryDisk } from "../jobs/memory-disk.ts";

const told = async (text: string) => {
  const firstLook = { range: "0:100mm", signal: "4:20mA", tolerance: "0.5%span" };
  const { problems } = await readWorkbook(memoryDisk({ "r.csv": text }), "r.csv", { today: "2026-11-25", firstLook });
  return new Map(problems.all.map((problem) => [problem.code, sentence(problem)]));
};

/** The smallest table that provokes each code, and what the user is told; the type asks for every one. */
const provocations: Readonly<Record<keyof typeof lookProblems, { text: string; says: string }>> = {
  "look/columns-unknown": {
    text: "0,4.01\n100,20.01\n",
    says: "r.csv:1: the first row names no distance and no output of a sensor: 0, 4.01; accepted: a first row that names the columns, such as distance,mA",
  },
  "look/columns-read-as": {
    text: "distance,mA\n0,4.01\n100,20.01\n",
    says: "r.csv:1: columns were read by what people call them: distance as reference, mA as signal; accepted: the names of the table readings, or these if they are meant so",
  },
  "look/direction-from-order": {
    text: "reference,signal\n0,4.01\n100,20.01\n0,4.02\n",
    says: "r.csv:1: no column tells the direction; the order of the rows makes 2 readings rising and 1 falling, in one cycle; accepted: a column direction with rising and falling",
  },
  "look/phase-assumed": {
    text: "direction,reference,signal\nrising,0,4.01\n",
    says: "r.csv:1: no column tells the phase; all readings were taken as found; accepted: a column phase with as_found and as_left",
  },
};

test.each(Object.entries(provocations))("%s is told in these words", async (code, { text, says }) => {
  expect((await told(text)).get(code as keyof typeof lookProblems)).toBe(says);
});
