import { expect, test } from "vitest";
import {
  distanceText,
  leftOutText,
  percentText,
  pointText,
  rangeText,
  sentenceCase,
  spreadText,
  toleranceText,
  unsignedPercentText,
} from "../../src/charts/chart-words.ts";
import { drawnReadings } from "../../src/charts/phase-rows.ts";
import { sampleRecord } from "./sample-record.ts";

test("percent shows two digits of the tolerance, and two decimals at least", () => {
  expect(percentText(sampleRecord({ tolerancePercent: 0.5 }), 0.12345)).toBe("+0.12 %");
  expect(percentText(sampleRecord({ tolerancePercent: 0.05 }), -0.12345)).toBe("−0.123 %");
  expect(percentText(sampleRecord({ tolerancePercent: 10 }), 12.345)).toBe("+12.35 %");
  expect(unsignedPercentText(sampleRecord(), 0.12345)).toBe("0.12 %");
});

test("a distance keeps the decimals that it, or the range, was typed with", () => {
  expect(distanceText(sampleRecord(), 600)).toBe("600.0 mm");
  const record = sampleRecord({ rangeLower: 0.125, rangeUpper: 40.125, distanceUnit: "in" });
  expect(rangeText(record)).toBe("from 0.125 in to 40.125 in");
});

test("a sentence begins with a capital", () => {
  expect(sentenceCase("as found")).toBe("As found");
});

test("the spread names both ends and the reading that is farthest from zero", () => {
  const record = sampleRecord();
  const [first, second, third] = record.phases.asFound === undefined ? [] : drawnReadings(record.phases.asFound);
  if (first === undefined || second === undefined || third === undefined) throw new Error("the sample has three");
  const readings = [
    { ...first, errorPercentSpan: 0.1 },
    { ...second, errorPercentSpan: -0.4, reference: 300, direction: "falling" as const },
    { ...third, errorPercentSpan: 0.3 },
  ];
  expect(spreadText(record, readings)).toBe(
    "errors from −0.40 % to +0.30 % of span; farthest from zero: −0.40 % at 300.0 mm, falling",
  );
});

test("a judged point shows its error to the digits of its uncertainty", () => {
  const point = sampleRecord().phases.asFound?.points[4];
  if (point === undefined) throw new Error("the sample has a fifth point");
  // Span 1000 mm: 0.96 mm is 0.096 % of span.
  const judged = { ...point, reference: 600, direction: "falling" as const, expandedUncertainty: 0.96 };
  expect(pointText(sampleRecord(), { ...judged, errorPercentSpan: 0.95123 })).toBe(
    "+0.951 ± 0.096 % of span at 600.0 mm, falling",
  );
  expect(pointText(sampleRecord(), { ...judged, errorPercentSpan: -0.95123 })).toMatch(/^−0\.951 ± 0\.096 %/u);
});

test("a tolerance that changes with the distance is told at both ends", () => {
  expect(toleranceText(sampleRecord())).toBe("Tolerance from −0.50 % to +0.50 % of span.");
  const varying = toleranceText(sampleRecord({ isPercentOfReading: true, tolerancePercent: 1 }));
  expect(varying).toMatch(
    /^Tolerance from −0\.20 % to \+0\.20 % of span at 199\.\d mm, from −1\.20 % .* at 1200\.\d mm\.$/u,
  );
});

test("readings that are left out are counted, failed ones apart", () => {
  const phase = sampleRecord({ leftOut: 2 }).phases.asFound;
  if (phase === undefined) throw new Error("the sample has a phase as found");
  expect(leftOutText([phase], 66)).toBe("");
  expect(leftOutText([phase], 65)).toBe(" 1 reading that is left out of the figures is not drawn.");
  const failed = phase.readings.find(({ leftOut }) => leftOut !== undefined);
  if (failed !== undefined) failed.verdict = "fail";
  expect(leftOutText([phase], 64)).toBe(
    " 2 readings that are left out of the figures are not drawn; 1 of them counts as failed.",
  );
});
