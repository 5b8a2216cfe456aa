import { expect, test } from "vitest";
import type { RecommendedAction } from "../../../src/verdict/recommendation/step.ts";
import { workDone } from "../../../src/verdict/recommendation/work-done.ts";

const steps = (...actions: RecommendedAction[]) => actions.map((action) => ({ action }));

test.each<[RecommendedAction[], string | undefined, string]>([
  [["re-teach"], "re-teach", "as asked"],
  [["leave"], "none", "as asked"],
  [["cannot be decided"], "none", "as asked"],
  [["repair wiring or set-up"], "repair", "as asked"],
  [["re-teach", "cannot be decided"], "re-teach", "as asked"],
  [["repair wiring or set-up", "re-teach"], "re-teach", "a part of it"],
  [["replace"], "re-teach", "something else"],
  [["leave"], "re-teach", "something else"],
  [["re-scale"], "none", "nothing was done"],
  [["re-scale"], undefined, "not stated"],
])("asked %j, done %s: %s", (actions, done, agreement) => {
  expect(workDone(steps(...actions), done).agreement).toBe(agreement);
});

test("each kind of work is asked for once", () => {
  expect(workDone(steps("re-teach", "re-teach"), "re-teach").asked).toEqual(["re-teach"]);
});

test("two kinds of work that were asked for are done where the table names both", () => {
  const asked = [{ action: "re-teach" }, { action: "re-scale" }] as const;
  expect(workDone(asked, "re-teach").agreement).toBe("a part of it");
  expect(workDone(asked, "re-teach", ["re-scale"]).agreement).toBe("as asked");
  expect(workDone(asked, "repair", ["replace"]).agreement).toBe("something else");
});
