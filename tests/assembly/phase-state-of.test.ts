import { expect, test } from "vitest";
import { phaseStateOf } from "../../src/assembly/phase-state-of.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { demoRecord } from "../report/demo-records.ts";

const stateOf = (record: CalibrationRecord, name: "asFound" | "asLeft" = "asFound") =>
  phaseStateOf(record, name, record.phases[name]!);

/** Relative: numbers that the record holds already, divided once or twice. */
const close = 1e-12;

test("the worst of a part is the greatest error over the tolerance on its side, as the record has it", () => {
  for (const tag of ["LT-310", "LT-702", "ZT-407", "ZT-330"]) {
    const record = demoRecord(tag);
    const { worst } = record.phases.asFound!;
    const state = stateOf(record);
    const part = worst?.of === "controller" ? state.controller : state.sensor;
    expect(Math.abs((part?.worst ?? 0) / Math.abs(worst?.partOfTolerance ?? 1) - 1), tag).toBeLessThan(close);
  }
});

test("what a re-teach leaves, the spread and the gap are laid over the tolerance: LT-310, ±0.5 % of span", () => {
  const record = demoRecord("LT-310");
  const state = stateOf(record);
  const { hysteresis, repeatability } = record.phases.asFound!;
  const best = record.reteach!.asFound!.sensor!.best!.worst;
  expect(Math.abs(state.sensor!.forecast!.best!.part / (Math.abs(best.errorPercentSpan) / 0.5) - 1)).toBeLessThan(
    close,
  );
  // Nothing is set aside there, and the tolerance is the same everywhere.
  expect(Math.abs((state.scatter as number) / ((2 * repeatability!.pooledStdDev) / 0.5) - 1)).toBeLessThan(close);
  expect(state.leastScatter).toBeLessThan(state.scatter as number);
  expect(Math.abs(state.gap! / (hysteresis!.percentSpan / 2 / 0.5) - 1)).toBeLessThan(close);
});

test("a tolerance that grows with the reading is taken where the error is: ZT-520, ±0.1 % of span ± 0.1 % of reading", () => {
  const record = demoRecord("ZT-520");
  const line = record.causes!.asFound!.stageLines[0]!;
  // 4 to 24 in: 0.02 in + 0.1 % of 4 in, and of 24 in.
  const expected = Math.max(
    Math.abs(line.errorAtLower.percentSpan * 0.2) / 0.024,
    Math.abs(line.errorAtUpper.percentSpan * 0.2) / 0.044,
  );
  expect(Math.abs(stateOf(record).stageParts[0]!.part / expected - 1)).toBeLessThan(1e-9);
});

test("one cycle gives no spread, with the reason", () => {
  expect(stateOf(demoRecord("LT-640")).scatter).toEqual({ notDetermined: "one cycle only" });
});

test("where only values were read there is one part, the whole loop", () => {
  const record = demoRecord("LT-702");
  const asFound = { ...record.phases.asFound!, judged: "value" as const };
  const state = phaseStateOf(record, "asFound", asFound);
  expect(state.controller).toBeNull();
  expect(state.sensor?.statement).toBe(asFound.verdict);
});

test("loop checks count in the last phase only", () => {
  const record = demoRecord("LT-640");
  expect(stateOf(record).failedChecks).toMatchObject([{ item: "supply at full output", key: "supply at full output" }]);
  const later = { ...record, phases: { ...record.phases, asLeft: record.phases.asFound! } };
  expect(stateOf(later).failedChecks).toEqual([]);
  expect(stateOf(later, "asLeft").failedChecks).toHaveLength(1);
});

test("three test points that were read at two distances are no reason to leave the loop", () => {
  const record = demoRecord("LT-310");
  const asFound = record.phases.asFound!;
  const { rangeLower, rangeUpper } = record.instrument;
  const isThin = (readings: typeof asFound.readings) =>
    phaseStateOf(record, "asFound", { ...asFound, readings, missing: [{ about: "points", says: "few" }] }).isThinlyRead;
  expect(isThin(asFound.readings)).toBe(true);
  const two = asFound.readings.map((one, index) => ({ ...one, reference: index % 2 === 0 ? rangeLower : rangeUpper }));
  expect(isThin(two)).toBe(false);
});

test("of an item that was looked at again the last look counts", () => {
  const record = demoRecord("LT-640");
  const { loopChecks } = record;
  const looks = (item: string, ...results: readonly ("pass" | "fail")[]) => {
    const items = results.map((result) => ({ ...loopChecks!.items[0]!, item, result, isContradiction: false }));
    return stateOf({ ...record, loopChecks: { ...loopChecks!, items } });
  };
  expect(looks("shield", "fail", "pass").failedChecks).toEqual([]);
  expect(looks("shield", "pass", "fail").failedChecks).toMatchObject([{ item: "shield" }]);
  expect(looks("target", "pass").isTargetProved).toBe(true);
  expect(looks("target", "pass", "fail").isTargetProved).toBe(false);
});

test("a teach counts as just done in the readings that follow it", () => {
  const record = demoRecord("ZT-407");
  expect(stateOf(record).isJustTaught).toBe(false);
  expect(stateOf(record, "asLeft").isJustTaught).toBe(true);
});

test("whether the sensor passed before it was taught is known as left, from what was read as found", () => {
  const record = demoRecord("ZT-407");
  const before = (sensor: "pass" | "fail", name: "asFound" | "asLeft") => {
    const asFound = { ...record.phases.asFound!, verdicts: { sensor, controller: null } };
    return stateOf({ ...record, phases: { ...record.phases, asFound } }, name).isPassingBefore;
  };
  expect([before("pass", "asLeft"), before("fail", "asLeft"), before("pass", "asFound")]).toEqual([true, false, false]);
  const { asFound: _, ...alone } = record.phases;
  expect(stateOf({ ...record, phases: alone }, "asLeft").isPassingBefore).toBe(false);
});

test("without the air of the day LT-318 would pass, and the record says by how much", () => {
  const left = stateOf(demoRecord("LT-318")).leftWithoutAir!;
  expect(left).toBeGreaterThan(0);
  expect(left).toBeLessThan(1);
  expect(stateOf(demoRecord("ZT-330")).leftWithoutAir).toBeNull();
});

test("what the others say is what the forecast takes for now, which leaves out what stands apart; a railed reading does not", () => {
  const record = demoRecord("LT-310");
  const others = (why: string) =>
    stateOf({
      ...record,
      causes: { ...record.causes, asFound: { ...record.causes!.asFound!, setAside: [{ reading: 0, row: 2, why }] } },
    }).others;
  const { now } = record.reteach!.asFound!.sensor!;
  expect(others("railed")).toBeUndefined();
  expect(others("wild reading")).toMatchObject({ apart: 1, point: now.point, controller: null });
  expect(others("wild reading")?.sensor).toMatchObject({
    statement: now.statement,
    errorDistance: now.errorDistance,
  });
});

test("a line is off where it misses by more than three of its standard uncertainties at an end of the range", () => {
  const record = demoRecord("LT-310");
  const [line] = record.causes!.asFound!.stageLines;
  const at = (percentSpan: number) => ({ percentSpan, standardUncertainty: 0.1 });
  const isOff = (lower: number, upper: number) =>
    stateOf({
      ...record,
      causes: {
        asFound: {
          ...record.causes!.asFound!,
          stageLines: [{ ...line!, errorAtLower: at(lower), errorAtUpper: at(upper) }],
        },
      },
    }).isLineOff;
  expect(isOff(0.29, -0.29)).toBe(false);
  expect(isOff(0, -0.31)).toBe(true);
});
