import fc from "fast-check";
import { expect, test } from "vitest";
import { analysePhase, type PhaseAnalysis } from "../../src/analysis/figures/analyse-phase.ts";
import { isDetermined } from "../../src/analysis/figures/figure.ts";
import { analyseReadings } from "../../src/analysis/readings/analyse-readings.ts";
import { stageShares } from "../../src/analysis/stages/stage-shares.ts";
import { spanOf } from "../../src/model/range.ts";
import { convert } from "../../src/units/convert.ts";
import { decidePhase } from "../../src/verdict/decision/decide-phase.ts";
import { howMany } from "../how-many.ts";
import { mapped, percentFigures, type SamplePhase, samplePhase } from "./sample-phase.ts";

// fast-check prints seed and path with any counterexample; give them to fc.assert as { seed, path } to see it again.
// Of what one phase in twenty-five brings about, 100 phases show one in 98 runs of 100.
const settings = { seed: 20260504, numRuns: howMany(100, 300) };

/**
 * Percent of span. A distance of up to 10⁴ spans from zero is stored to 1e-16 of itself, 1e-12 of span; a fitted line
 * read outside the readings multiplies that by some tens, percent by a hundred. 1e-9 relative, and never less than this.
 */
const floor = 1e-7;

const same = (distance: number) => distance;

function analysed({ loop, readings }: SamplePhase): PhaseAnalysis {
  const analysis = analysePhase(readings, loop);
  if (!isDetermined(analysis)) throw new Error(analysis.notDetermined);
  return analysis;
}

function expectSameFigures(left: SamplePhase, right: SamplePhase): void {
  const [expected, found] = [left, right].map((phase) => percentFigures(analysed(phase)));
  expect(Object.keys(found!)).toEqual(Object.keys(expected!));
  for (const [name, value] of Object.entries(expected!)) {
    if (typeof value !== "number") expect(found![name], name).toBe(value);
    else {
      const allowed = Math.max(1e-9 * Math.abs(value), floor);
      expect(Math.abs((found![name] as number) - value), `${name}: ${found![name]} for ${value}`).toBeLessThanOrEqual(
        allowed,
      );
    }
  }
}

const verdictsOf = ({ loop, readings }: SamplePhase) => {
  const { readings: found, judged } = analysed({ loop, readings });
  const magnitude = spanOf(loop.characteristics.signal);
  const { readingVerdicts, parts, overall } = decidePhase({ readings: found, judged, magnitude });
  return { readingVerdicts, parts, overall };
};

test("shifting every distance changes no figure in percent of span", () => {
  fc.assert(
    fc.property(samplePhase, fc.integer({ min: -10_000, max: 10_000 }), (phase, shift) => {
      expectSameFigures(
        phase,
        mapped(phase, (distance) => distance + shift, same),
      );
    }),
    settings,
  );
});

test("another unit of distance changes no figure in percent of span, and no verdict", () => {
  const unit = fc.constantFrom("cm", "m", "in", "ft" as const);
  fc.assert(
    fc.property(samplePhase, unit, (phase, to) => {
      const converted = mapped(phase, (distance) => convert(distance, "mm", to), same);
      expectSameFigures(phase, converted);
      expect(verdictsOf(converted)).toEqual(verdictsOf(phase));
    }),
    settings,
  );
});

test("a tolerance in distance converted with the distances gives the same verdicts", () => {
  const unit = fc.constantFrom("cm", "m", "in", "ft" as const);
  fc.assert(
    fc.property(samplePhase, unit, (phase, to) => {
      const inDistance = (amount: number): SamplePhase["loop"]["toleranceTerms"] => [
        { basis: "distance", plus: amount, minus: amount },
      ];
      const amount = (0.5 * spanOf(phase.loop.characteristics.signal)) / 100;
      const converted = mapped(phase, (distance) => convert(distance, "mm", to), same);
      const before = { ...phase, loop: { ...phase.loop, toleranceTerms: inDistance(amount) } };
      const after = {
        ...converted,
        loop: { ...converted.loop, toleranceTerms: inDistance(convert(amount, "mm", to)) },
      };
      expect(verdictsOf(after)).toEqual(verdictsOf(before));
      expect(verdictsOf(before)).toEqual(verdictsOf(phase));
    }),
    settings,
  );
});

/** The ends of a signal are its own: 3.8 mA and 20.5 mA, 0 V; at one of them a reading is no number. */
function hasRails(phase: SamplePhase): boolean {
  return analysed(phase).readings.some(({ railed }) => railed !== undefined);
}

test("shifting and scaling the signal with its ends changes no figure in percent of span", () => {
  fc.assert(
    fc.property(
      samplePhase,
      fc.integer({ min: -20, max: 20 }),
      fc.integer({ min: 1, max: 50 }),
      (phase, shift, scale) => {
        const scaled = mapped(phase, same, (signal) => signal * scale + shift);
        fc.pre(!hasRails(phase) && !hasRails(scaled));
        expectSameFigures(phase, scaled);
      },
    ),
    settings,
  );
});

test("a loop that acts the other way round has the same figures and verdicts; the line of its signal is mirrored", () => {
  fc.assert(
    fc.property(samplePhase, (phase) => {
      const { outputAtLower, outputAtUpper } = phase.loop.characteristics.signal;
      const mirrored = mapped(phase, same, (signal) => outputAtLower + outputAtUpper - signal);
      fc.pre(!hasRails(phase) && !hasRails(mirrored));
      expectSameFigures(phase, mirrored);
      expect(verdictsOf(mirrored)).toEqual(verdictsOf(phase));
      const [fit, mirroredFit] = [analysed(phase), analysed(mirrored)].map(({ fit: found }) => found);
      if (analysed(phase).judged !== "signal" || !isDetermined(fit!) || !isDetermined(mirroredFit!)) return;
      const slopeOfSpan = Math.abs(outputAtUpper - outputAtLower) / spanOf(phase.loop.characteristics.signal);
      expect(Math.abs(fit.slope + mirroredFit.slope)).toBeLessThanOrEqual(1e-9 * slopeOfSpan);
    }),
    settings,
  );
});

test("the order of the rows does not matter where every row names its cycle", () => {
  fc.assert(
    fc.property(
      samplePhase.chain((phase) =>
        fc
          .shuffledSubarray([...phase.readings], { minLength: phase.readings.length })
          .map((readings) => [phase, { ...phase, readings }] as const),
      ),
      ([phase, shuffled]) => {
        expectSameFigures(phase, shuffled);
        expect(verdictsOf(shuffled).overall).toEqual(verdictsOf(phase).overall);
      },
    ),
    settings,
  );
});

test("the four linearities stand in their order: independent is least, zero-based no more than terminal-based", () => {
  let determined = 0;
  fc.assert(
    fc.property(samplePhase, (phase) => {
      const found = analysed(phase).linearity;
      if (!isDetermined(found)) return;
      determined += 1;
      const { independent, leastSquares, zeroBased, terminal } = found;
      expect(independent).toBeGreaterThanOrEqual(0);
      for (const other of [leastSquares, zeroBased, terminal]) expect(independent).toBeLessThanOrEqual(other + floor);
      expect(zeroBased).toBeLessThanOrEqual(terminal + floor);
      // The minimax line passes both ends within its deviation, so the terminal line departs from it by no more.
      expect(terminal).toBeLessThanOrEqual(2 * independent + floor);
    }),
    settings,
  );
  expect(determined).toBeGreaterThan(settings.numRuns / 3);
});

/** Distances of a binary grid of 2⁻¹⁶ up to 2¹⁴: their sums and differences are exact. */
const gridDistance = fc.integer({ min: -(2 ** 30), max: 2 ** 30 }).map((steps) => steps / 2 ** 16);
const gridStage = fc.option(gridDistance, { nil: undefined });

test("the shares of a reading add up exactly to the error of the last quantity that was read, whatever was read", () => {
  fc.assert(
    fc.property(
      gridDistance,
      fc.record({ signal: gridStage, signalAtCard: gridStage, counts: gridStage, value: gridStage }),
      (reference, indicated) => {
        const order = ["signal", "signalAtCard", "counts", "value"] as const;
        const last = order.findLast((name) => indicated[name] !== undefined);
        const shares = Object.values(stageShares(reference, indicated));
        expect(shares).toHaveLength(order.filter((name) => indicated[name] !== undefined).length);
        expect(shares.reduce((total, share) => total + share, 0)).toBe(
          last === undefined ? 0 : indicated[last]! - reference,
        );
      },
    ),
    settings,
  );
});

test("so do those of analysed readings, whose sum is the loop error", () => {
  let withLoopError = 0;
  fc.assert(
    fc.property(samplePhase, fc.double({ min: -0.05, max: 0.05, noNaN: true }), ({ loop, readings }, lost) => {
      const span = spanOf(loop.characteristics.signal);
      const atCard = readings.map((reading, index) =>
        reading.signal === undefined || index % 2 === 0 ? reading : { ...reading, signalAtCard: reading.signal + lost },
      );
      for (const { reading, shares, loopError } of analyseReadings(atCard, loop, "signal")) {
        expect("wiring" in shares).toBe(reading.signalAtCard !== undefined);
        if (loopError === undefined) continue;
        withLoopError += 1;
        const sum = Object.values(shares).reduce((total, share) => total + share, 0);
        expect(Math.abs(sum - loopError.distance)).toBeLessThanOrEqual((floor / 100) * span);
      }
    }),
    settings,
  );
  expect(withLoopError).toBeGreaterThan(settings.numRuns);
});
