import { expect, test } from "vitest";
import { stageNotes } from "../../../src/verdict/causes/stage-notes.ts";
import { nothingWrong, planted } from "./planted.ts";

const titles = (evidence: ReturnType<typeof planted>) => stageNotes(evidence).map(({ title }) => title);

test("a value alone cannot tell sensor from scaling: the note names both candidates and the signal to read", () => {
  const [note] = stageNotes(planted({ seen: (part) => 1.05 * part }, {}, ["signal"]));
  expect(note?.title).toBe("stage not separable: signal was not read");
  expect(note?.candidates.map(({ id }) => id)).toEqual([
    "ends-taught-wrong",
    "range-of-card-wrong",
    "high-constant-wrong",
  ]);
  expect(note?.separatedBy).toContain("read the signal in mA at the same points");
});

test("counts alone leave the card open, and no constant of the scaling, which comes after them", () => {
  const candidates = (seen: (part: number) => number) =>
    stageNotes(planted({ seen }, { hasCounts: true }, ["signal", "value"]))[0]?.candidates.map(({ id }) => id);
  expect(candidates((part) => 1.05 * part)).toEqual(["ends-taught-wrong", "range-of-card-wrong"]);
  expect(candidates((part) => part + 0.03)).toEqual(["datum-shifted", "offset-of-card"]);
  expect(candidates((part) => 0.1 + 0.7 * part)).toEqual(["both-ends-taught-wrong", "range-of-card-wrong"]);
});

test("a healthy loop without a signal says that two errors could hide each other", () => {
  const [note] = stageNotes(planted(nothingWrong, {}, ["signal"]));
  expect(note?.says).toContain("could hide each other");
  expect(note?.candidates).toEqual([]);
});

test("readings that do not show what the stated air alone would make say so, where the sensor is stated not to correct", () => {
  const air = "the air as it is stated contradicts the readings";
  const at = (airTemperature: number, temperatureCompensated?: boolean, seen = (part: number) => part) =>
    titles(
      planted(
        { seen },
        {
          instrument: { principle: "ultrasonic", taughtAt: 20, temperatureCompensated },
          calibration: { airTemperature },
        },
      ),
    );
  expect(at(-5, false)).toEqual([air]);
  expect(at(20, false)).toEqual([]);
  expect(at(-5)).toEqual([]);
  expect(at(-5, true)).toEqual([]);
  // √(293.15/268.15) = 1.0456: what the air does is there.
  expect(at(-5, false, (part) => ((200 + 1000 * part) * 1.0456 - 200) / 1000)).toEqual([]);
});

test("one cycle, and readings at an end of the signal, are told", () => {
  expect(titles(planted(nothingWrong, { cycles: 1 }))).toEqual(["one cycle only"]);
  const railed = planted({ signal: (signal) => Math.min(signal + 0.8, 20.5) });
  expect(titles(railed)).toEqual(["readings at an end of the signal"]);
});

test("a whole sheet of a healthy loop has no note", () => {
  expect(titles(planted(nothingWrong))).toEqual([]);
});

test("a reading that the line leaves out is told where it matters, and not where noise or its whole test point explains it", () => {
  const off = (by: number, isEvery = false) =>
    titles(
      planted({
        noise: (noise) => noise / 4,
        seen: (part, { part: place, cycle, direction }) =>
          Math.round(10 * place) === 4 && (isEvery || (cycle === 2 && direction === "rising")) ? part + by : part,
      }),
    );
  // The tolerance is 0.5 % of span.
  expect(off(0.0015)).not.toContain("readings that stand apart");
  expect(off(0.012, true)).not.toContain("readings that stand apart");
});
