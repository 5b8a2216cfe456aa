import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import puppeteer, { type Browser } from "puppeteer-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { sealRecord } from "../../src/proof/seal-record.ts";
import type { CalibrationRecord, SealedRecord } from "../../src/record/record-schema.ts";
import { howMany } from "../how-many.ts";
import { describeWithProgram } from "../outside/needs-program.ts";
import { demoRecords } from "../report/demo-records.ts";
import { drawnPage } from "../report/drawn-page.ts";
import { opened } from "./browser.ts";

const papers = ["A4", "Letter"] as const;
type Paper = (typeof papers)[number];

const folder = mkdtempSync(join(tmpdir(), "spanwright-sheets-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** The certificate is one side for so many test points and outputs. */
const oneSide = demoRecords.filter(
  ({ phases, switching = [] }) =>
    switching.length <= 1 && Object.values(phases).every((phase) => (phase?.points.length ?? 0) <= 11),
);

async function written(record: CalibrationRecord): Promise<string> {
  const path = join(folder, `${record.instrument.tag}.html`);
  writeFileSync(path, await drawnPage(record));
  return pathToFileURL(path).href;
}

/** The texts of the sides of a printed page, as somebody who copies them gets them. */
function sidesOf(pdftotext: string, pdf: Uint8Array): readonly string[] {
  const path = join(folder, "printed.pdf");
  writeFileSync(path, pdf);
  const text = execFileSync(pdftotext, [path, "-"], { encoding: "utf8", maxBuffer: 1e8 });
  return text
    .split("\f")
    .slice(0, -1)
    .map((side) => side.replace(/\s+/gu, " "));
}

/** What must hold in any browser: the certificate stands alone, and every side is marked. */
function requireSheets(sides: readonly string[], { instrument, calibration, seal, phases }: SealedRecord): void {
  const [first = ""] = sides;
  expect(first, "the verdict").toMatch(/Pass|Fail|Conditional|Cannot be decided|In tolerance where read/u);
  for (const [name, title] of [
    ["asFound", "As found"],
    ["asLeft", "As left"],
  ] as const) {
    if (phases[name] !== undefined) expect(first).toContain(title);
  }
  for (const words of ["Sign-off", "Performed by", "Reviewed by", "Authorised by", "Signature and date"]) {
    expect(first).toContain(words);
  }
  expect(first).not.toContain("Annex A");
  for (const [place, side] of sides.entries()) {
    for (const mark of [
      `${instrument.tag} · record ${calibration.calibration}, revision 1`,
      "DRAFT, not signed",
      `fingerprint ${seal.fingerprint}`,
    ]) {
      expect(side, `side ${place + 1}`).toContain(mark);
    }
    expect(side, `side ${place + 1}`).toMatch(place === 0 ? /Sheet 1/u : /Annex [A-J]: /u);
    // U+2011 and U+2010 are no hyphens to whoever searches for them; U+00AD is none at all.
    expect(side).not.toMatch(/[\u2010\u2011\u00ad]/u);
  }
}

describeWithProgram("pdftotext", "printed sheets", (pdftotext) => {
  describeWithProgram("chromium", "in Chromium", (chromium) => {
    /** Each on the one paper or the other, by turns, and on both where all cases are tried. */
    const printed = oneSide.map((record, place) => ({
      ...{ tag: record.instrument.tag, record },
      on: papers.filter((_, side) => howMany((place + side) % 2, 0) === 0),
    }));

    test.each(printed)(
      "$tag: verdict and sign-off lie on the first side, and every side is marked and counted",
      async ({ record, on }) => {
        const sealed = sealRecord(record);
        const { page } = await opened(chromium, await written(record));
        for (const format of on) {
          const sides = sidesOf(pdftotext, await page.pdf({ format, printBackground: true }));
          requireSheets(sides, sealed);
          for (const [place, side] of sides.entries()) expect(side).toContain(`page ${place + 1} of ${sides.length}`);
        }
      },
    );
  });

  describeWithProgram("firefox-esr", "in Firefox", (firefox) => {
    let browser: Browser;
    beforeAll(async () => {
      browser = await puppeteer.launch({ browser: "firefox", executablePath: firefox, headless: true });
    }, 60_000);
    afterAll(() => browser.close());

    const cases: readonly (readonly [tag: string, paper: Paper])[] = [
      ["LT-310", "A4"],
      ["LT-702", "Letter"],
      ["ZT-201", "Letter"],
    ];

    test.each(cases.slice(0, howMany(2, 3)))(
      "%s on %s: verdict and sign-off lie on the first side, and every side is marked",
      async (tag, format) => {
        const record = oneSide.find(({ instrument }) => instrument.tag === tag);
        if (record === undefined) throw new RangeError(`${tag} is no page of one side`);
        const sealed = sealRecord(record);
        const page = await browser.newPage();
        await page.goto(await written(record));
        const margin = { top: "9mm", bottom: "10mm", left: "12mm", right: "12mm" };
        requireSheets(sidesOf(pdftotext, await page.pdf({ format, margin, printBackground: true })), sealed);
        await page.close();
      },
    );
  });
});
