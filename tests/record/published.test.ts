import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import * as published from "../../src/record/published.ts";
import { recordFormat } from "../../src/record/record-format.ts";

test("what is published of the form is its name and its schema, as the file of the schema says them", () => {
  const file = new URL("../../src/record/record.schema.json", import.meta.url);
  expect(published.recordFormat).toBe(recordFormat);
  expect(published.recordSchema).toEqual(JSON.parse(readFileSync(file, "utf8")));
});
