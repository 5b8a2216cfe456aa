import { expect, test } from "vitest";
import { workCautions } from "../../src/record/work-cautions.ts";

const loop = { signalLower: 4, signalUpper: 20 } as const;

test("every loop defers to the lockout procedure, the codes and the licence, first of all", () => {
  for (const paper of ["record", "sheet"] as const) {
    const [first] = workCautions(loop, paper);
    expect(first).toContain("lockout procedure");
    expect(first).toContain("local codes");
    expect(first).toContain(`This ${paper} gives nobody authority to work.`);
  }
});

test("what is not known counts as dangerous; what is known not to be is left out", () => {
  const says = (more: object) => workCautions({ ...loop, ...more }, "sheet").join(" ");
  expect(says({})).toContain("Hazardous area");
  expect(says({ hazardousArea: false })).not.toContain("Hazardous area");
  expect(says({})).toContain("safety function until shown otherwise");
  expect(says({ criticality: "general" })).not.toContain("safety function until shown otherwise");
  expect(says({ principle: "laser" })).toContain("Laser:");
  expect(says({ principle: "ultrasonic" })).not.toContain("Laser:");
  expect(says({ signalLower: 0 })).toContain("A broken wire");
});
