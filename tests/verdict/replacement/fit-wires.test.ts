import { expect, test } from "vitest";
import { fitWires } from "../../../src/verdict/replacement/fit-wires.ts";
import { candidateWith, loopNeeds, told } from "./sample-loop-needs.ts";

const cells = (loopPowered: boolean | undefined, present: boolean | undefined) =>
  fitWires(candidateWith({ loopPowered }), loopNeeds({ instrument: { loopPowered: present } }));

test("the same way of feeding fits, the other asks for a change of the wiring", () => {
  expect(told(cells(true, true)[0])).toBe("fits: fed as now");
  expect(told(cells(false, false)[0])).toBe("fits: fed as now");
  expect(told(cells(false, true)[0])).toMatch(/^fits with a change: it needs a supply of its own/u);
  expect(told(cells(true, false)[0])).toMatch(/^fits with a change: it lives on the loop/u);
});

test("a candidate that does not state it cannot be told, and a loop that does not is not compared", () => {
  expect(cells(undefined, true)[0]).toMatchObject({ result: "cannot be told", offers: "not stated" });
  expect(cells(true, undefined)).toEqual([]);
});
