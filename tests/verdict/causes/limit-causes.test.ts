import { expect, test } from "vitest";
import { limitCauses } from "../../../src/verdict/causes/limit-causes.ts";
import { type Setting, signalKinds } from "../../computed/faults/faulty-loop.ts";
import { nothingWrong, planted, rowsOf } from "./planted.ts";

const top = { signal: (signal: number) => Math.min(signal, 16) };
const check = (item: string, measured: number) => ({ calibration: "C-1", item, result: "pass" as const, measured });

test("a plateau at 16 mA of a rising current: what was simulated, or supply and burden, tell 13 from 16", () => {
  const rows = (changes: Partial<Setting>) => rowsOf(limitCauses, planted(top, changes));
  expect(rows({ loopChecks: [check("simulated_20mA", 16.02)] })).toEqual([13]);
  expect(rows({ loopChecks: [check("simulated_20mA", 20)] })).toEqual([16]);
  const supply = [check("supply_voltage", 18), check("burden", 500)];
  expect(rows({ loopChecks: supply, instrument: { supplyMin: 10 } })).toEqual([13]);
  expect(rows({ loopChecks: supply, instrument: { supplyMin: 5 } })).toEqual([16]);
});

test("without such a check the finding names the other as its rival and the simulation as what would tell", () => {
  const [own] = limitCauses(planted(top));
  expect(own).toMatchObject({ row: 16 });
  expect(own?.rivals.join()).toContain("(13)");
  const [twoWires] = limitCauses(planted(top, { instrument: { loopPowered: true } }));
  expect(twoWires).toMatchObject({ row: 13 });
  expect(twoWires?.separatedBy).toContain("simulate 20 mA");
});

test("near plateaus are blind zones, and on a reverse-acting loop a current limit may look like one", () => {
  const near = { seen: (part: number) => Math.max(part, 0.25) };
  expect(rowsOf(limitCauses, planted(near))).toEqual([15]);
  expect(limitCauses(planted(top, { kind: signalKinds["20–4"] }))[0]?.rivals.join()).toContain("(13)");
});

test("twice the distance at the nearest points is row 15, too", () => {
  const [finding] = limitCauses(planted({ seen: (part) => (part < 0.15 ? 2 * (part + 0.2) - 0.2 : part) }));
  expect(finding).toMatchObject({ row: 15 });
  expect(finding?.says).toContain("twice the distance");
});

test("a signal that stops at 20.4 mA while the target goes on beyond the range is row 17", () => {
  const points = [0, 0.2, 0.4, 0.6, 0.8, 1, 1.05, 1.1];
  const beyond = planted({ signal: (signal) => Math.min(signal, 20.4) }, { points });
  expect(rowsOf(limitCauses, beyond)).toEqual([17]);
});

test("nothing stands still on a healthy loop or on one that is dead", () => {
  expect(rowsOf(limitCauses, planted(nothingWrong))).toEqual([]);
  expect(rowsOf(limitCauses, planted({ signal: () => 12 }))).toEqual([]);
});
