import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { everyCheck } from "../../../src/workbook/checks/every-check.ts";

const notChecks = ["check-context.ts", "every-check.ts", "shown-number.ts"];

test("every check of the folder is run, once", () => {
  const files = readdirSync(new URL("../../../src/workbook/checks/", import.meta.url));
  expect(new Set(everyCheck).size).toBe(everyCheck.length);
  expect(everyCheck).toHaveLength(files.filter((file) => !notChecks.includes(file)).length);
});
