import { expect, test } from "vitest";
import { isGasOfItsOwn, media, mediumOf } from "../../src/model/medium.ts";

test("the medium of the day goes before the one in service, and air is taken where neither is stated", () => {
  expect(mediumOf({}, {})).toBe("air");
  expect(mediumOf({}, { medium: "foam" })).toBe("foam");
  expect(mediumOf({ medium: "air" }, { medium: "vapour" })).toBe("air");
});

test("the formulas for air give the speed of sound in air alone, be it foamed or dusty", () => {
  expect(media.filter(isGasOfItsOwn)).toEqual(["other gas", "vapour"]);
});
