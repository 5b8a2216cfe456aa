import { expect, test } from "vitest";
import { filedPath } from "../../src/filing/filed-path.ts";
import { sampleRecord } from "./sample-pages.ts";

test("a page lies in the folder of its tag, under date, calibration and revision", () => {
  expect(filedPath(sampleRecord())).toBe("LT-1/2026-03-04_C-1_r1.html");
  expect(filedPath({ ...sampleRecord(), revision: 12 })).toBe("LT-1/2026-03-04_C-1_r12.html");
});

test("a record without a date says so", () => {
  expect(filedPath(sampleRecord({ performedOn: undefined }))).toBe("LT-1/no-date_C-1_r1.html");
});

test.each(["../../etc", "con", "a/b", ".hidden", "\u202eLT", "Tag mit Ümlaut"])(
  "no tag and no number leads out of the folder: %j",
  (name) => {
    const path = filedPath(sampleRecord({ tag: name, calibration: name }));
    expect(path).toMatch(/^\w[\w.-]*\/2026-03-04_\w[\w.-]*_r1\.html$/u);
    expect(path).not.toContain("..");
  },
);
