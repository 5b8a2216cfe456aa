import { expect, it } from "vitest";
import { howMany } from "../../how-many.ts";
import { falseAlarms } from "./false-alarms.ts";
import { mostByChance } from "./shares.ts";

const records = howMany(30, 100);

/** At 11 %, more than any test speaks at by docs/uncertainty-simulated.md, other seeds break a limit with less than 10⁻⁶. */
it("no test speaks much more often than it is meant to where nothing is", () => {
  const alarms = falseAlarms(records, 12_000_000, howMany(1, 10));
  expect(alarms.length).toBeGreaterThan(5);
  for (const { test, alarms: found, nominal } of alarms) {
    expect(found.count, test).toBeLessThanOrEqual(mostByChance(records, nominal < 0.01 ? 1e-4 : 0.11));
  }
});
