import { expect, test } from "vitest";
import { drawPictures } from "../../src/jobs/records/draw-pictures.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { renderPage } from "../../src/report/page.tsx";
import { fourCycles, type SwitchingChanges, switchingRecord } from "../record/sample-switching.ts";
import { demoRecord } from "./demo-records.ts";

async function pageOf(record: ReturnType<typeof switchingRecord>): Promise<string> {
  const [body = ""] = renderPage(sealRecord(record), await drawPictures(record)).split(
    '<script type="application/gzip"',
  );
  return body;
}
/** What a reader sees, from the result on. */
async function textOf(changes: SwitchingChanges): Promise<string> {
  const page = await pageOf(switchingRecord(changes));
  return page
    .slice(page.indexOf('id="answer-title"'))
    .replace(/<[^>]*>/gu, " ")
    .replace(/\s+/gu, " ")
    .replace(/ ([,;:.])/gu, "$1");
}

/** Everything between a heading and the next section. */
function sectionOf(page: string, title: string): string {
  const start = page.indexOf(`id="${title}"`);
  return start < 0 ? "" : page.slice(start, page.indexOf("<h2", start + 1));
}

test("a failed output is named in the box of its phase, whose word is the worse of both", async () => {
  const box = sectionOf(await pageOf(demoRecord("LT-640")), "answer-title");
  expect(box).toMatch(/Fail <span class="meaning">by a switched output; the readings: pass, in tolerance/u);
  expect(box).toMatch(
    /Switched output <bdi>Q1<\/bdi>: fail<\/strong>; set-point error \+0\.\d+\s±\s0\.\d+\sm, tolerance ±0\.05\sm/u,
  );
});

test("an output that passes is not named there, and has its section all the same", async () => {
  const page = await pageOf(demoRecord("ZT-201"));
  expect(sectionOf(page, "answer-title")).not.toContain("Switched output");
  expect(sectionOf(page, "switching-title")).toContain("Q1, set point 450 ± 10 mm on approach, NO (normally open)");
});

test("as found and as left stand side by side, each with its statement", async () => {
  const box = sectionOf(await pageOf(demoRecord("LT-310")), "answer-title");
  expect(box.match(/Switched output/gu)).toHaveLength(1);
  const section = sectionOf(await pageOf(demoRecord("LT-310")), "switching-title");
  expect(section).toMatch(/Statement<td><strong>fail<\/strong><td><strong>pass/u);
  expect(section).toContain("Consistent with a shift of the mount, the datum or the air");
});

test("a loop without outputs has no such section", async () => {
  expect(await pageOf(demoRecord("ZT-233"))).not.toContain("switching-title");
});

test("an output that was not tripped says so; trips of a phase without readings are named below the boxes", async () => {
  expect(await textOf({ trips: [] })).toContain("As found, not determined: no trips of Q1 were recorded.");
  const trips = fourCycles.map((trip) => ({ ...trip, phase: "as_left" as const, reference: 90 }));
  expect(await textOf({ trips })).toContain("Switched output Q1, as left: fail; set-point error −10.00 ±");
});

test("wiring that does not fit is named below the boxes and in its section", async () => {
  const text = await textOf({ output: { polarity: "PNP", controllerInput: "sourcing" } });
  expect(text).toContain("Switched output Q1: fail; a PNP output needs a sinking input, and this one is sourcing.");
  expect(text).toContain(
    "Wire not stated, pin not stated; PNP output on a sourcing input: they do not fit, it needs a sinking one",
  );
});

test("limits of the standard are said to be from memory, those of the table are not", async () => {
  expect(await textOf({})).toContain("20 % IEC 60947-5-2*");
  expect(await textOf({ output: { differentialMax: 5 } })).toContain("5 % outputs table");
});

test("a release nearer than the operating distance is questioned", async () => {
  const question = "were approach and recede exchanged?";
  expect(await textOf({})).not.toContain(question);
  const trips = [{ direction: "approach", reference: 104 } as const, { direction: "recede", reference: 100 } as const];
  expect(await textOf({ trips })).toContain(question);
});

test("acceptance limits are told where a guard band moves them, and where U leaves none", async () => {
  expect(await textOf({ instrument: { decisionRule: "guard band" } })).toContain(
    "as found accepted: −0.09 to +0.09 mm",
  );
  expect(await textOf({ instrument: { decisionRule: "guard band" }, output: { setPointTolerance: 0.3 } })).toContain(
    "as found accepted: no error",
  );
  expect(await textOf({})).not.toContain("accepted:");
});

test("names from the table are text, never markup", async () => {
  const page = await pageOf(switchingRecord({ output: { output: "<b>Q1</b>" }, trips: [{ output: "<b>Q1</b>" }] }));
  expect(page).not.toContain("<b>Q1");
  expect(page).toContain("&lt;b>Q1");
});
