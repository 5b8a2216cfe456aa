import { expect, test } from "vitest";
import type { CorrectedCurve, NewConstants } from "../../../src/record/reteach-schema.ts";
import { numberStyleOf } from "../../../src/report/style/number-style.ts";
import { constantsWords, curableWords, insideWords, typedConstants } from "../../../src/report/texts/reteach-texts.ts";
import { demoRecord } from "../demo-records.ts";

const record = demoRecord("LT-702");
const style = numberStyleOf(record);

function curveOf(tag: string): CorrectedCurve {
  const curve = demoRecord(tag).reteach?.asFound?.sensor;
  if (!curve) throw new Error(`no curve of ${tag}`);
  return curve;
}

const wordsOf = (tag: string, curve = curveOf(tag)) =>
  curableWords(demoRecord(tag), curve, numberStyleOf(demoRecord(tag)));

test("a statement is yes, no with its word, or open", () => {
  expect(insideWords("pass")).toBe("yes");
  expect(insideWords("conditional pass")).toBe("no (conditional pass)");
  expect(insideWords("cannot be decided")).toBe("cannot be decided");
});

test("it is said whether a re-teach can cure it, and why not", () => {
  expect(wordsOf("LT-310")).toMatch(
    /^A new zero and span can cure it: new readings after a teach at both ends pass with a chance of (?:0\.9\d|1\.00)\. The best two constants leave \d+\.\d mm of these very readings: that is a bound\.$/u,
  );
  const curve = { ...curveOf("LT-310"), expected: { chanceOfPass: 0.5, draws: 1000 } };
  expect(wordsOf("LT-310", curve)).toMatch(/^A re-teach may not be enough: .+ chance of 0\.50\./u);
  expect(wordsOf("ZT-201")).toBe("It is accepted as it is; new constants are not needed.");
  expect(wordsOf("ZT-407")).toMatch(
    /^No re-teach can cure it: at 6 mm the errors alone lie apart by twice 0\.0776 mm/u,
  );
  const bent = { ...curveOf("ZT-407"), whyNot: { because: "curvature" as const, point: 4, halfSpread: 0.1 } };
  expect(wordsOf("ZT-407", bent)).toBe(
    "No re-teach can cure it: even the best two constants leave 0.1000 mm at 4 mm (curvature, or a value that moves in steps).",
  );
  expect(wordsOf("ZT-407", { ...curveOf("ZT-407"), isCurable: null })).toMatch(/cannot be decided/u);
  expect(wordsOf("ZT-407", { ...curveOf("ZT-407"), best: null })).toBe("");
});

test("constants are printed with digits for a hundredth of the tolerance", () => {
  const worst = curveOf("LT-310").now;
  const atCounts: NewConstants = {
    ...{ kind: "values at counts", countsLower: 0, countsUpper: 27648, worst },
    ...{ valueLower: 99.97029005, valueUpper: -0.010423539 },
  };
  // The tolerance is 0.3 % of span, 0.3 % fill: three digits of it are three decimals.
  expect(typedConstants(record, atCounts)).toEqual([
    { label: "at 0 counts", value: "99.970 % fill" },
    { label: "at 27648 counts", value: "−0.010 % fill" },
  ]);
  const ends: NewConstants = { kind: "inputs at range ends", of: "signal", atLower: 4.1241446, atUpper: 20.6, worst };
  // 0.5 % of 16 mA is 0.08 mA: three digits of it are four decimals.
  expect(typedConstants(demoRecord("LT-310"), ends)).toEqual([
    { label: "signal at 300 mm", value: "4.1241 mA" },
    { label: "signal at 3000 mm", value: "20.6000 mA" },
  ]);
  expect(constantsWords(demoRecord("LT-310"), ends)).toMatch(/beyond the 3\.8 to 20\.5 mA/u);
  expect(constantsWords(demoRecord("LT-310"), { ...ends, atUpper: 20.5 })).not.toMatch(/beyond/u);
  const inPlace: NewConstants = {
    ...{ kind: "values in place of others", offset: 0.5, gain: 1.01, worst },
    ...{ valueLower: 101.5, valueUpper: 0.5 },
  };
  expect(typedConstants(record, inPlace)[0]).toEqual({ label: "in place of 100", value: "101.500 % fill" });
  expect(constantsWords(record, inPlace)).toMatch(/each new constant is 0\.5 \+ 1\.01 · the one that it replaces/u);
  expect(style.value).toBe(3);
});
