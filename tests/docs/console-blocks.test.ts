import { describe, expect, test } from "vitest";
import { blocksOf, commandsOf, isAsDocumented } from "./console-blocks.ts";

const page = "# A\n\n```csv a.csv\nx,y\n```\n\n```console\n$ one --a\nfirst\n…\n$ two   # ends with 2\n```\n";

test("blocks of a page, with language, file name and line", () => {
  expect(blocksOf(page)).toEqual([
    { line: 3, language: "csv", name: "a.csv", lines: ["x,y"] },
    { line: 7, language: "console", name: "", lines: ["$ one --a", "first", "…", "$ two   # ends with 2"] },
  ]);
  expect(() => blocksOf("```sh\nnpm")).toThrow("line 1: the block is not closed");
});

test("commands of a block, with what they print and end with", () => {
  expect(commandsOf(blocksOf(page)[1]!)).toEqual([
    { line: 8, command: "one --a", exitCode: 0, expected: ["first", "…"] },
    { line: 11, command: "two", exitCode: 2, expected: [] },
  ]);
  expect(() => commandsOf(blocksOf("```console\nprinted\n```")[0]!)).toThrow("line 2: a console block begins");
});

describe("what a command printed is held against the page", () => {
  test.each<[expected: readonly string[], printed: string]>([
    [[], ""],
    [[], "\n"],
    [["tag   page"], "tag      page\n"],
    [["────  ─"], "──  ─────\n"],
    [["a … c"], "a b c"],
    [["a", "…"], "a\nb\nc\n"],
    [["a", "…"], "a\n"],
    [["…", "c"], "a\nb\nc\n"],
    [["(a) 1.5 + [b]"], "(a) 1.5 + [b]\n"],
  ])("%j: %j is so", (expected, printed) => {
    expect(isAsDocumented(expected, printed)).toBe(true);
  });

  test.each<[expected: readonly string[], printed: string]>([
    [[], "a\n"],
    [["a"], ""],
    [["a"], "a\nb\n"],
    [["a", "b"], "b\na\n"],
    [["1.5"], "1x5\n"],
    [["a … c"], "a\nc\n"],
    [["a", "…", "d"], "a\nb\nc\n"],
    [["ab"], "a b\n"],
  ])("%j: %j is not", (expected, printed) => {
    expect(isAsDocumented(expected, printed)).toBe(false);
  });
});
