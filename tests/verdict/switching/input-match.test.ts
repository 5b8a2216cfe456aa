import { expect, test } from "vitest";
import { inputMatch } from "../../../src/verdict/switching/input-match.ts";

test("PNP fits a sinking input and NPN a sourcing one; the other two pairs do not", () => {
  expect(inputMatch({ polarity: "PNP", controllerInput: "sinking" })).toEqual({ needs: "sinking", statement: "pass" });
  expect(inputMatch({ polarity: "NPN", controllerInput: "sourcing" })).toEqual({
    needs: "sourcing",
    statement: "pass",
  });
  expect(inputMatch({ polarity: "PNP", controllerInput: "sourcing" })).toEqual({ needs: "sinking", statement: "fail" });
  expect(inputMatch({ polarity: "NPN", controllerInput: "sinking" })).toEqual({ needs: "sourcing", statement: "fail" });
});

test("what is not stated cannot be judged", () => {
  expect(inputMatch({ controllerInput: "sinking" })).toEqual({
    notDetermined: "the polarity of the output is not stated",
  });
  expect(inputMatch({ polarity: "PNP" })).toEqual({
    notDetermined: "the kind of the controller's input is not stated",
  });
});
