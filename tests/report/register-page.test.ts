import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { renderRegister } from "../../src/report/register-page.tsx";
import { register, registerRow } from "./sample-register.ts";

const page = renderRegister(register, undefined).page;
const bodyOf = (html: string) => html.replace(/^[\s\S]*<\/head>/u, "").replace(/<script[\s\S]*/u, "");
const textOf = (html: string) =>
  bodyOf(html)
    .replace(/<[^>]+>/gu, " ")
    .replace(/\s+/gu, " ");

test("the page allows its own script by its digest, and nothing else", () => {
  const script = /<script>([\s\S]*?)<\/script>/u.exec(page)?.[1] ?? "";
  expect(script.length).toBeGreaterThan(500);
  const digest = createHash("sha256").update(script).digest("base64");
  expect(page).toContain(`script-src 'sha256-${digest}'; style-src`);
  expect(page).toContain("default-src 'none'");
});

test("what calls for somebody is counted first, with what it is", () => {
  expect(textOf(page)).toContain(
    "1 overdue 1 not left in tolerance 0 not complete 1 found out of tolerance, not decided yet 1 standard past its day 1 due within 30 days 4 loops, 9 records",
  );
});

test("one loop with one record is told in the singular", () => {
  const [row] = register.rows;
  const alone = textOf(renderRegister({ ...register, rows: [row!], records: 1 }, undefined).page);
  expect(alone).toContain("1 loop, 1 record ");
});

test("a row says what its loop is, how it was found and left, how it drifts and when it is due", () => {
  expect(textOf(page)).toContain(
    "LT-1 silo, distance to the surface hall serial number S-1 2026-01-01 C-1, revision 1 Ada Specimen (authorised) plum indigo basil puffin · ba78 16bf 8f01 cfea pass +0.150 % (+1.50 mm) – +0.050 not due 2027-01-01, in 37 days",
  );
  expect(textOf(page)).toContain("one record only not in tolerance advised: replace not left in tolerance");
  expect(textOf(page)).toMatch(/LT-3 safety not stated/u);
});

test("a tag and the open findings lead to the pages of their records", () => {
  expect(page).toContain('<a href="LT-1/2026-01-01_C-1_r1.html"><bdi>LT-1</bdi></a>');
  expect(page).toContain('<a href="LT-2/2026-01-01_C-1_r1.html">C-1, revision 1</a>');
});

test("without open findings and standards the page has no such sections", () => {
  const text = textOf(renderRegister({ ...register, openFindings: [], standards: [] }, undefined).page);
  expect(text).not.toMatch(/Found out of tolerance, not|Standards in use/u);
});

test("calibrations that came late stand in a list, by how many days, and findings say how long they are open", () => {
  expect(textOf(page)).toMatch(/Calibrated late .*LT-3 C-1 2026-01-01 due on 2025-12-01 31 days/u);
  expect(textOf(page)).toContain("fail 328 days");
});

test("a text that is markup is text", () => {
  const rows = [registerRow({ description: "<img src=x onerror=alert(1)>", location: "</script>" })];
  expect(bodyOf(renderRegister({ ...register, rows }, undefined).page)).not.toMatch(/<img|<\/script>/u);
});
