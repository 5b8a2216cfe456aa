import { expect, test } from "vitest";
import { usualPaper } from "../../src/cli/paper.ts";

test.each([
  [{ LANG: "en_US.UTF-8" }, "Letter"],
  [{ LANG: "en_US.UTF-8", LC_PAPER: "de_DE.UTF-8" }, "A4"],
  [{ LC_ALL: "fr_CA", LANG: "de_DE" }, "Letter"],
  [{ LC_ALL: "", LANG: "en_GB.UTF-8" }, "A4"],
  [{ LANG: "C.UTF-8" }, "A4"],
  [{}, "A4"],
] as const)("of %j it is %s", (environment, paper) => {
  expect(usualPaper(environment)).toBe(paper);
});
