import { expect, test } from "vitest";
import { dueNote } from "../../../src/report/texts/due-texts.ts";
import { demoRecord } from "../demo-records.ts";

const record = demoRecord("LT-702");

test("a due date names its interval and who agreed to it", () => {
  expect(dueNote(record)).toBe("interval of 12 months, agreed by Ada Specimen; the day itself counts");
});

test("without a due date the interval stands there all the same", () => {
  expect(dueNote({ ...record, nextDue: undefined })).toMatch(
    /^a due date is given only .*12 months, agreed by Ada Specimen$/u,
  );
});

test("what is missing is said", () => {
  const { intervalAgreedBy: _, ...instrument } = record.instrument;
  expect(dueNote({ ...record, nextDue: undefined, instrument })).toBe("nobody is named who agreed to the interval");
});
