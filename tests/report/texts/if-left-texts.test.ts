import { expect, test } from "vitest";
import type { CalibrationRecord } from "../../../src/record/record-schema.ts";
import { numberStyleOf } from "../../../src/report/style/number-style.ts";
import { ifLeftWords, interimWords } from "../../../src/report/texts/if-left-texts.ts";
import { demoRecord } from "../demo-records.ts";

const words = (record: CalibrationRecord) => ifLeftWords(record, numberStyleOf(record)).join(" ");

test("a loop that fails stays so; where it drifts is not known without filed records", () => {
  const failing = demoRecord("ZT-330");
  expect(words(failing)).toMatch(
    /^As found the loop does not pass, by .\d+\.\d+ mm at the worst reading, and stays so/u,
  );
  expect(words({ ...failing, overTheYears: undefined })).toContain("not determined: no filed records");
});

test("a loop that passes is said to pass", () => {
  expect(words(demoRecord("ZT-201"))).toContain("the loop is in tolerance");
});

test("a drift is said with its band and the day on which it may meet a limit", () => {
  const record = demoRecord("ZT-201");
  const place = {
    ...{ kind: "test point", distance: 1000, toleranceLow: -9.6, toleranceHigh: 9.6, records: 4 },
    drift: { perYear: 2, low: 1, high: 3, residualStdDev: 0.1, degreesOfFreedom: 2 },
    ...{ meets: { on: "2029-01-02", limit: "upper", isAlready: false }, notDetermined: {} },
  } as const;
  const overTheYears = {
    ...{ records: [], leftOut: [], leading: 0, places: [place], reliability: null, staircase: null },
    band: [{ on: "2027-03-04", value: 6, low: 4, high: 8 }],
    ...{ controlChart: null, notDetermined: {} },
  } as unknown as NonNullable<CalibrationRecord["overTheYears"]>;
  const said = words({ ...record, overTheYears });
  expect(said).toContain("on 2027-03-04, between +4");
  expect(said).toContain("meets the upper limit on 2029-01-02");
});

test("a safety function that does not pass needs an interim measure, which the site decides", () => {
  const failing = demoRecord("ZT-330");
  const isSafety = { ...failing, instrument: { ...failing.instrument, criticality: "safety" as const } };
  expect(interimWords(isSafety)).toContain("site's procedure");
  expect(interimWords({ ...failing, instrument: { ...failing.instrument, criticality: "general" } })).toBeUndefined();
});
