import { expect, test } from "vitest";
import { signatureMeanings } from "../../src/model/signature-meanings.ts";

test("signatures mean what is done, in the order of the work", () => {
  expect(signatureMeanings).toEqual(["performed", "reviewed", "authorised"]);
});
