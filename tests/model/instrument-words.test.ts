import { expect, test } from "vitest";
import { distanceUnits, signalUnits } from "../../src/model/instrument-words.ts";
import { unitTable } from "../../src/units/unit-table.ts";

test("the units of distance and signal are units that the program converts", () => {
  expect(Object.keys(unitTable)).toEqual(expect.arrayContaining([...distanceUnits, ...signalUnits]));
});
