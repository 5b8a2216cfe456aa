import { expect, test } from "vitest";
import { onceFor } from "../../../../src/verdict/causes/evidence/once-for.ts";
import { nothingWrong, planted } from "../planted.ts";

test("a choice is made once for an evidence, also where there is none, and anew for another", () => {
  let made = 0;
  const choice = onceFor(({ stages }) => {
    made += 1;
    return stages[9];
  });
  const [one, other] = [planted(nothingWrong), planted(nothingWrong)];
  expect([choice(one), choice(one), made]).toEqual([undefined, undefined, 1]);
  choice(other);
  expect(made).toBe(2);
});
