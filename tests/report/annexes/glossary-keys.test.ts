import { expect, test } from "vitest";
import { glossaryKeys } from "../../../src/report/annexes/glossary-keys.ts";
import { demoRecord, demoRecords } from "../demo-records.ts";

test("no figure is asked for twice", () => {
  for (const record of demoRecords) {
    const keys = glossaryKeys(record);
    expect(new Set(keys).size, record.instrument.tag).toBe(keys.length);
  }
});

test("a record asks for what it shows alone", () => {
  expect(glossaryKeys(demoRecord("ZT-201"))).not.toContain("speedOfSound");
  expect(glossaryKeys(demoRecord("ZT-201"))).toContain("operatingDistance");
  expect(glossaryKeys(demoRecord("LT-702"))).toContain("shares.scaling");
});
