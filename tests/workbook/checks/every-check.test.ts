import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { everyCheck } from "../../../src/workbook/checks/every-check.ts";

const notChecks = ["check-context.ts", "every-check.ts", "shown-number.ts"];

test("every check of the folder is run, once", async () => {
  const files = readdirSync(new URL("../../../src/workbook/checks/", import.meta.url));
  const modules = await Promise.all(
    files
      .filter((file) => !notChecks.includes(file))
      .map((file) => file.replace(/\.ts$/u, ""))
      .map(async (file) => (await import(`../../../src/workbook/checks/${file}.ts`)) as Record<string, unknown>),
  );
  const exported = modules.flatMap((module) => Object.values(module)).filter((one) => typeof one === "function");
  const run = everyCheck.map((step) => ("ofTables" in step ? step.ofTables : step.ofReadings));
  expect(run).toHaveLength(exported.length);
  expect(new Set(run)).toEqual(new Set(exported));
});
