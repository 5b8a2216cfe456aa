import { expect, test } from "vitest";
import { drawPictures } from "../../src/jobs/records/draw-pictures.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { renderPage } from "../../src/report/page.tsx";
import { demoRecord } from "./demo-records.ts";

async function pageOf(record: CalibrationRecord): Promise<string> {
  return renderPage(sealRecord(record), await drawPictures(record));
}

/** The section of a page with that heading, as text. */
function sectionText(page: string, id: string): string {
  const from = page.indexOf(`aria-labelledby="${id}"`);
  if (from < 0) return "";
  return page.slice(from, page.indexOf("<h2", page.indexOf("<h2", from) + 1)).replace(/<svg.*?<\/svg>|<[^>]+>/gsu, " ");
}

test("LT-318's page names the air as the cause, and warns that new constants hold for air like the day's", async () => {
  const page = await pageOf(demoRecord("LT-318"));
  const reteach = sectionText(page, "reteach-title");
  expect(reteach).toContain("The sensor does not correct for the air:");
  expect(reteach).toContain("best two constants");
  expect(reteach).toContain("4.063 mA");
  const sound = sectionText(page, "sound-title");
  expect(sound).toContain("makes an error of +105.4 mm at 3600 mm");
  expect(sound).toContain("Error to expect from the air");
  expect(sound).toContain("measured from the sensor's face");
  expect(page.match(/class="chart (?:reteach|sound)-chart/gu)).toHaveLength(2);
});

test("LT-702's page has each part of the loop, and the values to type at the counts", async () => {
  const text = sectionText(await pageOf(demoRecord("LT-702")), "reteach-title");
  for (const words of [
    "As found, sensor",
    "As found, what the controller showed",
    "at 27648 counts",
    "from the counts",
  ])
    expect(text).toContain(words);
});

test("a laser has no part on sound; a figure that is not determined says why", async () => {
  const record = structuredClone(demoRecord("ZT-201"));
  expect(await pageOf(record)).not.toContain("sound-title");
  const phase = record.reteach?.asFound;
  if (!phase?.sensor) throw new Error("no phase");
  phase.sensor.ends = null;
  phase.notDetermined["sensor.ends"] = "fewer than two test points";
  expect(sectionText(await pageOf(record), "reteach-title")).toContain("not determined: fewer than two test points");
});
