import { describe, expect, it } from "vitest";
import { answersOf } from "./answers-of.ts";
import { advices } from "./kinds/kind.ts";
import { kinds } from "./kinds/kinds.ts";
import { makeLoop } from "./make-loop.ts";
import { namesOf } from "./named-as.ts";

const seeds = (count: number) => Array.from({ length: count }, (_, seed) => seed);

describe("makeLoop", () => {
  it("makes the same loop of the same seed", () => {
    expect(makeLoop(123)).toEqual(makeLoop(123));
    expect(makeLoop(123)).not.toEqual(makeLoop(124));
  });

  it("comes to every kind of fault", () => {
    const made = seeds(10 * Math.ceil(kinds.length / 4) + 10).map(makeLoop);
    const found = new Set(
      made.flatMap(({ faults, family }) => (family === "one fault" ? faults : [])).map((one) => one.kind.id),
    );
    expect([...found].sort()).toEqual(kinds.map(({ id }) => id).sort());
  });

  it("keeps a healthy loop healthy, and a fault in the size that it was drawn", () => {
    const made = seeds(400).map(makeLoop);
    const healthy = made.filter(({ family }) => family === "healthy");
    // By its own drawing: datum, far end and bow of a tenth, a tenth and a twentieth of a tolerance.
    expect(Math.max(...healthy.map(({ asFound }) => asFound.truth.worst))).toBeLessThan(0.35);
    const shifted = made.filter(({ faults: [only, second] }) => only?.kind.id === "zero shift" && !second);
    for (const { asFound, faults } of shifted) {
      // Where an end rails the shift is not wholly seen there, but everywhere else.
      expect(Math.abs(asFound.truth.worst - (faults[0]?.size ?? 0))).toBeLessThan(0.35);
    }
  });

  it("writes tables in which the program finds no unknown column, and reads every healthy loop", async () => {
    const made = seeds(60)
      .map(makeLoop)
      .filter(({ family }) => family === "healthy");
    const sheets = made.map(({ seed, asFound, asLeft }) => ({ name: `L${seed}`, asFound, asLeft }));
    for (const [, { record, codes }] of await answersOf(sheets)) {
      expect(record).not.toBeNull();
      expect(codes.filter((code) => code !== "model/few-points")).toEqual([]);
    }
  });

  it("knows an advice for every kind, and what the record calls it", () => {
    for (const { id, advice, alike = [] } of kinds) {
      expect(advice.every((one) => advices.includes(one)) && advice.length > 0).toBe(true);
      expect([id, ...alike].filter((name) => namesOf(name).length === 0)).toEqual([]);
    }
  });
});
