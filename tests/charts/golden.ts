import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { expect } from "vitest";
import { isRequired } from "../outside/needs-program.ts";

const folder = new URL("./golden/", import.meta.url);

/**
 * Compares a drawing with its golden. A drawing that differs is left beside it as `-changed`, to be looked at;
 * a missing golden is written, but never under CI.
 */
export function expectGolden(name: string, svg: string): void {
  const golden = new URL(`${name}.svg`, folder);
  const changed = new URL(`${name}-changed.svg`, folder);
  const drawn = normalised(svg);
  if (!existsSync(golden) && !isRequired(process.env.CI)) writeFileSync(golden, drawn);
  expect(existsSync(golden), `golden ${name} is missing, and under CI none is written`).toBe(true);
  const isSame = drawn === readFileSync(golden, "utf8");
  if (isSame) rmSync(changed, { force: true });
  else writeFileSync(changed, drawn);
  expect(isSame, `${name} differs from its golden, see ${name}-changed.svg`).toBe(true);
}

/** Places with two decimals, texts as they are, ids by number, an element a line. */
export function normalised(svg: string): string {
  const numbers = new Map<string, number>();
  return svg
    .replace(/<[^>]*>/gu, (tag) =>
      tag.replace(/-?\d+\.\d{3,}/gu, (number) => String(Number(Number(number).toFixed(2)))),
    )
    .replace(/(?<= id="|url\(#|aria-describedby=")[^")]+/gu, (id) => {
      numbers.set(id, numbers.get(id) ?? numbers.size + 1);
      return `id-${numbers.get(id)}`;
    })
    .replaceAll("><", ">\n<")
    .concat("\n");
}
