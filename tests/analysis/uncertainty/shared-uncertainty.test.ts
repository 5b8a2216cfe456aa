import { describe, expect, test } from "vitest";
import { type Figure, isDetermined } from "../../../src/analysis/figures/figure.ts";
import { readingUncertainties } from "../../../src/analysis/uncertainty/shared-uncertainty.ts";
import { basis, meter, rail } from "../sample-basis.ts";
import { expectNear } from "../sample-loop.ts";

const rounding = 1e-15;

function determined<Value>(figure: Figure<Value>): Value {
  if (!isDetermined(figure)) throw new Error(figure.notDetermined);
  return figure;
}

describe("what readings share", () => {
  test("a rail of 0.2 mm with k = 2 and a typed step of 0.2 mm, where the controller's value is judged", () => {
    expect(
      readingUncertainties({
        standards: [
          {
            standard: "GB-1",
            certificate: "EX-1",
            calibratedOn: "2026-01-14",
            dueOn: "2027-01-14",
            expandedUncertainty: 0.2,
            uncertaintyUnit: "mm",
            coverageFactor: 2,
          },
        ],
        performedOn: "2026-03-04",
        distanceUnit: "mm",
        signalUnit: "mA",
        principle: "laser",
        isTemperatureCompensated: false,
        airTemperatureCelsius: 20,
        alignmentAngleDegrees: 0,
        judged: "value",
        distancePerOutput: 10,
        steps: { reference: 0.2, output: 0.01 },
        repeatability: { pooledStdDev: 0.3, degreesOfFreedom: 20 },
        hysteresis: { width: 0.4 },
      }),
    ).toEqual({ sharedReference: 0.1, sharedOutput: 0, ownReference: 0.05773502691896258 });
  });

  test("certificate and drift of both standards; the resolution of the reference is each reading's own", () => {
    const found = determined(readingUncertainties({ ...basis, standards: [rail, meter] }));
    const drift = 49 / 365.25 / Math.sqrt(3);
    expectNear(found.sharedReference, Math.hypot(0.1, 0.05 * drift), rounding);
    expectNear(found.sharedOutput, Math.hypot(0.1, 0.1 * drift), rounding);
    expectNear(found.ownReference, 0.05 / Math.sqrt(3), rounding);
  });

  test.each([
    ["no standard", [], "no standard of distance states its uncertainty"],
    ["no meter", [rail], "no standard of the signal states its uncertainty"],
    ["no rail", [meter], "no standard of distance states its uncertainty"],
    ["percent", [{ ...rail, uncertaintyUnit: "%" }, meter], "no standard of distance states its uncertainty"],
    ["a drift alone", [{ ...rail, expandedUncertainty: undefined }, meter], "GB-1 states no uncertainty"],
    ["a meter with a drift alone", [rail, { ...meter, expandedUncertainty: undefined }], "MM-1 states no uncertainty"],
    [
      "one of two rails silent",
      [rail, { ...rail, standard: "GB-2", expandedUncertainty: undefined }, meter],
      "GB-2 states no uncertainty",
    ],
  ] as const)("%s: it is not known", (_, standards, notDetermined) => {
    expect(readingUncertainties({ ...basis, standards })).toEqual({ notDetermined });
  });

  test("a certificate that grows with what it measures is that of the upper end: U = a + b·L and a + b·I", () => {
    const ends = { rangeLower: 200, rangeUpper: 1800, outputAtLower: 4, outputAtUpper: 20 };
    const standards = [
      { ...rail, relativeUncertainty: 0.01, driftPerYear: 0 },
      { ...meter, relativeUncertainty: 0.02, driftPerYear: 0 },
    ];
    const found = determined(readingUncertainties({ ...basis, ends, standards }));
    expectNear(found.sharedReference, (0.2 + 0.0001 * 1800) / 2, rounding);
    expectNear(found.sharedOutput, (100 * (0.002 + 0.0002 * 20)) / 2, rounding);
  });

  test("counts need no meter", () => {
    const { sharedOutput } = determined(readingUncertainties({ ...basis, standards: [rail], judged: "counts" }));
    expect(sharedOutput).toBe(0);
  });
});
