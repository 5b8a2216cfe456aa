import { expect, test } from "vitest";
import { blindZone } from "../../../src/verdict/causes/limit-causes.ts";
import { onePointOff } from "../../../src/verdict/causes/lone-point-causes.ts";
import { remedyOf } from "../../../src/verdict/recommendation/cause-remedy.ts";
import { findingsOf, planted } from "./planted.ts";

/** Shifted at one of eleven points, 0 to 10, in every reading. */
const shiftedAt =
  (lone: number, by: number) =>
  (value: number, { part }: { part: number }) =>
    Math.round(10 * part) === lone ? value + by : value;

test("a mark that is off puts one point off in every reading: it is read again, and nothing is taught for it", () => {
  const [finding, ...others] = findingsOf([onePointOff], planted({ seen: shiftedAt(4, 0.012) }));
  expect(others).toEqual([]);
  expect(finding).toMatchObject({
    stage: "sensor",
    rivals: [{ id: "reference-position-off" }, { id: "obstruction-in-beam" }],
  });
  expect(finding!.says).toMatch(/^The readings of one test point, 600 mm, are off by \+1\.\d+ % of span/u);
  expect(remedyOf(finding!).cures).toBe("readings");
});

test("at the nearest point the blind zone is not excluded, and is the cause where it is stated to reach so far", () => {
  const near = { seen: shiftedAt(0, 0.02) };
  const [open] = findingsOf([onePointOff, blindZone], planted(near));
  expect(open).toMatchObject({ id: "one-point-off", rivals: [{ id: "reference-position-off" }, { id: "blind-zone" }] });
  const stated = findingsOf([onePointOff, blindZone], planted(near, { instrument: { blindZone: 250 } }));
  expect(stated.map(({ id, rivals }) => [id, rivals.length])).toEqual([["blind-zone", 1]]);
  const nearer = findingsOf([onePointOff, blindZone], planted(near, { instrument: { blindZone: 150 } }));
  expect(nearer.map(({ id }) => id)).toEqual(["one-point-off"]);
});

test("one value of the controller that is off is looked for there, and at the card where counts were read", () => {
  const [scaling] = findingsOf([onePointOff], planted({ value: shiftedAt(10, -0.05) }));
  expect(scaling).toMatchObject({ stage: "scaling", rivals: [{ id: "value-clamped-or-cut" }] });
  expect(remedyOf(scaling!)).toMatchObject({ cures: "scaling", isOfConstants: false });
  const [card] = findingsOf([onePointOff], planted({ counts: (part) => Math.min(part, 0.97) }, { hasCounts: true }));
  expect(card).toMatchObject({ stage: "input card" });
  expect(remedyOf(card!).cures).toBe("wiring");
});

test("a healthy loop, a shift, a bow and a wild reading have no such point", () => {
  for (const fault of [
    {},
    { seen: (part: number) => part + 0.02 },
    { seen: (part: number) => part + 0.08 * part * (1 - part) },
    {
      sheet: (readings: Parameters<NonNullable<Parameters<typeof planted>[0]["sheet"]>>[0]) =>
        readings.with(4, { ...readings[4]!, signal: 13.77 }),
    },
  ])
    expect(findingsOf([onePointOff], planted(fault))).toEqual([]);
});
