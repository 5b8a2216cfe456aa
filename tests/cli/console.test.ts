import { expect, test } from "vitest";
import { complainOf } from "../../src/cli/console.ts";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { recordingConsole } from "./recording-console.ts";

test("what is wrong comes before what is to be noted, each at its place", () => {
  const problems = new ProblemList();
  problems.add("tables/file-kind", { file: "trips.doc" });
  problems.add("options/not-found", { file: "nowhere" });
  const console = recordingConsole();
  complainOf(problems, console);
  expect(console.printed).toEqual([]);
  expect(console.complained).toEqual([
    "wrong  nowhere: there is no such file or folder; accepted: the folder of a workbook, or a lone table of readings",
    "note  trips.doc: files of this kind are not read; accepted: tables as .csv, or one .xlsx or .ods with sheets",
  ]);
});
