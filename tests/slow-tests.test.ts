import { expect, test } from "vitest";
import { isThere } from "./architecture/source-files.ts";
import { slowTests } from "./slow-tests.ts";

test("the list of slow tests is in order, and names files that are there", () => {
  const paths = Object.keys(slowTests);
  expect(paths).toEqual(paths.toSorted());
  expect(paths.filter((path) => !isThere(`tests/${path}`))).toEqual([]);
});
