import { expect, test } from "vitest";
import { recordSchema } from "../../src/record/record-schema.ts";
import { recordsOfFolder } from "../outside/records-of-folder.ts";

test("further parts leave the measured ones as they are, and the whole record keeps its form", async () => {
  const { records } = await recordsOfFolder("data-demo");
  const names = ["reteach", "causes", "loopChecks"] as const;
  for (const name of names) expect(records.some((record) => record[name] !== undefined)).toBe(true);
  for (const record of records) expect(recordSchema.safeParse(record).success).toBe(true);
});
