import { expect, test } from "vitest";
import { onceForEach, onceForEachValue } from "../../src/record/once-for-each.ts";

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

test("of a text it is found once, and of more than so many anew each time", () => {
  let count = 0;
  const find = onceForEachValue((text: string) => ({ text, count: ++count }), 2);
  expect(["a", "b", "a", "c", "c", "b"].map((text) => find(text).count)).toEqual([1, 2, 1, 3, 4, 2]);
});
