import { describe, expect, test } from "vitest";
import {
  missingBeside,
  missingPoints,
  type PhaseToComplete,
  usualEndsWithin,
  usualPointsNeeded,
} from "../../../src/verdict/completeness/missing-points.ts";

// Five points over the range, 0 to 100 % or 10 to 90 %, are common practice of the trade.
const asked = {
  rangeLower: 200,
  rangeUpper: 1200,
  unit: "mm",
  pointsNeeded: usualPointsNeeded,
  endsWithin: usualEndsWithin,
};
const write = (distance: number) => `${distance} mm`;

function phase(points: readonly number[], more: Partial<PhaseToComplete> & { error?: number } = {}): PhaseToComplete {
  const { error = 0, ...rest } = more;
  return {
    points: points.map((point) => ({
      point,
      errorDistance: error,
      expandedUncertainty: 1,
      tolerance: { low: -5, high: 5 },
    })),
    read: points,
    tried: points,
    railed: [],
    depth: 0,
    endName: "",
    ...rest,
  };
}

const about = (missing: readonly { about: string }[]) => missing.map((one) => one.about);

describe("the points of one phase", () => {
  test("five from end to end, or from 10 to 90 % of span, are enough", () => {
    expect(missingPoints(phase([200, 450, 700, 950, 1200]), asked, write)).toEqual([]);
    expect(missingPoints(phase([300, 500, 700, 900, 1100]), asked, write)).toEqual([]);
  });

  test("four are not, and the reason says how many were read of what", () => {
    const few = phase([200, 500, 900, 1200], { endName: "the controller's value" });
    expect(missingPoints(few, asked, write)).toEqual([
      { about: "points", says: "4 test points were read of the controller's value, 5 are asked for" },
    ]);
    expect(missingPoints(few, { ...asked, pointsNeeded: 3 }, write)).toEqual([]);
  });

  test("an end that nobody came near is told, each for itself", () => {
    const [lower] = missingPoints(phase([310, 500, 700, 900, 1200]), asked, write);
    expect(lower?.says).toBe(
      "the test point nearest the lower end of the range, 310 mm, is 11 % of span from it; at most 10 % is asked for",
    );
    expect(about(missingPoints(phase([310, 500, 700, 900, 1080]), asked, write))).toEqual(["ends", "ends"]);
    expect(missingPoints(phase([310, 500, 700, 900, 1200]), { ...asked, endsWithin: 11 }, write)).toEqual([]);
  });

  test("that stand together are one place, whatever their names, and the reason counts both", () => {
    const together = phase([200, 210, 220, 240, 1200]);
    expect(missingPoints(together, asked, write)).toEqual([
      {
        about: "points",
        says: "5 test points were read, at 3 places more than 2 % of span apart, 5 are asked for",
      },
    ]);
    const one = phase([200, 205, 210, 215, 220]);
    expect(missingPoints(one, { ...asked, pointsNeeded: 2, endsWithin: 100 }, write)[0]?.says).toContain("at 1 place");
    expect(missingPoints(phase([200, 210, 450, 700, 950, 1200]), asked, write)).toEqual([]);
  });

  test("that have names of their own and were read at two distances are two places", () => {
    const filledDown = phase([200, 450, 700, 950, 1200], { read: [1200, 200, 1200, 200, 1200] });
    expect(missingPoints(filledDown, asked, write)[0]?.says).toContain("5 test points were read, at 2 places");
    const beside = phase([200, 450, 700, 950, 1200], { read: [203, 198, 445, 452, 700, 955, 940, 1195, 1204] });
    expect(missingPoints(beside, asked, write)).toEqual([]);
  });

  test("an end at which the signal stood at its own end was reached: that is said, and no distance", () => {
    const railed = phase([400, 500, 700, 900, 1200], { railed: [200] });
    expect(missingPoints(railed, asked, write)).toEqual([
      {
        about: "ends",
        says: "the lower end of the range was reached, at 200 mm, and the signal stood at its own end there, at or beyond: no error was measured",
      },
    ]);
    const far = missingPoints(phase([400, 500, 700, 900, 1200], { railed: [310] }), asked, write);
    expect(far[0]?.says).toContain("400 mm, is 20 % of span from it");
  });

  test("one point lacks everything, none lacks points", () => {
    expect(about(missingPoints(phase([200]), asked, write))).toEqual(["points", "ends"]);
    expect(about(missingPoints(phase([]), asked, write))).toEqual(["points"]);
  });

  test("what a decimal number is stored as does not decide: 10 % of a range of 0.3", () => {
    const thirds = { ...asked, rangeLower: 0, rangeUpper: 0.3 };
    expect(missingPoints(phase([0.03, 0.1, 0.15, 0.2, 0.27]), thirds, write)).toEqual([]);
  });
});

describe("as left beside as found", () => {
  const points = [200, 450, 700, 950, 1200];
  const beside = (left: PhaseToComplete, found: PhaseToComplete, isAdjustmentNamed = true) =>
    missingBeside(left, found, { asked, isAdjustmentNamed, write });

  test("nothing is missing where every point was read again; 2 % of span is the same place", () => {
    expect(beside(phase(points), phase(points))).toEqual([]);
    expect(beside(phase([220, 450, 700, 950, 1180]), phase(points))).toEqual([]);
  });

  test("a point that was tried as found and not read as left is named, one of a fault signal too", () => {
    expect(beside(phase([200, 450, 950]), phase(points))).toEqual([
      {
        about: "as-found points",
        says: "2 test points that were read as found were not read as left: 700 mm, 1200 mm",
      },
    ]);
    expect(about(beside(phase(points.slice(1)), phase(points.slice(1), { tried: points })))).toEqual([
      "as-found points",
    ]);
  });

  test("a stage of the loop that was read as found and not as left is told", () => {
    const found = phase(points, { depth: 3, endName: "the controller's value" });
    expect(beside(phase(points), found)[0]?.says).toBe("the controller's value was read as found and not as left");
  });

  test("a change beyond both uncertainties asks for the name of what was adjusted", () => {
    // √(1² + 1²) = 1.414… mm is what both U explain.
    expect(beside(phase(points, { error: 1.41 }), phase(points), false)).toEqual([]);
    expect(about(beside(phase(points, { error: 1.42 }), phase(points), false))).toEqual(["adjustment"]);
    expect(beside(phase(points, { error: 1.42 }), phase(points), true)).toEqual([]);
  });
});

test("a test point of which every reading was rejected is missing, unless it was read again near by", () => {
  const enough = [200, 400, 800, 1000, 1200];
  const says = (rejected: readonly number[], points = enough) =>
    missingPoints(phase(points, { rejected }), asked, write).map((one) => one.says);
  expect(says([600])).toEqual(["every reading at the test point 600 mm was rejected, and it was not read again"]);
  expect(says([600, 900])).toEqual([
    "every reading at the test points 600 mm, 900 mm was rejected, and they were not read again",
  ]);
  expect(says([600], [200, 400, 605, 800, 1000, 1200])).toEqual([]);
  // Readings without a named point: 699.5, 700.6, 700 and 700.3 mm lie within 2 % of span, and their mean is 700.1 mm.
  const near = (open: number) => Number(open.toPrecision(4));
  expect(
    missingPoints(phase(enough, { rejected: [699.5, 700.6, 700, 700.3] }), asked, (at) => write(near(at))).map(
      (one) => one.says,
    ),
  ).toEqual(["every reading at the test point 700.1 mm was rejected, and it was not read again"]);
  expect(says([])).toEqual([]);
});
