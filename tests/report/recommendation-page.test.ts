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

test("the first page says what to do, why, and that it is an opinion", () => {
  const text = firstPage("ZT-330");
  expect(text).toContain(
    "What to do Re-scale, then re-teach. 1. Scale the signal in the controller for its live zero. Constants: 300 mm at 4 mA",
  );
  expect(text).toContain("2. Teach both ends of the range anew, at 300 mm and 1500 mm.");
  expect(text).toContain("Why: The sensor is off by the same amount over the whole range");
  expect(text).toContain("An opinion, for an authorised person to agree to; annex E.");
});

test("after an as-left phase it says what to do now, and the section what was asked for before", () => {
  expect(firstPage("LT-310")).toContain("What to do now Leave it as it is. Why: It passes");
  const text = textOf(pageOf(demoRecord("LT-310")));
  expect(text).toContain("As left: what to do now");
  expect(text).toContain("As found: what was asked for 1. Put the set-up right");
  expect(text).toContain(
    "As found, this asks for: repair wiring or set-up, then re-teach. Adjustment stated in the table: re-teach",
  );
});

test("the section shows rule, limits with their origin, history, and whose opinion it is", () => {
  const text = textOf(pageOf(demoRecord("ZT-115")));
  expect(text).toContain("Rule: a zero and span error alone");
  expect(text).toContain("50 % of the tolerance default, own choice; reteach_residual_max sets it");
  expect(text.split("No filed history was given.")).toHaveLength(2);
  expect(text).toMatch(/An opinion of spanwright [\d.]+\..*an authorised person has to agree to it/u);
});

test("what the history says and no reason has said stands in a sentence of its own", () => {
  const record = demoRecord("ZT-115");
  const history = ["It drifts by +2.0 mm a year."];
  const text = textOf(pageOf({ ...record, recommendation: { ...record.recommendation!, history } }));
  expect(text).toContain("History. It drifts by +2.0 mm a year.");
});

test("a record without a recommendation has neither box nor section", () => {
  const text = textOf(pageOf({ ...demoRecord("ZT-115"), recommendation: undefined }));
  expect(text).not.toContain("What to do");
});

test("what came from a table is text", () => {
  const record = demoRecord("LT-640");
  const { asFound } = record.recommendation!;
  const hostile = {
    ...record,
    recommendation: { ...record.recommendation!, asFound: { ...asFound!, does: "<img src=x>" } },
  };
  expect(pageOf(hostile)).not.toContain("<img src=x>");
});
