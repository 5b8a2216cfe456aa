import { expect, test } from "vitest";
import { causes } from "../../../src/verdict/causes/causes.ts";
import {
  bothConstantsWrong,
  constantsExchanged,
  fullScaleWrong,
  highConstantWrong,
  lowConstantWrong,
  offsetInController,
  unitsMixedUp,
} from "../../../src/verdict/causes/scaling-causes.ts";
import { offsetOfCard, shuntOrGainOff } from "../../../src/verdict/causes/wiring-causes.ts";
import { signalKinds } from "../../computed/faults/faulty-loop.ts";
import { findingsOf, idsOf, nothingWrong, planted } from "./planted.ts";

const scalingCauses = [
  bothConstantsWrong,
  constantsExchanged,
  fullScaleWrong,
  highConstantWrong,
  lowConstantWrong,
  unitsMixedUp,
  offsetOfCard,
  shuntOrGainOff,
  offsetInController,
];

test.each([
  ["low-constant-wrong", "low constant off by 10 %", (part: number) => part + 0.1 * (1 - part)],
  ["high-constant-wrong", "high constant off by 10 %", (part: number) => 1.1 * part],
  ["full-scale-count-wrong", "27648 read as 32767", (part: number) => (27648 / 32767) * part],
  ["full-scale-count-wrong", "4095 read as 4000", (part: number) => (4095 / 4000) * part],
  ["constants-exchanged", "constants exchanged", (part: number) => 1 - part],
  ["offset-of-card", "offset of 2 %", (part: number) => part + 0.02],
  ["shunt-or-gain-off", "251 Ω in place of 250 Ω, twice over", (part: number) => 1.008 * (part + 0.25) - 0.25],
] as const)("%s: %s", (id, _, value) => {
  expect(idsOf(scalingCauses, planted({ value }))).toEqual([id]);
});

test.each([25.4, 10, 0.001])(
  "units mixed up: a value that is %f times what it is to be, about its own zero",
  (factor) => {
    const evidence = planted({ shown: (value) => factor * value }, { valueEnds: [200, 1200] });
    expect(idsOf(scalingCauses, evidence)).toEqual(["units-mixed-up"]);
  },
);

test("a gain of 10 about the low end of the range is a constant, not a unit", () => {
  const evidence = planted({ value: (part) => 10 * part }, { valueEnds: [200, 1200] });
  expect(idsOf(scalingCauses, evidence)).toEqual(["high-constant-wrong"]);
});

test("with counts between, the stage that is wrong is named: card for the counts, scaling for the value", () => {
  const gain = (part: number) => (27648 / 32767) * part;
  expect(findingsOf(scalingCauses, planted({ counts: gain }, { hasCounts: true }))).toMatchObject([
    { id: "full-scale-count-wrong", stage: "input card" },
  ]);
  expect(findingsOf(scalingCauses, planted({ value: gain }, { hasCounts: true }))).toMatchObject([
    { id: "full-scale-count-wrong", stage: "scaling" },
  ]);
});

test.each([
  ["the high end off", (part: number) => 0.982 * part],
  ["the low end off", (part: number) => part + 0.02 * (1 - part)],
  ["both ends off", (part: number) => 0.05 + 0.9 * part],
  ["turned round", (part: number) => 1 - part],
])("between signal and counts no constant is wrong, %s: it is the card, or what the table says of it", (_, counts) => {
  const [finding, ...others] = findingsOf([...causes], planted({ counts }, { hasCounts: true }, ["value"]));
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ id: "range-of-card-wrong", stage: "input card" });
  const rivals = finding?.rivals.map(({ id }) => id);
  expect(rivals).toContain("counts-row-wrong");
  expect(rivals).not.toContain("both-constants-wrong");
});

test.each([
  ["offset-of-card", "both-constants-wrong", (part: number) => part + 0.02],
  ["shunt-or-gain-off", "both-constants-wrong", (part: number) => 1.008 * (part + 0.25) - 0.25],
  ["high-constant-wrong", "range-of-card-wrong", (part: number) => 1.1 * part],
  ["low-constant-wrong", "range-of-card-wrong", (part: number) => part + 0.1 * (1 - part)],
  ["full-scale-count-wrong", "range-of-card-wrong", (part: number) => (27648 / 32767) * part],
  ["both-constants-wrong", "range-of-card-wrong", (part: number) => 0.05 + 1.1 * part],
] as const)("without counts %s leaves %s open, and the counts would tell", (id, rival, value) => {
  const [finding] = findingsOf(scalingCauses, planted({ value }));
  expect(finding?.id).toBe(id);
  expect(finding?.rivals.map((one) => one.id)).toContain(rival);
  if (id !== "shunt-or-gain-off") expect(finding?.separatedBy).toContain("raw counts");
  const [counted] = findingsOf(scalingCauses, planted({ value }, { hasCounts: true }));
  expect(counted?.rivals.map((one) => one.id)).not.toContain("range-of-card-wrong");
});

test("an offset behind the counts is the controller's; no constant that it excludes stands beside it", () => {
  const [finding] = findingsOf(scalingCauses, planted({ value: (part) => part + 0.02 }, { hasCounts: true }));
  expect(finding).toMatchObject({
    id: "offset-in-controller",
    stage: "scaling",
    rivals: [{ id: "both-constants-wrong" }],
  });
  const [both] = findingsOf(scalingCauses, planted({ value: (part) => 0.05 + 1.1 * part }, { hasCounts: true }));
  expect(both).toMatchObject({ id: "both-constants-wrong", rivals: [] });
});

test("a gain about 0 V of a 0 to 10 V signal is that of a constant, too: the one names the other as its rival", () => {
  const [finding] = findingsOf(scalingCauses, planted({ value: (part) => 1.02 * part }, { kind: signalKinds["0–10"] }));
  expect(finding?.id).toBe("high-constant-wrong");
  expect(finding?.rivals.map(({ id }) => id)).toContain("range-of-card-wrong");
});

test("both ends wrong is said so", () => {
  const [finding] = findingsOf(scalingCauses, planted({ value: (part) => 0.05 + 1.1 * part }));
  expect(finding?.title).toBe("both scaling constants wrong");
});

test("nothing is found on a healthy loop, nor where the sensor alone is wrong", () => {
  expect(idsOf(scalingCauses, planted(nothingWrong))).toEqual([]);
  expect(idsOf(scalingCauses, planted({ seen: (part) => part + 0.05 }))).toEqual([]);
});
