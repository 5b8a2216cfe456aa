import { expect, test } from "vitest";
import { wordsOfField } from "../../src/record/field-words.ts";

test("the words of the longest end of a path are meant", () => {
  expect(wordsOfField("inputs.files[].name")).toBe("name of the file in its workbook, without any folder");
  expect(wordsOfField("software.name")).toBe("what it is called");
  expect(wordsOfField("schema")).toMatch(/^form of this JSON/u);
  expect(wordsOfField("phases.asFound.beauty")).toBeUndefined();
  expect(wordsOfField("phases.asFound.toString")).toBeUndefined();
});
