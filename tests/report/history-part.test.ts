import { expect, test } from "vitest";
import { overTheYears } from "../../src/assembly/years/over-the-years.ts";
import { recordPage } from "../../src/jobs/records/write-record.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { steadyYears } from "../assembly/sample-years.ts";
import { sampleRecord } from "../charts/sample-record.ts";

const years = overTheYears(steadyYears, { intervalMonths: 12 })!;

test("a record with a history has its part after the other pictures, with the picture in both widths", async () => {
  const page = await recordPage(sealRecord({ ...sampleRecord({}), overTheYears: years }));
  expect(page.indexOf('id="pictures-title"')).toBeLessThan(page.indexOf('id="annex-g-title"'));
  expect(page).toContain("chart history-chart wide");
  expect(page).toContain("chart history-chart narrow");
  expect(page).toContain("The owner of the loop decides");
  expect(page.indexOf("Forecast from the filed records")).toBeGreaterThan(page.indexOf('id="answer-title"'));
});

test("a record without one says nothing of it", async () => {
  const page = await recordPage(sealRecord(sampleRecord({})));
  expect(page).not.toContain("annex-g-title");
  expect(page).not.toContain("Forecast from the filed records");
});
