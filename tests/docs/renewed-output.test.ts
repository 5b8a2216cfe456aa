import { expect, test } from "vitest";
import { renewedOutput } from "./renewed-output.ts";

const printed = "note  a\ntag   found  overall\nLT-1  pass   pass\nLT-2  fail   fail\nLT-3  pass   fail\n2 records\n";

test.each<[title: string, expected: readonly string[], renewed: readonly string[]]>([
  ["without gaps the whole is taken", ["tag"], printed.trimEnd().split("\n")],
  ["what is right stays, with what it leaves out", ["n…", "…"], ["n…", "…"]],
  ["the first lines", ["note  b", "…"], ["note  a", "…"]],
  ["the last lines", ["…", "LT-3 pass", "3 records"], ["…", "LT-3  pass   fail", "2 records"]],
  ["a line between gaps is found by its first word", ["…", "LT-2  pass", "…"], ["…", "LT-2  fail   fail", "…"]],
  [
    "several of them, in order",
    ["…", "tag   found", "LT-1  pass", "…", "LT-3  pass   …", "…"],
    ["…", "tag   found  overall", "LT-1  pass   pass", "…", "LT-3  pass   …", "…"],
  ],
])("%s", (_, expected, renewed) => {
  expect(renewedOutput(expected, printed)).toEqual(renewed);
});

test("a command that prints nothing any more", () => {
  expect(renewedOutput(["a"], "\n")).toEqual([]);
});
