import { expect, test } from "vitest";
import type { Candidate } from "../../../src/model/instrument.ts";
import { fitSupply } from "../../../src/verdict/replacement/fit-supply.ts";
import { candidateWith, loopNeeds, type NeedsChanges, told } from "./sample-loop-needs.ts";

const cell = (more: Partial<Candidate>, instrument: NeedsChanges["instrument"] = {}) =>
  fitSupply(candidateWith(more), loopNeeds({ instrument }));
const unknown = { supplyVoltage: undefined };

test("18 to 30 V bears 24 V, 10 to 20 V does not", () => {
  expect(cell({ supplyMin: 18 })).toMatchObject({ result: "fits", needs: "24 V", offers: "18 to 30 V" });
  expect(told(cell({ supplyMax: 20 }))).toBe("does not fit: 24 V where 10 to 20 V is allowed");
  expect(cell({ supplyMin: 24, supplyMax: 24.5 }).result).toBe("fits");
});

test("one end that is not stated cannot be told, unless the other already rules it out", () => {
  expect(told(cell({ supplyMin: undefined }))).toBe("cannot be told: supply_min is not stated");
  expect(told(cell({ supplyMax: undefined }))).toBe("cannot be told: supply_max is not stated");
  expect(cell({ supplyMin: undefined, supplyMax: 20 }).result).toBe("does not fit");
  expect(cell({ supplyMin: undefined, supplyMax: undefined })).toMatchObject({
    result: "cannot be told",
    offers: "not stated",
  });
});

test("where the voltage is not stated, what the present sensor bears stands for it: 12 to 30 V", () => {
  expect(cell({}, unknown)).toMatchObject({ result: "fits", needs: "somewhere in 12 to 30 V" });
  expect(told(cell({ supplyMin: 18 }, unknown))).toBe("cannot be told: supply_voltage of the loop is not stated");
  expect(told(cell({ supplyMin: 5, supplyMax: 10 }, unknown))).toBe(
    "does not fit: it bears nothing of what the present sensor bears",
  );
  expect(cell({ supplyMin: 36, supplyMax: 60 }, unknown).result).toBe("does not fit");
  expect(cell({ supplyMax: undefined }, unknown).reason).toBe("supply_max is not stated");
  expect(cell({}, { ...unknown, supplyMin: undefined })).toMatchObject({
    result: "cannot be told",
    needs: "not known",
  });
});
