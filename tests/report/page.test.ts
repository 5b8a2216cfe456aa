import { expect, test } from "vitest";
import { sampleRecord } from "../charts/sample-record.ts";
import { demoRecord, demoRecords } from "./demo-records.ts";
import { drawnPage } from "./drawn-page.ts";

/** What a reader reads: the main part without its tags, blanks made one. */
function textOf(page: string): string {
  const [, main = ""] = /<main>(.*)<\/main>/su.exec(page) ?? [];
  return main
    .replace(/<svg.*?<\/svg>/gsu, " ")
    .replace(/<[^>]+>/gu, " ")
    .replaceAll("&lt;", "<")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&")
    .replace(/\s+/gu, " ");
}

test("the parts come in the order in which readers look", async () => {
  const page = await drawnPage(demoRecord("LT-702"));
  const headings = [...page.matchAll(/<h2[^>]*>(.+?)<\/h2>/gu)].map(([, title]) => title?.replace(/<[^>]+>/gu, ""));
  expect(headings).toEqual([
    ...[
      "Result",
      "Test points",
      "Error against reference distance",
      "Figures and standards",
      "What to do now",
      "Sign-off",
    ],
    ...["A Working", "B Figures in full", "C Uncertainty and decision", "D Switched outputs and loop check"],
    ...["E What is wrong, what to do", "F Found out of tolerance: what it may have touched"],
    ...["H Sound in air, set points and signals", "I Basis of the result", "J Glossary"],
  ]);
});

test("an annex for which a record has nothing keeps its letter, and the contents say so", async () => {
  const page = await drawnPage(demoRecord("LT-702"));
  expect(textOf(page)).toContain("G Over the years: nothing in this record");
  const links = [...page.matchAll(/href="#([^"]+)"/gu)].map(([, id]) => id);
  expect(links).toHaveLength(11);
  for (const id of links) expect(page).toContain(`id="${id}"`);
});

test("the answer says as found, as left and next due in words", async () => {
  const text = textOf(await drawnPage(demoRecord("LT-702")));
  // Planted: 2 % too much at the empty end, nothing at the full end; at four of the five points more than ±0.3 %.
  expect(text).toMatch(
    /As found Fail not inside the acceptance limits The sensor alone: pass; the raw counts: pass; what the controller shows: fail\. .*16 of 20 readings lie outside the tolerance\./u,
  );
  expect(text).toMatch(/As left Pass in tolerance/u);
  expect(text).toContain("Adjustment re-scale : lower fill constant");
  expect(text).toContain("Next due 2027-10-06 : interval of 12 months, agreed by Ada Specimen; the day itself counts");
});

test("no due date without an agreed interval, nor where the loop is left out of tolerance", async () => {
  expect(textOf(await drawnPage(demoRecord("LT-640")))).toContain(
    "Next due not stated : nobody is named who agreed to the interval",
  );
  const failed = structuredClone(demoRecord("ZT-407"));
  failed.instrument.intervalAgreedBy = "Ada Specimen";
  expect(textOf(await drawnPage(failed))).toContain(
    "Next due not stated : a due date is given only where the loop is left in tolerance",
  );
});

test("a figure that was not determined says why", async () => {
  const text = textOf(await drawnPage(demoRecord("LT-640")));
  expect(text).toContain("not determined: one cycle only");
  expect(text).toMatch(/Row \d+: left out of every figure, .+/u);
});

test("a phase without a verdict says that and why", async () => {
  const record = structuredClone(sampleRecord({ phases: ["asFound"] }));
  Object.assign(record.phases.asFound ?? {}, { verdict: null, notDetermined: { verdict: "no uncertainty is stated" } });
  expect(textOf(await drawnPage(record))).toContain("As found Not determined no uncertainty is stated");
});

test("every item that a calibration certificate states has its place, and an empty one is called not stated", async () => {
  const { tag, calibration } = sampleRecord().calibration;
  const bare = { ...sampleRecord(), calibration: { calibration, tag }, standards: [] };
  const names = textOf(await drawnPage(bare));
  for (const item of [
    ...["Performed on", "Performed by", "Location", "Serial number", "Principle", "Condition as received"],
    ...["Laboratory", "Address", "Owner", "Place of the work", "Procedure", "Deviations from it", "Received on"],
    ...["Issued on", "Air temperature", "Relative humidity", "Air pressure", "Target", "Target size", "Remarks"],
    ...["Where it comes from", "Who set it", "Prescribed by"],
  ]) {
    expect(names).toContain(`${item} not stated`);
  }
  expect(names).toContain("Standards used: none is named");
  expect(names).toContain("Deviations that the program noticed: none.");
});

test("the standards stand with certificate, due date and uncertainty", async () => {
  const text = textOf(await drawnPage(demoRecord("ZT-201")));
  expect(text).toMatch(
    /RAIL-5000 measuring rail, 5 m, EX-S-01 EX-CERT-26-01 2026-01-14 2027-01-14 Specimen Reference Laboratory \(invented\), to the SI 0\.9 mm \(k = 2\) 0\.1 mm/u,
  );
});

test("a warning stands on the page with its place", async () => {
  const warnings = [{ code: "model/few-points", place: "readings.csv:2", says: "4 test points were taken as found" }];
  expect(textOf(await drawnPage({ ...sampleRecord(), warnings }))).toContain(
    "What the program noticed 4 test points were taken as found (readings.csv:2)",
  );
});

test("cautions follow the loop: safety, hazardous area, laser, and a signal that begins at 0", async () => {
  const about = {
    safety: "A loop that is part of a trip",
    hazard: "Hazardous area: only approved equipment",
    laser: "Laser: respect the class",
    zero: "A broken wire can look like a valid low reading",
  };
  const said = async (tag: string) => {
    const text = textOf(await drawnPage(demoRecord(tag)));
    return Object.entries(about).flatMap(([name, words]) => (text.includes(words) ? [name] : []));
  };
  expect(await said("LT-702")).toEqual(["safety", "hazard"]);
  expect(await said("ZT-520")).toEqual(["safety", "laser", "zero"]);
  expect(await said("ZT-407")).toEqual(["zero"]);
  const unknown = textOf(await drawnPage(sampleRecord()));
  expect(unknown).toContain(about.safety);
  expect(unknown).toContain(about.hazard);
});

test("a page has a policy that forbids programs and addresses, and holds none", async () => {
  for (const record of demoRecords) {
    const page = await drawnPage(record);
    expect(page).toMatch(/<meta http-equiv="Content-Security-Policy" content="default-src 'none';/u);
    expect(page.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|<link|<img|<iframe|\son\w+=/u);
    expect(page.match(/<script/gu)).toHaveLength(1);
  }
});

test("every table has headers with a scope, and every chart a text", async () => {
  for (const record of demoRecords) {
    const page = await drawnPage(record);
    expect(page).not.toMatch(/<th(?![^>]*scope=)[ >]/u);
    const charts = page.match(/<svg[^>]*>/gu) ?? [];
    expect(charts.length).toBeGreaterThanOrEqual(4);
    for (const chart of charts) expect(chart).toMatch(/role="img" aria-label="[^"]+" aria-describedby="[^"]+"/u);
  }
});

test("the same record gives the same page", async () => {
  expect(await drawnPage(demoRecord("ZT-115"))).toBe(await drawnPage(structuredClone(demoRecord("ZT-115"))));
});

test("a wide tolerance is named beside the verdict that it makes easy", async () => {
  const says = "the tolerance is as wide as 12 % of the span: −324 to 324 mm at 300 mm";
  const warnings = [{ code: "plausible/tolerance-wide", place: "instruments.csv:2:tolerance", says }];
  const text = textOf(await drawnPage({ ...demoRecord("LT-310"), warnings }));
  const noted = `T${says.slice(1)}.`;
  expect(text).toMatch(new RegExp(`Pass in tolerance ${noted.replaceAll("(", "\\(")} All 30 readings`, "u"));
  // In both boxes, and with its place among what the program noticed.
  expect(text.split("the tolerance is as wide as").length + text.split("The tolerance is as wide as").length - 2).toBe(
    3,
  );
});

test("letters that the font does not have are named, and a page with none says nothing of them", async () => {
  const record = structuredClone(demoRecord("LT-310"));
  expect(textOf(await drawnPage(record))).not.toContain("Letters that the font");
  Object.assign(record.inputs.rows.calibrations[0]?.cells ?? {}, { performed_by: "山田 Ñuñez Ωmega" });
  expect(textOf(await drawnPage(record))).toMatch(
    /Letters that the font of this page does not have, .*: 山 田 (?!.*Ñ)/u,
  );
});

test("beside a standard that was out of its interval when it was used, sheet 1 says so; on the day itself it was not", async () => {
  const said = async (days: { calibratedOn?: string; dueOn?: string }) => {
    const record = structuredClone(sampleRecord());
    Object.assign(record.calibration, { performedOn: "2026-03-02" });
    record.standards = record.standards.slice(0, 1).map((standard) => ({ ...standard, ...days }));
    expect(record.standards).toHaveLength(1);
    return /; (used [^<;]*?) (?:What to do|Safety)/u.exec(textOf(await drawnPage(record)))?.[1];
  };
  expect(await said({ dueOn: "2026-03-01" })).toBe("used after it was due");
  expect(await said({ dueOn: "2027-03-01", calibratedOn: "2026-03-03" })).toBe(
    "used before it was calibrated, on 2026-03-03",
  );
  expect(await said({ dueOn: "2026-03-02", calibratedOn: "2026-03-02" })).toBeUndefined();
});

test("a value without a unit is named without one", async () => {
  const note = async (valueUnit: string | undefined) => {
    const record = structuredClone(sampleRecord({ hasController: true }));
    record.instrument.valueUnit = valueUnit;
    return /Smaller below or beside it: ([^.]*)\./u.exec(textOf(await drawnPage(record)))?.[1];
  };
  expect(await note("l")).toBe("what the controller shows, l; the errors are of that");
  expect(await note(undefined)).toBe("what the controller shows; the errors are of that");
});
