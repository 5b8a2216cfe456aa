import { expect, test } from "vitest";
import type { CalibrationRecord } from "../../../src/record/record-schema.ts";
import { findingWithId, noteWithIds, stepWithReasons } from "../../../src/record/versions/causes-of-form-1.ts";
import { from1 } from "../../../src/record/versions/from-1.ts";
import { causes, rivalsOnly } from "../../../src/verdict/causes/causes.ts";
import { thawed } from "../../frozen/thawed.ts";

const known = new Set([...causes, ...rivalsOnly].map(({ id }) => id));
const rows = Array.from({ length: 34 }, (_, index) => index + 1);

test("each of the 34 rows has an id of its own, and each is the id of a cause today", () => {
  const ids = rows.map((row) => findingWithId({ row, title: "" }).id as string);
  expect(new Set(ids).size).toBe(34);
  expect(ids.filter((id) => !known.has(id))).toEqual([]);
});

test("words of a row that was two causes are told apart, and every title stays as it was written", () => {
  const ends = findingWithId({ row: 21, title: "both ends of the range taught wrong", rivals: [], says: "So." });
  expect(ends).toEqual({
    id: "both-ends-taught-wrong",
    title: "both ends of the range taught wrong",
    rivals: [],
    says: "So.",
  });
  expect(findingWithId({ row: 21, title: "ends of the range taught wrong" }).id).toBe("ends-taught-wrong");
  const loop = findingWithId({ row: 22, title: "hysteresis, or an output not settled when it was read" });
  expect(loop.id).toBe("hysteresis-of-sensor");
});

test("rivals and candidates have their id beside their words, with a row or without", () => {
  const { rivals } = findingWithId({
    row: 26,
    rivals: [
      "a reference position or a mark that is off",
      "live-zero signal (4–20 mA, 1–5 V) scaled as one from zero (1)",
    ],
  });
  expect(rivals).toEqual([
    { id: "reference-position-off", title: "a reference position or a mark that is off" },
    { id: "live-zero-scaled-from-zero", title: "live-zero signal (4–20 mA, 1–5 V) scaled as one from zero" },
  ]);
  expect(noteWithIds({ candidates: ["typing error (33)", "moonlight"] })).toEqual({
    candidates: [
      { id: "typing-error", title: "typing error" },
      { id: "not-in-the-list", title: "moonlight" },
    ],
  });
});

test("the reasons of each step become objects, and nothing else of a recommendation is touched", () => {
  expect(stepWithReasons({ reasons: ["It passes."] })).toEqual({ reasons: [{ says: "It passes." }] });
  const recommendation = {
    asFound: { reasons: ["One."], also: [{ reasons: ["Two."] }] },
    workDone: { asked: ["leave"] },
    history: ["No filed history was given."],
  };
  expect(from1({ schema: "spanwright-record/1", recommendation })).toMatchObject({
    recommendation: {
      asFound: { reasons: [{ says: "One." }], also: [{ reasons: [{ says: "Two." }] }] },
      workDone: { asked: ["leave"] },
      history: ["No filed history was given."],
    },
  });
});

test.each(["0.1.0", "0.2.0"])("every cause in the frozen records of %s is one that is known today", (version) => {
  const texts = [...thawed(version)].filter(([path]) => path.endsWith(".json")).map(([, bytes]) => bytes.toString());
  const phases = texts.flatMap((text) => {
    const { causes: found } = from1(JSON.parse(text)) as Pick<CalibrationRecord, "causes">;
    return [found?.asFound, found?.asLeft].filter((phase) => phase !== undefined);
  });
  const named = phases.flatMap(({ findings, notes }) => [
    ...findings.flatMap((finding) => [finding, ...finding.rivals]),
    ...notes.flatMap(({ candidates }) => candidates),
  ]);
  expect(named.length).toBeGreaterThan(30);
  expect(named.filter(({ id }) => !known.has(id))).toEqual([]);
});
