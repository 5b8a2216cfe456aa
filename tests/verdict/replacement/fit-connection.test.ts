import { expect, test } from "vitest";
import type { Candidate } from "../../../src/model/instrument.ts";
import { fitConnection, pinsOfLoop } from "../../../src/verdict/replacement/fit-connection.ts";
import { candidateWith, loopNeeds, type NeedsChanges, told } from "./sample-loop-needs.ts";

const cells = (more: Partial<Candidate>, changes: NeedsChanges = {}) =>
  fitConnection(candidateWith(more), loopNeeds(changes));

test("the same words and the same pins fit, whatever their capitals and spaces", () => {
  expect(cells({}).map(told)).toEqual(["fits: the present cable plugs in", "fits: the same on each pin"]);
});

test("another connector, and roles on other pins, ask for a change and never rule a candidate out", () => {
  expect(told(cells({ connector: "M8, 4 pins" })[0])).toBe("fits with a change: another cable, plug or adapter");
  expect(told(cells({ pins: "1 L+; 2 Q1; 3 0 V; 4 signal" })[1])).toBe(
    "fits with a change: to be wired anew: signal from pin 2 to pin 4, q1 from pin 4 to pin 2",
  );
});

test("a role that stands on none of its pins cannot be told", () => {
  expect(told(cells({ pins: "1 L+; 2 signal; 3 0 V" })[1])).toBe("cannot be told: on none of its pins: q1");
  expect(cells({ pins: "see its sheet" })[1]?.result).toBe("cannot be told");
  expect(cells({ pins: undefined, connector: undefined }).map(({ result }) => result)).toEqual([
    "cannot be told",
    "cannot be told",
  ]);
});

test("what the loop does not state is not compared", () => {
  const silent = { instrument: { connector: undefined, pins: undefined } };
  expect(cells({}, { ...silent, outputs: [{ pin: undefined }] })).toEqual([]);
  expect(cells({}, silent).map(({ demand, needs }) => [demand, needs])).toEqual([["pins", "4 Q1"]]);
});

test("the pin of an output joins those of the instrument, unless it stands there already", () => {
  const [q1] = loopNeeds().outputs;
  const outputs = q1 === undefined ? [] : [q1];
  expect(pinsOfLoop({ pins: "1 L+; 2 signal" }, outputs)).toBe("1 L+; 2 signal; 4 Q1");
  expect(pinsOfLoop({ pins: "1 L+; 4 black core" }, outputs)).toBe("1 L+; 4 black core");
  expect(pinsOfLoop({ pins: "as the drawing says" }, outputs)).toBe("as the drawing says");
  expect(pinsOfLoop({}, [])).toBe("");
});
