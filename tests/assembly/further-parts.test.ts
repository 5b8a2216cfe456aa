import { expect, test } from "vitest";
import { recordSchema } from "../../src/record/record-schema.ts";
import { demoRecords } from "../report/demo-records.ts";

test("further parts leave the measured ones as they are, and the whole record keeps its form", () => {
  const names = ["reteach", "causes", "loopChecks"] as const;
  for (const name of names) expect(demoRecords.some((record) => record[name] !== undefined)).toBe(true);
  for (const record of demoRecords) expect(recordSchema.safeParse(record).success).toBe(true);
});
