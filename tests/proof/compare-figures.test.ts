import { expect, test } from "vitest";
import { compareFigures } from "../../src/proof/compare-figures.ts";

const record = {
  software: { version: "0.3.0" },
  instrument: { tag: "LT-1", rangeUpper: 100 },
  phases: {
    asFound: {
      verdict: "pass",
      zeroError: { percentSpan: 0.25, standardUncertainty: null },
      hysteresis: null,
      points: [{ errorDistance: 12.5 }, { errorDistance: -3 }],
      notDetermined: { hysteresis: "read in one direction" },
    },
  },
  causes: { asFound: { findings: [{ title: "zero shifted", says: "…" }] } },
};

function changed(change: (copy: typeof record) => void) {
  const copy = structuredClone(record);
  change(copy);
  return compareFigures(record, copy, "0.2.0");
}

const places = (compared: ReturnType<typeof changed>) => compared.differences.map(({ place }) => place);

test("a record is what its own version makes of it", () => {
  const { count, differences } = changed(() => undefined);
  expect(differences).toEqual([]);
  // Tag, range, verdict, zero error, two errors; its uncertainty is null in both.
  expect(count).toBe(7);
});

test("a verdict, a figure and what was typed are held to", () => {
  const compared = changed((copy) => {
    copy.phases.asFound.verdict = "fail";
    copy.phases.asFound.zeroError.percentSpan = 0.2501;
    copy.instrument.rangeUpper = 101;
  });
  expect(places(compared)).toEqual([
    "instrument.rangeUpper",
    "phases.asFound.verdict",
    "phases.asFound.zeroError.percentSpan",
  ]);
  expect(compared.differences[1]).toEqual({
    ...{ place: "phases.asFound.verdict", expected: '"pass"', found: '"fail"', kind: "value" },
  });
});

test("words that explain, opinions, and fields that one version alone has are not", () => {
  const compared = changed((copy) => {
    copy.phases.asFound.notDetermined.hysteresis = "no test point was read in both directions";
    Object.assign(copy.causes.asFound.findings[0] ?? {}, { id: "zero-shifted", title: "Zero shifted" });
    Object.assign(copy.phases.asFound, { meanAbsoluteError: { percentSpan: 0.1 } });
    Object.assign(copy.phases.asFound.points[0] ?? {}, { expandedUncertainty: 3 });
    Reflect.deleteProperty(copy.phases.asFound.points[1] ?? {}, "errorDistance");
    copy.software.version = "0.2.0";
  });
  expect(places(compared)).toEqual([]);
});

test("a figure that one has and the other could not have, and a point more or less, differ", () => {
  expect(places(changed(({ phases }) => Object.assign(phases.asFound, { zeroError: null })))).toEqual([
    "phases.asFound.zeroError",
  ]);
  expect(
    places(changed(({ phases }) => Object.assign(phases.asFound, { hysteresis: { percentSpan: 0.1, point: 3 } }))),
  ).toEqual(["phases.asFound.hysteresis"]);
  expect(places(changed(({ phases }) => phases.asFound.points.pop()))).toEqual(["phases.asFound.points[1]"]);
  expect(places(changed(({ phases }) => phases.asFound.points.push({ errorDistance: 0 })))).toEqual([
    "phases.asFound.points[2]",
  ]);
});

test("sums in another order are the same: within 1 in 10^9 of the larger, or of one of its unit below that", () => {
  const errorsOf = (value: number, other: number) =>
    compareFigures({ zeroError: { percentSpan: value } }, { zeroError: { percentSpan: other } }, "0.2.0").differences;
  expect(errorsOf(1e6, 1e6 * (1 + 0.9e-9))).toEqual([]);
  expect(errorsOf(1e6, 1e6 * (1 + 1.1e-9))).toHaveLength(1);
  expect(errorsOf(1e-12, 0)).toEqual([]);
  expect(errorsOf(1.1e-9, 0)).toHaveLength(1);
});

test("what changed since is not held to, by the version that wrote the record", () => {
  const drift = (perYear: number) => ({ overTheYears: { places: [{ drift: { perYear } }] } });
  expect(compareFigures(drift(1), drift(2), "0.1.0")).toEqual({ count: 0, differences: [] });
  expect(compareFigures(drift(1), drift(2), "0.3.0").differences).toHaveLength(1);
});
