import { expect, test } from "vitest";
import { amendmentWords, revisionWords } from "../../../src/report/texts/revision-words.ts";

test("a first issue says nothing, a later one its revision and its amendment", () => {
  expect([revisionWords({ revision: 1 }), amendmentWords({ revision: 1 })]).toEqual(["", ""]);
  expect([revisionWords({ revision: 3 }), amendmentWords({ revision: 3 })]).toEqual([", revision 3", ", amendment 2"]);
});
