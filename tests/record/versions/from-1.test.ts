import { expect, test } from "vitest";
import { from1 } from "../../../src/record/versions/from-1.ts";

test("form 1 becomes form 2, and what was read is not touched", () => {
  const written = Object.freeze({ schema: "spanwright-record/1", revision: 1 });
  expect(from1(written)).toEqual({ schema: "spanwright-record/2", revision: 1 });
});
