import { readdirSync, readFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { faultsOfPage, isThere, root } from "./page-runner.ts";

const pages = ["README.md", ...readdirSync(join(root, "docs")).map((name) => `docs/${name}`)].filter((path) =>
  path.endsWith(".md"),
);
const textOf = (path: string) => readFileSync(join(root, path), "utf8");

describe("every command of a page does what the page says", () => {
  test.each(pages)("%s", async (path) => {
    expect(await faultsOfPage(path)).toEqual([]);
  });
});

test("every page is linked from README, which has under 100 lines, or from one that is", () => {
  const readme = textOf("README.md");
  expect(readme.split("\n").length).toBeLessThan(100);
  const linked = pages.filter((path) => readme.includes(`](${path})`));
  const further = (path: string) => linked.some((page) => textOf(page).includes(`](${basename(path)})`));
  const alone = pages.slice(1).filter((path) => !linked.includes(path) && !further(path));
  expect(alone).toEqual([]);
});

test.each([...pages, "CHANGELOG.md", "DEVELOPERS.md"])("what %s links to is there", (path) => {
  const links = [...textOf(path).matchAll(/\]\((?!https?:)([^)#]+)/gu)].map(([, link = ""]) => link);
  expect(links.filter((link) => !isThere(join(dirname(path), link)))).toEqual([]);
});
