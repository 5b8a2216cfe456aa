import { expect, test } from "vitest";
import {
  isInStatedBlindZone,
  statedBlindZoneSightings,
} from "../../../../src/verdict/causes/evidence/stated-blind-zone.ts";
import { planted } from "../planted.ts";

const near = { seen: (part: number, { part: place }: { part: number }) => (place < 0.05 ? part + 0.08 : part) };

test("the nearest point is inside a stated zone that reaches beyond it, and no other point is", () => {
  const evidence = planted({}, { instrument: { blindZone: 250 } });
  expect(isInStatedBlindZone(evidence, { point: 0, end: "lower" })).toBe(true);
  expect(isInStatedBlindZone(evidence, { point: 10, end: "lower" })).toBe(false);
  expect(isInStatedBlindZone(evidence, { point: 0, end: "none" })).toBe(false);
  expect(isInStatedBlindZone(planted({}), { point: 0, end: "lower" })).toBe(false);
});

test("the sentence names both distances, and a healthy loop in such a zone has none", () => {
  const [seen] = statedBlindZoneSightings(planted(near, { instrument: { blindZone: 250 } }));
  expect(seen!.says).toContain("200 mm, lies inside the stated blind zone of 250 mm");
  expect(statedBlindZoneSightings(planted({}, { instrument: { blindZone: 250 } }))).toEqual([]);
  expect(statedBlindZoneSightings(planted(near))).toEqual([]);
});
