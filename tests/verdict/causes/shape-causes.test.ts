import { expect, test } from "vitest";
import { findCauses } from "../../../src/verdict/causes/find-causes.ts";
import { curved, squareRootTaken } from "../../../src/verdict/causes/shape-causes.ts";
import { remedyOf } from "../../../src/verdict/recommendation/cause-remedy.ts";
import { findingsOf, idsOf, nothingWrong, planted } from "./planted.ts";

const shapeCauses = [curved, squareRootTaken];

test("curved characteristic: a bow and an S of 1 % leave their line in every cycle", () => {
  expect(idsOf(shapeCauses, planted({ seen: (part) => part + 0.04 * part * (1 - part) }))).toEqual([
    "curved-characteristic",
  ]);
  expect(
    findingsOf(shapeCauses, planted({ seen: (part) => part + 0.01 * Math.sin(2 * Math.PI * part) })),
  ).toMatchObject([{ id: "curved-characteristic", stage: "sensor" }]);
  expect(findingsOf(shapeCauses, planted({ value: (part) => part + 0.04 * part * (1 - part) }))).toMatchObject([
    { stage: "scaling" },
  ]);
});

test("a value that is cut to whole numbers steps along its line, and is not curved", () => {
  expect(idsOf(shapeCauses, planted({ shown: Math.trunc }, { valueEnds: [0.25, 7.25] }))).toEqual([]);
});

test("a bow shows by one run out and back already", () => {
  const bow = { seen: (part: number) => part + 0.04 * part * (1 - part) };
  expect(idsOf(shapeCauses, planted(bow, { cycles: 1 }))).toEqual(["curved-characteristic"]);
});

test("a straight line, and the ends of a lag are not curved", () => {
  expect(idsOf(shapeCauses, planted(nothingWrong))).toEqual([]);
  const lag = planted({
    seen: (part, { direction, isFirstOfRun }) => (isFirstOfRun ? part : part + (direction === "rising" ? -0.01 : 0.01)),
  });
  expect(idsOf(shapeCauses, lag)).toEqual([]);
});

test("a square root in the controller is named by itself, and neither a curve nor a wrong constant beside it", () => {
  const { findings } = findCauses(planted({ value: (part) => Math.sqrt(Math.max(0, part)) }));
  expect(findings.map(({ id, stage }) => [id, stage])).toEqual([["square-root-taken", "scaling"]]);
  expect(remedyOf(findings[0]!)).toMatchObject({ cures: "scaling", isOfConstants: false });
});

test("a curve of the controller is cured by no constants, and one of the card at the card", () => {
  const bow = (part: number) => part + 0.04 * part * (1 - part);
  expect(remedyOf(findingsOf(shapeCauses, planted({ value: bow }))[0]!)).toMatchObject({
    cures: "scaling",
    isOfConstants: false,
  });
  const [ofCard] = findingsOf(shapeCauses, planted({ counts: bow }, { hasCounts: true }));
  expect(ofCard).toMatchObject({ stage: "input card" });
  expect(remedyOf(ofCard!).cures).toBe("wiring");
});
