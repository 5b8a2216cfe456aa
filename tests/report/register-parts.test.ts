import { expect, test } from "vitest";
import type { OpenFinding } from "../../src/record/register-form.ts";
import { renderRegister } from "../../src/report/register-page.tsx";
import { dataOf, drawnIn } from "./data-of.ts";
import { register, registerRow } from "./sample-register.ts";

const tagOf = (index: number) => `LT-${String(index).padStart(4, "0")}`;
const rows = Array.from({ length: 1201 }, (_, index) => {
  const tag = tagOf(index);
  return registerRow({ tag, path: `${tag}/2026-01-01_C-1_r1.html`, description: `silo <${index}> & "more"` });
});
const openFindings = rows.slice(0, 600).map(({ tag, path }): OpenFinding => {
  return { tag, path, calibration: "C-1", revision: 1, performedOn: "2026-01-01", asFound: "fail", days: 3 };
});
const { page, parts } = renderRegister({ ...register, rows, openFindings }, undefined);

test("of a thousand loops a page has every row in its table, of more the first two hundred, and all as data", () => {
  const whole = renderRegister({ ...register, rows: rows.slice(0, 1000) }, undefined);
  expect([drawnIn(whole.page), whole.parts.length, dataOf(whole.page).length]).toEqual([1000, 0, 0]);
  expect([drawnIn(page), dataOf(page).length]).toEqual([200, 1201]);
});

test("a row as data is what the table would show, its state, and what each column is sorted by", () => {
  const [html, state, tag, description, day] = dataOf(page)[1200] ?? [];
  expect([state, tag, description, day]).toEqual(["not due", "LT-1200", 'silo <1200> & "more"', "2026-01-01"]);
  expect(html).toMatch(/^<tr><th scope="row"><a href="LT-1200\/2026-01-01_C-1_r1.html"><bdi>LT-1200<\/bdi><\/a>/u);
  expect(html).toContain('<td>silo &lt;1200> &amp; &quot;more&quot;<span class="where">hall</span>');
});

test("a loop more costs a page a tenth of what its row has", () => {
  const more = Array.from({ length: 2402 }, (_, index) => registerRow({ tag: tagOf(index) }));
  const longer = renderRegister({ ...register, rows: more, openFindings }, undefined).page;
  expect((longer.length - page.length) / 1201).toBeLessThan(110);
});

test("the parts hold every loop once, without a script, and lead to the records from where they lie", () => {
  expect(parts.map(({ path }) => path)).toEqual([
    ...["001", "002", "003"].map((number) => `register-parts/loops-${number}.html`),
    ...["001", "002"].map((number) => `register-parts/open-${number}.html`),
    "register-parts/late-001.html",
  ]);
  const loops = parts.slice(0, 3).map(({ render }) => render());
  const links = loops.flatMap((html) => [...html.matchAll(/<bdi>(?<tag>LT-\d{4})<\/bdi><\/a>/gu)]);
  expect(links.map(({ groups }) => groups?.tag)).toEqual(rows.map(({ tag }) => tag));
  expect(loops[2]).toContain("part 3 of 3");
  expect(loops[2]).toContain('href="../LT-1200/2026-01-01_C-1_r1.html"');
  expect(loops[2]).toContain('href="../register.html"');
  for (const html of loops) {
    expect(html).not.toContain("<script");
    expect(html).toContain("default-src 'none'; style-src 'unsafe-inline'");
  }
});

test("a page names each of its parts, and says how many rows of a list it shows", () => {
  for (const { path } of parts.slice(0, 5)) expect(page).toContain(`<a href="${path}">`);
  expect(page).toContain("LT-0500 to LT-0999");
  expect(page).toContain("30 of 600 stand above; all of them, in 2 parts, register-parts/open-001.html and so on:");
});

test("loops that are overdue or due soon stand in parts of their own, the earliest first", () => {
  const due = (state: "overdue" | "due soon" | "not due", on: string) => ({ state, on, days: 0, why: null });
  const dated = rows.map((row, index) => ({ ...row, due: due("not due", `2028-01-${10 + (index % 20)}`) }));
  const some = dated.with(3, { ...rows[3]!, due: due("due soon", "2026-12-02") });
  const long = { ...register, rows: some.with(900, { ...rows[900]!, due: due("overdue", "2026-03-04") }) };
  const found = renderRegister(long, undefined).parts.filter(({ path }) => path.includes("/due-"));
  expect(found.map(({ path }) => path)).toEqual(["register-parts/due-001.html"]);
  const tags = [...found[0]!.render().matchAll(/<bdi>(LT-\d{4})<\/bdi><\/a>/gu)].map(([, tag]) => tag);
  expect(tags).toEqual(["LT-0900", "LT-0003"]);
});
