import { expect, test } from "vitest";
import { filedPages, pagesOf, placeInFolder } from "../../src/filing/filed-lines.ts";
import { ledgerText } from "../../src/filing/ledger-line.ts";
import { sampleLines } from "./sample-lines.ts";

test.each([
  ["filed/LT-1/a.html", "filed", "LT-1/a.html"],
  ["/filed/LT-1/a.html", "/filed", "LT-1/a.html"],
  ["LT-1/a.html", ".", "LT-1/a.html"],
  ["/LT-1/a.html", "/", "LT-1/a.html"],
  ["a.html", ".", "a.html"],
  ["p\\filed\\LT-1\\a.html", "p/filed", "LT-1/a.html"],
])("%s lies in %s as %s", (page, folder, path) => {
  expect(placeInFolder(page)).toEqual({ folder, path });
});

test("lines that filed a page are read, whatever stands between them; without a ledger there are none", async () => {
  const lines = sampleLines(3);
  const text = [...lines.map(ledgerText), "no line", ""].join("\n");
  const disk = (given: string | undefined) => ({
    read: async (path: string) => (path === "f/ledger.jsonl" && given ? new TextEncoder().encode(given) : undefined),
  });
  expect(await filedPages(disk(text), "f")).toEqual({ standing: lines, withdrawn: [], disposed: [] });
  expect(await filedPages(disk(undefined), "f")).toEqual({ standing: [], withdrawn: [], disposed: [] });
});

test("a page that was withdrawn counts no more, and the others do", () => {
  const lines = sampleLines(3);
  const [, second] = lines;
  if (second === undefined) throw new Error("there are three lines");
  const line = { ...second, number: 4, action: "withdrawn" as const, by: "A. Example", reason: "a slip" };
  expect(pagesOf([...lines, line])).toEqual({
    standing: lines.filter((one) => one !== second),
    withdrawn: [line],
    disposed: [],
  });
});
