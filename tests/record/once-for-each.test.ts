import { expect, test } from "vitest";
import { onceForEach } from "../../src/record/once-for-each.ts";

test("what is found of a thing is found once, and of another thing anew", () => {
  let count = 0;
  const find = onceForEach(({ size }: { size: number }) => ({ double: 2 * size, count: ++count }));
  const [one, other] = [{ size: 1 }, { size: 1 }];
  expect([find(one), find(other), find(one)]).toEqual([
    { double: 2, count: 1 },
    { double: 2, count: 2 },
    { double: 2, count: 1 },
  ]);
});
