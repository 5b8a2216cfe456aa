import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { causes, rivalsOnly } from "../../../src/verdict/causes/causes.ts";

const folder = new URL("../../../src/verdict/causes/", import.meta.url);
const known = [...causes, ...rivalsOnly].map(({ id }) => id);

test("every cause has an id and a title of its own, and its id is a slug of two words or more", () => {
  expect(new Set(known).size).toBe(known.length);
  expect(new Set([...causes, ...rivalsOnly].map(({ title }) => title)).size).toBe(known.length);
  for (const id of known) expect(id).toMatch(/^[a-z]+(?:-[a-z]+)+$/u);
});

test("every cause says what would tell, and what cures it at its place", () => {
  for (const { place, separatedBy, remedy, title } of causes) {
    expect(separatedBy.length, title).toBeGreaterThan(20);
    expect(remedy.cures === "switched output", title).toBe(place === "switched output");
  }
});

test("what looks like an id in the folder is the id of a cause", () => {
  const texts = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => readFileSync(new URL(name, folder), "utf8"));
  const slugs = texts.flatMap((text) => [...text.matchAll(/"([a-z]+(?:-[a-z]+)+)"/gu)].map(([, slug]) => slug));
  expect(slugs.length).toBeGreaterThan(100);
  expect(slugs.filter((slug) => !known.includes(slug ?? "") && slug !== "set-up")).toEqual([]);
});
