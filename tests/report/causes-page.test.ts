import { expect, test } from "vitest";
import { sealRecord } from "../../src/proof/seal-record.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { renderPage } from "../../src/report/page.tsx";
import { demoRecord } from "./demo-records.ts";

const noDrawings = { errorWide: undefined, errorNarrow: undefined, stages: [], others: [], absent: [] };
const pageOf = (record: CalibrationRecord) =>
  renderPage(sealRecord(record), noDrawings).replace(/<script[\s\S]*<\/script>/u, "");
const textOf = (page: string) =>
  page
    .replace(/<style>[\s\S]*<\/style>/u, "")
    .replace(/<[^>]+>/gu, " ")
    .replaceAll("&amp;", "&")
    .replace(/\s+/gu, " ");

const firstPage = (tag: string) => textOf(pageOf(demoRecord(tag))).split("show annex A")[0] ?? "";

test("the first finding stands on the first page as an opinion, and how many more there are", () => {
  const text = firstPage("LT-310");
  expect(text).toContain("Likely cause, as found (opinion): The sensor is off by the same amount over the whole range");
  expect(text).toContain("1 more in annex E.");
});

test("a cause that is a reason of what to do is said once", () => {
  for (const tag of ["LT-318", "LT-332", "ZT-330", "ZT-331"]) {
    const says = demoRecord(tag).causes?.asFound?.findings[0]?.says ?? "";
    expect(firstPage(tag).split(says), tag).toHaveLength(2);
    expect(firstPage(tag)).not.toContain("Likely cause");
  }
});

test("a cause that as found and as left share is said once, as left", () => {
  const text = firstPage("ZT-407");
  expect(text.split("Likely cause, as left (opinion): Rising readings lie below")).toHaveLength(2);
  expect(text.indexOf("Likely cause")).toBeGreaterThan(text.indexOf("As left"));
});

test("a phase that passes has no opinion on the first page", () => {
  expect(textOf(pageOf(demoRecord("ZT-201")))).not.toContain("Likely cause");
});

test("a finding shows its evidence with uncertainty, its rivals and what would tell", () => {
  const text = textOf(pageOf(demoRecord("LT-332")));
  expect(text).toContain("What is most likely wrong");
  expect(text).toMatch(/No error at 30 ± 33 mm/u);
  expect(text).toContain("Air temperature on the day 31.0 °C");
  expect(text).toContain("Not excluded yet target lost, last value held");
  expect(text).toContain("What would tell them apart");
});

test("the line of each stage stands below, healthy or not", () => {
  const text = textOf(pageOf(demoRecord("LT-333")));
  expect(text).toMatch(/wiring 4 to 20 mA 36 0 0\.97299/u);
  expect(textOf(pageOf(demoRecord("ZT-201")))).toContain("Nothing stands out");
});

test("a note says what one cycle cannot tell", () => {
  expect(textOf(pageOf(demoRecord("LT-640")))).toMatch(/One cycle only\..*What would tell: read a second cycle\./u);
});

test("what came from a table is text: a unit of the controller's value that looks like markup", () => {
  const record = demoRecord("LT-333");
  const hostile = { ...record, causes: { asFound: { ...record.causes!.asFound!, findings: [hostileFinding] } } };
  const page = pageOf(hostile);
  expect(page).not.toContain("<img src=x>");
  expect(page).toContain("&lt;img src=x>");
});

test("a cause that this program does not know is named by the title that stands in the record", () => {
  const record = demoRecord("LT-333");
  const later = { ...hostileFinding, id: "mains-hum", title: "mains hum on the signal" };
  const rivals = [{ id: "loose-shield", title: "a shield that lies open" }];
  const findings = [{ ...later, rivals }];
  const page = pageOf({ ...record, causes: { asFound: { ...record.causes!.asFound!, findings } } });
  expect(page).toContain("Mains hum on the signal");
  expect(page).toContain("a shield that lies open");
});

const hostileFinding = {
  id: "value-clamped-or-cut",
  title: "controller value clamped or truncated",
  stage: "scaling" as const,
  says: "consistent with <img src=x>",
  evidence: [{ name: "step", value: 1, unit: "<img src=x>" }],
  rivals: [],
  separatedBy: "look",
};
