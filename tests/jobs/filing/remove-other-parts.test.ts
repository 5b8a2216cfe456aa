import { expect, test } from "vitest";
import { removeOtherParts } from "../../../src/jobs/filing/remove-other-parts.ts";

function folderOf(names: readonly string[] | undefined) {
  const removed: string[] = [];
  const disk = { namesIn: async () => names, remove: async (path: string) => void removed.push(path) };
  return { disk, removed };
}

test("parts that were not written now go, whatever their list; files of other names stay", async () => {
  const own = ["loops-001.html", "loops-1000.html"];
  const others = ["loops-002.html", "due-001.html", "open-001.html", "late-001.html", "records-1001.html"];
  const strange = [
    "loops-1.html",
    "loops-001.html.bak",
    "my-loops-001.html",
    "2026-01-01_C-1_r1.html",
    "loops-001.pdf",
  ];
  const { disk, removed } = folderOf([...own, ...others, ...strange]);
  const written = own.map((name) => ({ path: `f/register-parts/${name}` }));
  await removeOtherParts(disk, "f/register-parts", written);
  expect(removed).toEqual(others.map((name) => `f/register-parts/${name}`));
});

test("without such a folder nothing is removed", async () => {
  const { disk, removed } = folderOf(undefined);
  await removeOtherParts(disk, "f/register-parts", []);
  expect(removed).toEqual([]);
});
