import { expect, test } from "vitest";
import type { ImpactRecord } from "../../../src/record/impact-schema.ts";
import { numberStyleOf } from "../../../src/report/style/number-style.ts";
import {
  outsideStretchWords,
  signWords,
  valueErrorWords,
  windowWords,
} from "../../../src/report/texts/impact-texts.ts";
import { demoRecord } from "../demo-records.ts";

const { switching, ...record } = demoRecord("LT-310");
const style = numberStyleOf(record);
const impact = (more: Partial<ImpactRecord> = {}): ImpactRecord => ({ ...record.impact!, ...more });
const withError = (...errors: number[]) =>
  impact({ rows: errors.map((errorDistance) => ({ ...record.impact!.rows[0]!, errorDistance })) });

test("the window is said from the last good record to the day of this one", () => {
  const since = { performedOn: "2025-03-11", calibration: "C-2025-009", revision: 2 };
  expect(windowWords(impact({ since }))).toBe(
    "Since 2025-03-11 at the earliest, when record C-2025-009, revision 2 left the loop in tolerance, until 2026-03-17.",
  );
  expect(windowWords(impact())).toBe(
    "Since when is not known (no filed records of the tag were given), until 2026-03-17.",
  );
});

test("where it lay outside is said in the record's unit; faults are counted", () => {
  const outside = [
    { from: 300, to: 512.34 },
    { from: 900, to: 1000 },
  ];
  expect(outsideStretchWords(record, impact({ outside }), style)).toBe(
    "The mean error lay outside the tolerance from 300.0 to 512.3 mm, and from 900.0 to 1000.0 mm.",
  );
  expect(outsideStretchWords(record, impact({ outside: [], faults: 1 }), style)).toBe(
    "No mean error of a test point lay outside the tolerance; 1 reading reported a fault instead of a distance.",
  );
});

test("a switched output that was found outside is said beside the analog value", () => {
  const withOutput = { ...record, switching: switching! };
  expect(outsideStretchWords(withOutput, impact(), style)).toMatch(/mm\. Switched output Q1: fail; .+\.$/u);
});

test("a fail that rests on the guard band alone says so", () => {
  const guarded = demoRecord("ZT-233");
  expect(outsideStretchWords(guarded, guarded.impact!, style)).toBe(
    "No mean error of a test point lay outside the tolerance. Under the rule guard band it is not accepted all the same.",
  );
});

test("the sign is said in words", () => {
  expect(signWords(withError(2, 3))).toBe("The sensor gave more distance than there was.");
  expect(signWords(withError(-2, -3))).toBe("The sensor gave less distance than there was.");
  expect(signWords(withError(-2, 3))).toBe(
    "A positive error means that the sensor gave more distance than there was, a negative one less.",
  );
});

test("an error in the controller's unit has three digits", () => {
  expect(valueErrorWords(-1.23456)).toBe("−1.23");
  expect(valueErrorWords(19.0012)).toBe("+19.0");
  expect(valueErrorWords(null)).toBe("–");
});
