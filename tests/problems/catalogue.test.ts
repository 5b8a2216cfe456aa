import { describe, expect, test } from "vitest";
import { catalogue, type ProblemCode } from "../../src/problems/catalogue.ts";
import { checked, smallestWorkbook } from "../workbook/smallest-workbook.ts";
import { provokingWorkbooks, type WorkbookCode } from "./provoking-workbooks.ts";

const workbookCodes = (Object.keys(catalogue) as ProblemCode[]).filter(
  (code): code is WorkbookCode => code.startsWith("tables/") || code.startsWith("model/"),
);

/** What each of the workbooks is told, read once for all that is asked of it. */
const provoked = new Map<WorkbookCode, ReturnType<typeof checked>>();

function provokedBy(code: WorkbookCode): ReturnType<typeof checked> {
  const known = provoked.get(code) ?? checked(provokingWorkbooks[code].texts);
  provoked.set(code, known);
  return known;
}

test("the workbook that each provocation starts from has no problem at all", async () => {
  expect((await checked(smallestWorkbook)).sentences).toEqual([]);
});

test("every code of the stages tables and model is provoked", () => {
  expect(Object.keys(provokingWorkbooks).toSorted()).toEqual(workbookCodes.toSorted());
});

describe.each(workbookCodes)("%s", (code) => {
  test("is told to the user in these words", async () => {
    const { problems, sentences } = await provokedBy(code);
    const told = sentences[problems.findIndex((problem) => problem.code === code)];
    expect(told).toBe(provokingWorkbooks[code].told);
  });

  test("stops the calibration if its severity is stop, and does not if it is a warning", async () => {
    const { cases, codes } = await provokedBy(code);
    const stops = codes.filter((one) => catalogue[one].severity === "stop");
    expect(stops.includes(code)).toBe(catalogue[code].severity === "stop");
    expect(cases.length).toBe(stops.length > 0 ? 0 : 1);
  });
});

test("every sentence is filled from the values that its problem carries: no name is left, no gap either", async () => {
  for (const code of workbookCodes) {
    const { problems } = await provokedBy(code);
    const problem = problems.find((one) => one.code === code);
    const { wrong, accepted } = catalogue[code];
    for (const [, name = ""] of `${wrong} ${accepted}`.matchAll(/\{(\w+)\}/gu)) {
      expect([code, name, Object.hasOwn(problem?.values ?? {}, name)]).toEqual([code, name, true]);
    }
  }
});
