import { expect, test } from "vitest";
import { kinds, tryDamage } from "./try-damage.ts";

test.each(kinds)("a damaged %s is told, or reads as what stands in it; none ends in a fault", async (kind) => {
  const tried = [];
  for (let seed = 1; seed <= 80; seed += 1) tried.push(await tryDamage(kind, seed));
  expect(tried.filter(({ outcome }) => outcome === "silent" || outcome === "fault")).toEqual([]);
  expect(tried.filter(({ outcome }) => outcome === "told").length).toBeGreaterThan(20);
});
