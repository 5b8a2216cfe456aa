import { describe, expect, test } from "vitest";
import type { YearRecord } from "../../src/assembly/years/over-the-years.ts";
import { overTheYears } from "../../src/assembly/years/over-the-years.ts";
import { renderHistory, type TagHistory } from "../../src/report/history-page.tsx";
import { steadyYears, yearRecord } from "../assembly/sample-years.ts";

const historyOf = (records: readonly YearRecord[], more: Partial<TagHistory> = {}): TagHistory => ({
  tag: "LT-1",
  description: "silo, distance to the surface",
  location: "hall",
  distanceUnit: "mm",
  rangeLower: 0,
  rangeUpper: 1000,
  intervalMonths: 12,
  intervalAgreedBy: "A. Owner",
  overTheYears: overTheYears(records, { intervalMonths: 12 })!,
  ...more,
});
const noDrawings = { wide: undefined, narrow: undefined };
const pageOf = (records: readonly YearRecord[], more: Partial<TagHistory> = {}) =>
  renderHistory(historyOf(records, more), noDrawings);
const bodyOf = (html: string) => html.replace(/^[\s\S]*<\/head>/u, "");
const textOf = (html: string) =>
  bodyOf(html)
    .replace(/<[^>]+>/gu, " ")
    .replace(/\s+/gu, " ");

test("the page has no script and loads nothing", () => {
  const page = pageOf(steadyYears);
  expect(page).toContain("default-src 'none'; style-src 'unsafe-inline'; font-src data:");
  expect(page).not.toContain("<script");
  expect(bodyOf(page)).not.toMatch(/(?:src|href)="(?:https?:)?\/\//u);
});

describe("the answer comes first", () => {
  const text = textOf(pageOf(steadyYears));

  test("forecast, reliability and both proposals, before any table", () => {
    const answer = text.slice(0, text.indexOf("Over the years"));
    expect(answer).toMatch(/Forecast .*upper limit on \d{4}-\d\d-\d\d/u);
    expect(answer).toContain("Found in tolerance 4 of 4");
    expect(answer).toMatch(/to be decided by the owner Staircase: 15 months, until 2025-06-04/u);
    expect(answer).toMatch(/Control chart: \d+ months, until /u);
  });

  test("that nothing is applied by itself stands in words", () => {
    expect(text).toContain("The owner of the loop decides");
  });

  test("where the records are too few it says so", () => {
    expect(textOf(pageOf(steadyYears.slice(0, 2)))).toContain("not enough: two records");
  });
});

describe("the table of records", () => {
  test("leads to their pages where these are known", () => {
    const notes = { "C-2021-03": { link: "filed/LT-1/a%20b.html", signedBy: [] } };
    expect(pageOf(steadyYears, { notes })).toContain('<a href="filed/LT-1/a%20b.html">C-2021-03</a>');
    expect(pageOf(steadyYears)).not.toContain("<a ");
  });

  test("says who signed each, and what was decided, where a folder knows it", () => {
    const notes = {
      "C-2021-03": { signedBy: ["Ines Example (performed)", "on paper: binder 7"], decided: "no impact (A. Example)" },
    };
    const words = textOf(pageOf(steadyYears, { notes }));
    expect(words).toMatch(
      /2021-03-01 C-2021-03 \+0\.80 .* Ines Example \(performed\), on paper: binder 7 decided: no impact \(A\. Example\)/u,
    );
  });

  test("shows every error with U, the change since the record before, and the adjustment", () => {
    expect(textOf(pageOf(steadyYears))).toMatch(
      /2020-03-02 C-2020-03 \+4\.40 ± 0\.40 pass, 88 % of the tolerance – re-teach \+0\.20 ± 0\.40/u,
    );
    expect(textOf(pageOf(steadyYears))).toMatch(
      /2021-03-01 C-2021-03 \+0\.80 ± 0\.40 pass, 16 % of the tolerance \+0\.60 ± 0\.57/u,
    );
  });

  test("names what was not taken", () => {
    expect(textOf(pageOf([yearRecord(null, [0, 0, 0]), ...steadyYears]))).toContain("its day is not stated");
  });
});

test("a text that is markup is text", () => {
  const page = pageOf(steadyYears, { tag: "</title><b>x", description: "<img src=x>", location: "</style>" });
  expect(page).not.toMatch(/<img|<b>x|<\/style>.*<\/style>.*<\/style>/u);
});
