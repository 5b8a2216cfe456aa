import { expect, test } from "vitest";
import { readingsApart } from "../../../src/analysis/plausibility/readings-apart.ts";
import { stagedReadings } from "../../../src/analysis/stages/staged-readings.ts";
import type { Reading } from "../../../src/model/calibration.ts";
import { expectNear, loop } from "../sample-loop.ts";
import { sheetOf } from "../sample-staged.ts";

const context = { mattering: 0.25, steps: { signal: 0.00625, counts: 0.0036, value: 0.1 } };
const wobble = (place: number) => ((place * 5) % 11) / 1000;
const read = (reference: number, place: number) => ({
  signal: 4.08 + reference / 6.25 + wobble(place),
  value: 0.05 + reference / 10 + wobble(place) / 2,
});
const apart = (readings: readonly Reading[]) => readingsApart(stagedReadings(readings, loop).readings, context);
const sheet = (cycles: number, change: Partial<Reading>, place = 2, keep = read) =>
  sheetOf(cycles, (reference, index) => ({ ...keep(reference, index), ...(index === place && change) }));

test("readings that agree are not apart, with one cycle or more, and with a bow of three tolerances", () => {
  for (const cycles of [1, 2, 5]) expect(apart(sheet(cycles, {}))).toEqual([]);
  const bowed = (reference: number, index: number) => ({
    signal: read(reference, index).signal + 0.24 * 4 * (reference / 100) * (1 - reference / 100),
  });
  expect(apart(sheet(1, {}, 0, bowed as typeof read))).toEqual([]);
});

test.each([1, 2, 5])("a signal that neither its fellows nor the controller bear out is apart: %i cycles", (cycles) => {
  const [found, ...more] = apart(sheet(cycles, { signal: 14.28 }));
  expect(more).toEqual([]);
  expect(found).toMatchObject({ index: 2, axis: "signal", isEither: false, isOfAll: false });
  // 40 mm is 40 % of span; the sensor shows 0.5 % more: 10.48 mA.
  expectNear(found?.expected, 40.5, 0.3);
  expectNear(found?.deviation, (100 * (14.28 - 10.48)) / 16, 0.3);
});

test("a value alone is apart where the signal is right", () => {
  expect(apart(sheet(2, { value: 0.45 }))).toMatchObject([{ index: 2, axis: "value" }]);
});

test("a reference that every output and the nominal position contradict is the one that is wrong", () => {
  const [found, ...more] = apart(sheet(2, { reference: 4 }));
  expect(more).toEqual([]);
  expect(found).toMatchObject({ index: 2, axis: "reference", isOfAll: false });
  expectNear(found?.expected, 40, 0.3);
});

test("outputs that agree with each other and not with the reference and its point are no slip of one column", () => {
  expect(apart(sheet(2, { signal: 15.4, value: 7.12 }))).toMatchObject([{ index: 2, axis: "signal", isOfAll: true }]);
});

test("with a signal alone and no nominal position, nothing tells which column it is", () => {
  const alone = sheetOf(2, (reference, index) => ({
    point: undefined,
    signal: index === 2 ? 14.28 : read(reference, index).signal,
  }));
  expect(apart(alone)).toMatchObject([{ index: 2, axis: "signal", isEither: true }]);
});

test("hysteresis, a railed end and a scatter that grows are not readings apart", () => {
  const gap = sheetOf(1, (reference, index) => ({
    signal: read(reference, index).signal + (index < 6 ? 0.3 : -0.3) * Math.sin((Math.PI * reference) / 100),
  }));
  expect(apart(gap)).toEqual([]);
  const railed = sheetOf(2, (reference, index) => ({ signal: Math.min(19, read(reference, index).signal) }));
  expect(apart(railed)).toEqual([]);
  const growing = sheetOf(3, (reference, index) => ({
    signal: 4 + reference / 6.25 + (wobble(index) - 0.005) * (1 + reference / 10),
  }));
  expect(apart(growing)).toEqual([]);
});

test("more than a quarter of the readings are a pattern, and three have no fellows", () => {
  const half = sheetOf(2, (reference, index) => ({
    signal: read(reference, index).signal + (index % 3 === 0 ? 3 : 0),
  }));
  expect(apart(half)).toEqual([]);
  expect(apart(sheet(1, { signal: 14.28 }).slice(0, 3))).toEqual([]);
});

test("what another output of the same reading contradicts needs no scatter to be told by", () => {
  // Scatter of the reference itself, the same in signal and value: neither of them says how well the other follows it.
  const shaken = (index: number) => (((index * 7) % 5) - 2) / 8;
  const both = (reference: number, index: number, slip: number) => ({
    signal: 4 + (reference + shaken(index)) / 6.25 + slip,
    value: (reference + shaken(index)) / 10,
  });
  const slipped = (slip: number) => sheetOf(1, (reference, index) => both(reference, index, index === 7 ? slip : 0));
  expect(apart(slipped(0))).toEqual([]);
  expect(apart(slipped(-0.12))).toMatchObject([{ index: 7, axis: "signal" }]);
});

test("a reading at a place of its own, where all others come in pairs, is told from a smaller deviation on", () => {
  const shaken = (index: number) => (((index * 7) % 5) - 2) / 20;
  const paired = (place: number) =>
    sheetOf(1, (reference, index) => ({
      point: undefined,
      reference: index === place ? reference + 9 : reference,
      signal: 4 + (reference + shaken(index) + (index === place ? 9.8 : 0)) / 6.25,
    }));
  expect(apart(paired(-1))).toEqual([]);
  expect(apart(paired(7))).toMatchObject([{ index: 7, isEither: true }]);
});
test("a value that stands still is no witness", () => {
  const frozen = sheetOf(2, (reference, index) => ({ ...read(reference, index), value: 50 }));
  expect(apart(frozen).filter(({ axis }) => axis !== "value")).toEqual([]);
});

test("hysteresis with one cycle does not hide a reference that both outputs contradict", () => {
  const shaken = (index: number) => (((index * 7) % 5) - 2) / 100;
  const pairs = (slip: number) =>
    sheetOf(1, (reference, index) => {
      const shown = reference + (index < 6 ? -1.5 : 1.5) + shaken(index);
      return { reference: index === 3 ? reference + slip : reference, signal: 4 + shown / 6.25, value: shown / 10 };
    });
  expect(apart(pairs(0))).toEqual([]);
  expect(apart(pairs(9))).toMatchObject([{ index: 3 }]);
});
