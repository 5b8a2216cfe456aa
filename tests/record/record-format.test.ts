import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import schema from "../../src/record/record.schema.json" with { type: "json" };
import { recordFormat } from "../../src/record/record-format.ts";

test("the name of the form is that of the published schema, and every earlier form has its reader", () => {
  expect(schema.properties.schema.const).toBe(recordFormat);
  const form = Number(recordFormat.split("/")[1]);
  const readers = readdirSync(new URL("../../src/record/versions", import.meta.url));
  for (let earlier = 1; earlier < form; earlier++) expect(readers).toContain(`from-${earlier}.ts`);
});
