import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { fieldWords } from "../../src/record/field-words.ts";
import { type CalibrationRecord, recordSchema, sealedRecordSchema } from "../../src/record/record-schema.ts";
import { filesBelow } from "../cli/built-command.ts";
import { madeDemo } from "../made-demo.ts";
import { isRequired } from "../outside/needs-program.ts";
import { demoRecords } from "../report/demo-records.ts";
import { publishedSchema, undescribed } from "./published-schema.ts";

const published = new URL("../../src/record/record.schema.json", import.meta.url);

test("the JSON Schema that is published is that of the records (delete it to have it written anew, then format it)", () => {
  const current = publishedSchema();
  if (!existsSync(published) && !isRequired(process.env.CI)) {
    writeFileSync(published, `${JSON.stringify(current, null, 2)}\n`);
  }
  expect(JSON.parse(readFileSync(published, "utf8"))).toEqual(current);
  expect(current.$id).toBe("urn:spanwright:record:2");
});

test("every field says what it means: by its schema, by the figure in it, or in src/record/field-words.ts", () => {
  const schema = publishedSchema();
  expect(undescribed(schema)).toEqual([]);
  expect(undescribed({ properties: { colour: { type: "string" }, tag: { description: "of the loop" } } })).toEqual([
    "colour",
  ]);
});

test("no words for a field are idle", () => {
  const said = JSON.stringify(publishedSchema());
  const idle = Object.entries(fieldWords).filter(([, words]) => !said.includes(JSON.stringify(words)));
  expect(idle).toEqual([]);
});

describe("a record is strict", () => {
  const [record] = demoRecords;

  test.each<[string, (copy: CalibrationRecord) => void]>([
    ["a field more", (copy) => Object.assign(copy.phases.asFound!.readings[0]!, { colour: "red" })],
    ["a field less", (copy) => Reflect.deleteProperty(copy, "figureBasis")],
    ["a number that is none", (copy) => Object.assign(copy.phases.asFound!.readings[0]!, { reference: Number.NaN })],
    ["another format", (copy) => Object.assign(copy, { schema: "spanwright-record/1" })],
  ])("%s is refused", (_, spoil) => {
    const copy = structuredClone(record!);
    expect(recordSchema.safeParse(copy).success).toBe(true);
    spoil(copy);
    expect(recordSchema.safeParse(copy).success).toBe(false);
  });
});

test("every record of the demonstration tables is one, also after it was written and read", () => {
  expect(demoRecords).toHaveLength(13);
  for (const record of demoRecords) {
    expect(recordSchema.parse(record)).toEqual(record);
    expect(JSON.parse(JSON.stringify(record))).toEqual(record);
  }
});

test("every record that the demo writes is one", () => {
  const written = filesBelow(madeDemo()).filter((name) => name.endsWith(".json"));
  expect(written.length).toBeGreaterThan(0);
  for (const name of written) {
    const record = JSON.parse(readFileSync(join(madeDemo(), name), "utf8"));
    expect(sealedRecordSchema.safeParse(record).error?.issues ?? [], name).toEqual([]);
  }
}, 180_000);
