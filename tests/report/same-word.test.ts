import { expect, test } from "vitest";
import { indexEntry } from "../../src/filing/make-index-entry.ts";
import { summaryRows } from "../../src/jobs/records/summary-rows.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { overallOf } from "../../src/record/overall-of.ts";
import { phasesOf } from "../../src/record/phases-of.ts";
import { renderLabels } from "../../src/report/label-sheet.tsx";
import { demoRecord } from "./demo-records.ts";
import { drawnPage } from "./drawn-page.ts";

/** Loops whose readings and switched outputs agree, and LT-640, whose output alone fails. */
const tags = ["LT-310", "LT-640", "ZT-201", "ZT-233", "ZT-407"];

test.each(tags)("page, terminal, register and label say one word of %s in each phase", async (tag) => {
  const record = sealRecord(demoRecord(tag));
  const phases = phasesOf(record).filter(({ phase }) => phase.complete);
  const page = await drawnPage(demoRecord(tag));
  const onPage = [...page.matchAll(/<p class="verdict">([^<]*) <span/gu)].map(([, word = ""]) => word.toLowerCase());
  const [, row = []] = summaryRows([{ record, page: "a.html" }]);
  const terminal = row.slice(2, 4).filter((word) => word !== "–");
  const { summary } = indexEntry({ number: 1, path: "a.html", fileSha256: "" } as never, record);
  const inRegister = phases.map(({ name }) => summary[name]?.statement);
  expect(phases.length).toBeGreaterThan(0);
  expect([terminal, inRegister]).toEqual([onPage, onPage]);
  const label = renderLabels([record], { isSheet: false, skipped: 0 });
  expect(label.toLowerCase()).toContain(`: ${overallOf(record).word}`);
});

test("the last phase says no better word than the record, whatever is a part of it", () => {
  for (const tag of tags) {
    const record = sealRecord(demoRecord(tag));
    const { word, of } = overallOf(record);
    const [, row = []] = summaryRows([{ record, page: "a.html" }]);
    const last = row[of === "asLeft" ? 3 : 2];
    if (last === "fail") expect(word, tag).toBe("fail");
  }
});
