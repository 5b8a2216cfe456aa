import { expect, test } from "vitest";
import { recordFormat } from "../../../src/record/record-format.ts";
import { formOf, inPresentForm, presentForm } from "../../../src/record/versions/in-present-form.ts";

test("the present form is the one that records are written in", () => {
  expect(formOf(recordFormat)).toBe(presentForm);
});

test("a record of the present form is the same object, an earlier one is a copy, a later one cannot be had", () => {
  const present = { schema: recordFormat };
  expect(inPresentForm(present, presentForm)).toBe(present);
  expect(inPresentForm({ schema: "spanwright-record/1" }, 1)).toEqual(present);
  expect(inPresentForm({ schema: "spanwright-record/99" }, 99)).toBeUndefined();
});

test.each(["spanwright-record/0", "spanwright-record/01", "spanwright-record/1 ", "spanwright-record/", "x", 1, null])(
  "%j is no form",
  (schema) => expect(formOf(schema)).toBeUndefined(),
);
