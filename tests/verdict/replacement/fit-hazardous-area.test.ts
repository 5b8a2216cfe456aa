import { expect, test } from "vitest";
import { fitHazardousArea } from "../../../src/verdict/replacement/fit-hazardous-area.ts";
import { candidateWith, loopNeeds } from "./sample-loop-needs.ts";

const result = (approved: boolean | undefined, isHazardous: boolean | undefined) =>
  fitHazardousArea(
    candidateWith({ hazardousArea: approved }),
    loopNeeds({ instrument: { hazardousArea: isHazardous } }),
  ).map((cell) => cell.result);

test("in a hazardous area an approval is asked for, and silence is none", () => {
  expect(result(true, true)).toEqual(["fits"]);
  expect(result(false, true)).toEqual(["does not fit"]);
  expect(result(undefined, true)).toEqual(["cannot be told"]);
});

test("elsewhere it is not asked", () => {
  expect(result(undefined, false)).toEqual([]);
  expect(result(false, undefined)).toEqual([]);
});
