import { expect, test } from "vitest";
import { beyondRange, blindZone, currentLimited, obstruction } from "../../../src/verdict/causes/limit-causes.ts";
import { type Setting, signalKinds } from "../../computed/faults/faulty-loop.ts";
import { findingsOf, idsOf, nothingWrong, planted } from "./planted.ts";

const limitCauses = [beyondRange, blindZone, currentLimited, obstruction];

const top = { signal: (signal: number) => Math.min(signal, 16) };
const check = (item: string, measured: number) => ({ calibration: "C-1", item, result: "pass" as const, measured });

test("a plateau at 16 mA of a rising current: what was simulated, or supply and burden, tell which of two", () => {
  const ids = (changes: Partial<Setting>) => idsOf(limitCauses, planted(top, changes));
  expect(ids({ loopChecks: [check("simulated_20mA", 16.02)] })).toEqual(["current-limited"]);
  expect(ids({ loopChecks: [check("simulated_20mA", 20)] })).toEqual(["obstruction-in-beam"]);
  const supply = [check("supply_voltage", 18), check("burden", 500)];
  expect(ids({ loopChecks: supply, instrument: { supplyMin: 10 } })).toEqual(["current-limited"]);
  expect(ids({ loopChecks: supply, instrument: { supplyMin: 5 } })).toEqual(["obstruction-in-beam"]);
});

test("without such a check the finding names the other as its rival and the simulation as what would tell", () => {
  const [own] = findingsOf(limitCauses, planted(top));
  expect(own).toMatchObject({ id: "obstruction-in-beam" });
  expect(own?.rivals.map(({ id }) => id)).toContain("current-limited");
  const [twoWires] = findingsOf(limitCauses, planted(top, { instrument: { loopPowered: true } }));
  expect(twoWires).toMatchObject({ id: "current-limited" });
  expect(twoWires?.separatedBy).toContain("simulate 20 mA");
});

test("near plateaus are blind zones, and on a reverse-acting loop a current limit may look like one", () => {
  const near = { seen: (part: number) => Math.max(part, 0.25) };
  expect(idsOf(limitCauses, planted(near))).toEqual(["blind-zone"]);
  expect(findingsOf(limitCauses, planted(top, { kind: signalKinds["20–4"] }))[0]?.rivals.map(({ id }) => id)).toContain(
    "current-limited",
  );
});

test("twice the distance at the nearest points is the blind zone, too", () => {
  const [finding] = findingsOf(limitCauses, planted({ seen: (part) => (part < 0.15 ? 2 * (part + 0.2) - 0.2 : part) }));
  expect(finding).toMatchObject({ id: "blind-zone" });
  expect(finding?.says).toContain("twice the distance");
});

test("a signal that stops at 20.4 mA while the target goes on beyond the range is at its limit", () => {
  const points = [0, 0.2, 0.4, 0.6, 0.8, 1, 1.05, 1.1];
  const beyond = planted({ signal: (signal) => Math.min(signal, 20.4) }, { points });
  expect(idsOf(limitCauses, beyond)).toEqual(["target-beyond-range"]);
});

test("nothing stands still on a healthy loop or on one that is dead", () => {
  expect(idsOf(limitCauses, planted(nothingWrong))).toEqual([]);
  expect(idsOf(limitCauses, planted({ signal: () => 12 }))).toEqual([]);
});
