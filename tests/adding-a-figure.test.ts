import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { explainFigure } from "../src/jobs/workbook/explain-figure.ts";
import { filesBelow } from "./architecture/source-files.ts";
import { demoRecords } from "./report/demo-records.ts";

const figure = "meanAbsoluteError";
const guide = /\n## Adding a figure\n([\s\S]*?)\n## /u.exec(readFileSync("DEVELOPERS.md", "utf8"))?.[1] ?? "";
const listed = [...guide.matchAll(/^\d+\. `([^`]+)`/gmu)].map(([, path = ""]) => path);

test("the list names nine files, and the figure that was added so stands in each", () => {
  expect(listed).toHaveLength(9);
  for (const path of listed) expect(readFileSync(path, "utf8"), path).toContain(figure);
});

test("no other file of the program speaks of it, but the schema that a test writes", () => {
  const speaking = filesBelow("src").filter(({ text }) => text.includes(figure));
  const ofProgram = listed.filter((path) => path.startsWith("src/"));
  expect(speaking.map(({ path }) => path)).toEqual([...ofProgram, "src/record/record.schema.json"].toSorted());
});

test("every phase of the demonstration has it, and it is explained by its name and by its key", () => {
  for (const { phases } of demoRecords) {
    for (const phase of Object.values(phases)) expect(phase?.meanAbsoluteError?.percentSpan).toBeGreaterThan(0);
  }
  for (const name of [figure, "mean absolute error"]) expect(explainFigure(name)).toContain("mean of |e|");
});
