import fc from "fast-check";
import type { PhaseAnalysis } from "../../src/analysis/figures/analyse-phase.ts";
import { type Figure, isDetermined } from "../../src/analysis/figures/figure.ts";
import { idealOutput } from "../../src/analysis/readings/ideal-characteristic.ts";
import type { Loop } from "../../src/analysis/readings/loop.ts";
import type { Reading } from "../../src/model/calibration.ts";
import { directions } from "../../src/model/calibration-words.ts";

export type SamplePhase = { readonly loop: Loop; readonly readings: readonly Reading[] };

/**
 * A loop with one to six test points in one to three cycles; some readings are missing, rejected or without a value.
 * Positions lie at least 5 % of span apart and readings of one position at most 0.6 %, so that no rounding decides
 * which readings are one test point. Errors go in hundredths of the tolerance: on the limit is frequent.
 */
export const samplePhase = fc
  .record({
    lower: fc.integer({ min: -500, max: 500 }),
    span: fc.integer({ min: 1, max: 5000 }),
    ends: fc.constantFrom([4, 20], [20, 4], [0, 20], [0, 10], [1, 5]),
    positions: fc.uniqueArray(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 6 }),
    cycles: fc.integer({ min: 1, max: 3 }),
    ways: fc.constantFrom(["rising"], ["falling"], directions) as fc.Arbitrary<readonly Reading["direction"][]>,
    named: fc.boolean(),
    noise: fc.array(
      fc.record({
        jitter: fc.integer({ min: -3, max: 3 }),
        sensor: fc.integer({ min: -120, max: 120 }),
        controller: fc.integer({ min: -120, max: 120 }),
        fate: fc.constantFrom("used", "used", "used", "used", "no value", "no signal", "rejected", "missing"),
      }),
      { minLength: 36, maxLength: 36 },
    ),
  })
  .map(({ lower, span, ends, positions, cycles, ways, named, noise }): SamplePhase => {
    const [signalLower = 0, signalUpper = 0] = ends;
    const signal = {
      rangeLower: lower,
      rangeUpper: lower + span,
      outputAtLower: signalLower,
      outputAtUpper: signalUpper,
    };
    const value = { ...signal, outputAtLower: 0, outputAtUpper: 100 };
    const tolerancePercent = 0.5;
    const places = Array.from({ length: cycles }, (_, cycle) =>
      ways.flatMap((direction) => positions.map((position) => ({ cycle: cycle + 1, direction, position }))),
    ).flat();
    const readings = places.flatMap(({ cycle, direction, position }, index): readonly Reading[] => {
      const { jitter, sensor, controller, fate } = noise[index]!;
      if (fate === "missing") return [];
      const point = lower + (span * position) / 20;
      const reference = point + (span * jitter) / 1000;
      const off = (hundredths: number) => reference + (span * tolerancePercent * hundredths) / 1e4;
      return [
        {
          ...{ calibration: "C-1", phase: "as_found", cycle, direction, reference },
          ...(named && { point }),
          ...(fate !== "no signal" && { signal: idealOutput(signal, off(sensor)) }),
          ...(fate !== "no value" && { value: idealOutput(value, off(controller)) }),
          ...(fate === "rejected" && { rejected: "target slipped" }),
        } as Reading,
      ];
    });
    const toleranceTerms = [{ basis: "percent of span", plus: tolerancePercent, minus: tolerancePercent }] as const;
    return {
      readings,
      loop: { characteristics: { signal, value }, toleranceTerms, faultLevels: {}, signalUnit: "mA" },
    };
  })
  .filter(({ readings }) => readings.some(({ rejected }) => rejected === undefined));

/** The same phase with every distance and every signal exchanged for another. */
export function mapped(
  { loop, readings }: SamplePhase,
  distanceOf: (distance: number) => number,
  signalOf: (signal: number) => number,
): SamplePhase {
  const { signal, value } = loop.characteristics;
  const range = { rangeLower: distanceOf(signal.rangeLower), rangeUpper: distanceOf(signal.rangeUpper) };
  const ends = { outputAtLower: signalOf(signal.outputAtLower), outputAtUpper: signalOf(signal.outputAtUpper) };
  return {
    loop: {
      ...loop,
      characteristics: { signal: { ...range, ...ends }, ...(value && { value: { ...value, ...range } }) },
    },
    readings: readings.map((reading) => ({
      ...reading,
      reference: distanceOf(reading.reference),
      ...(reading.point !== undefined && { point: distanceOf(reading.point) }),
      ...(reading.signal !== undefined && { signal: signalOf(reading.signal) }),
    })),
  };
}

/**
 * Every number of an analysis that is in percent of span, by name; a figure that is not determined is its reason.
 * Of places only the number there is taken, and of the maximum measured error the size: ties may fall either way.
 */
export function percentFigures(analysis: PhaseAnalysis): Readonly<Record<string, number | string | null>> {
  const named: Record<string, number | string | null> = {};
  const take = <Value>(name: string, figure: Figure<Value>, parts: (value: Value) => Record<string, number | null>) => {
    if (!isDetermined(figure)) named[name] = figure.notDetermined;
    else for (const [part, number] of Object.entries(parts(figure))) named[`${name}.${part}`] = number;
  };
  take("zeroAndSpan", analysis.zeroAndSpan, ({ zeroError, spanError }) => ({
    zero: zeroError.percentSpan,
    zeroUncertainty: zeroError.standardUncertainty,
    span: spanError.percentSpan,
    spanUncertainty: spanError.standardUncertainty,
  }));
  for (const [name, figure] of Object.entries(analysis.figures)) take(name, figure, sizesOf);
  take("linearity", analysis.linearity, (found) => found);
  take("hysteresis", analysis.hysteresis, ({ percentSpan }) => ({ percentSpan }));
  take("withinOneCycle", analysis.hysteresisWithinOneCycle, ({ percentSpan }) => ({ percentSpan }));
  take("loopError", analysis.greatestLoopError, ({ loopError }) => ({ size: Math.abs(loopError!.percentSpan) }));
  for (const [index, { up, down, mean }] of analysis.curve.entries())
    take(`curve ${index}`, { up, down, mean }, (at) => at);
  return named;
}

/** Numbers without a unit of distance. */
function sizesOf(figure: object): Record<string, number> {
  const sizes = Object.entries(figure).filter(([part]) => part !== "point" && part !== "distance");
  return Object.fromEntries(
    sizes.flatMap(([part, value]) =>
      typeof value === "number" ? [[part, part === "percentSpan" ? Math.abs(value) : value]] : [],
    ),
  );
}
