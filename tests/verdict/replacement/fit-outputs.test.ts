import { expect, test } from "vitest";
import type { Candidate, Output } from "../../../src/model/instrument.ts";
import { fitOutputs } from "../../../src/verdict/replacement/fit-outputs.ts";
import { candidateWith, loopNeeds, told } from "./sample-loop-needs.ts";

const cells = (more: Partial<Candidate>, ...outputs: readonly Partial<Output>[]) =>
  fitOutputs(candidateWith(more), loopNeeds({ outputs: outputs.length === 0 ? [{}] : outputs }));

test("an NPN output cannot drive a sinking input, a PNP output does", () => {
  expect(cells({ function: "NO" })[0]).toEqual({
    demand: "switched output Q1",
    result: "fits",
    needs: "PNP, NO, into a sinking input",
    offers: "PNP, NO",
    reason: "PNP drives a sinking input; NO as now",
  });
  expect(cells({ polarity: "NPN", function: "NO" })[0]).toMatchObject({
    result: "does not fit",
    reason: "NPN cannot drive a sinking input; NO as now",
  });
});

test("the kind of the input weighs more than the present polarity, which may be the fault", () => {
  expect(cells({ polarity: "NPN" }, { polarity: "PNP", controllerInput: "sourcing" })[0]?.result).toBe("fits");
});

test("where the kind of the input is not stated, the present polarity stands for it", () => {
  const present = { controllerInput: undefined };
  expect(told(cells({}, present)[0])).toMatch(/^fits: the polarity that is there now/u);
  expect(told(cells({ polarity: "NPN" }, present)[0])).toMatch(/^does not fit: NPN where PNP is there now/u);
  expect(told(cells({}, { ...present, polarity: undefined })[0])).toMatch(/^cannot be told: the loop states neither/u);
});

test("an output that can be set either way is to be set to what the loop needs", () => {
  expect(told(cells({ polarity: "either" })[0])).toBe("fits: to be set to PNP; to be set to NO");
  expect(told(cells({ polarity: "either" }, { controllerInput: "sourcing", function: "NC" })[0])).toBe(
    "fits: to be set to NPN; to be set to NC",
  );
});

test("NC in the place of NO fits with a change, and says what a broken wire then does", () => {
  expect(told(cells({ function: "NC" })[0])).toMatch(/^fits with a change: .*NC for NO: .*broken wire/u);
  expect(cells({ function: "NC" }, { function: undefined })[0]?.reason).toBe("PNP drives a sinking input");
});

test("a second output needs a second one", () => {
  const two = [{}, { output: "Q2" }];
  expect(cells({}, ...two).map(({ result }) => result)).toEqual(["fits", "cannot be told"]);
  expect(cells({ switchedOutputs: 2 }, ...two).map(({ result }) => result)).toEqual(["fits", "fits"]);
  expect(told(cells({ switchedOutputs: 1 }, ...two)[1])).toBe(
    "does not fit: it has 1, and this is number 2 of the loop",
  );
});

test("no switched output at all is no fit where the loop has one, and nothing is asked where it has none", () => {
  expect(cells({ polarity: "none" })[0]).toMatchObject({ result: "does not fit", offers: "none" });
  expect(fitOutputs(candidateWith({ polarity: "none" }), loopNeeds({ outputs: [] }))).toEqual([]);
});

test("what is not stated cannot be told", () => {
  expect(told(cells({ polarity: undefined, function: undefined })[0])).toBe(
    "cannot be told: its polarity is not stated; its function is not stated",
  );
  expect(cells({ polarity: undefined, function: undefined })[0]?.offers).toBe("not stated");
});
