import { expect, test } from "vitest";
import type { Candidate, Instrument, Output } from "../../../src/model/instrument.ts";
import { fitSurroundings } from "../../../src/verdict/replacement/fit-surroundings.ts";

const fits = (candidate: Partial<Candidate>, instrument: Partial<Instrument>, outputs: readonly Output[] = []) =>
  fitSurroundings({ candidate: "A", ...candidate }, { instrument: instrument as Instrument, outputs }).map(
    ({ demand, result }) => `${demand}: ${result}`,
  );

test("nothing is asked that the loop's row does not state", () => {
  expect(fits({ ingress: "IP67", responseTime: 1, ambientMin: -20 }, {})).toEqual([]);
});

test("surroundings of the loop lie within those that a candidate is made for", () => {
  const cold = { airMin: -20, airMax: 50 };
  expect(fits({ ambientMin: -25, ambientMax: 50 }, cold)).toEqual(["surroundings: fits"]);
  expect(fits({ ambientMin: -15, ambientMax: 60 }, cold)).toEqual(["surroundings: does not fit"]);
  expect(fits({ ambientMin: -25 }, cold)).toEqual(["surroundings: cannot be told"]);
  expect(fits({ ambientMax: 40 }, cold)).toEqual(["surroundings: does not fit"]);
});

// IEC 60529: the first digit is for solids, 0 to 6, the second for water, 0 to 9.
test.each([
  ["IP67", "IP65", "fits"],
  ["IP 67", "IP67", "fits"],
  ["IP54", "IP65", "does not fit"],
  ["IP60", "IP54", "does not fit"],
  ["IP69K", "IP67", "fits"],
  ["", "IP65", "cannot be told"],
  ["NEMA 4", "IP65", "cannot be told"],
])("%s where %s is asked for: %s", (ingress, asked, result) => {
  const stated = ingress === "" ? {} : { ingress };
  expect(fits(stated, { ingress: asked })).toEqual([`ingress protection: ${result}`]);
});

test("response and output current are compared with what the loop has", () => {
  const output: Output = { tag: "LT-1", output: "Q1", setPoint: 1, currentMax: 100 };
  expect(fits({ responseTime: 2 }, { responseMax: 2 })).toEqual(["response: fits"]);
  expect(fits({ responseTime: 2.1 }, { responseMax: 2 })).toEqual(["response: does not fit"]);
  expect(fits({}, { responseMax: 2 })).toEqual(["response: cannot be told"]);
  expect(fits({ outputCurrent: 100 }, {}, [output])).toEqual(["current of a switched output: fits"]);
  expect(fits({ outputCurrent: 50 }, {}, [output])).toEqual(["current of a switched output: does not fit"]);
});
