import { expect, test } from "vitest";
import { doubtSubjects } from "../../src/record/doubt.ts";

test("doubts are told from the file outwards, each subject once", () => {
  expect(new Set(doubtSubjects).size).toBe(doubtSubjects.length);
  expect(doubtSubjects.indexOf("file")).toBe(0);
  expect(doubtSubjects.indexOf("seal")).toBeLessThan(doubtSubjects.indexOf("signatures"));
  expect(doubtSubjects.indexOf("page")).toBeLessThan(doubtSubjects.indexOf("ledger"));
});
