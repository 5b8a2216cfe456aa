import type { Cause } from "../../../src/verdict/causes/cause.ts";

/** A cause that this project does not have: the reference never came near the far end of the range. */
export const shortRail: Cause = {
  id: "rail-too-short",
  title: "rail too short for the range",
  place: "rig",
  separatedBy: "measure the rail, and compare with the range",
  remedy: { cures: "set-up", does: "use a rail that reaches the far end of the range" },
  detect: ({ readings }) => {
    const farthest = Math.max(...readings.map(({ percent }) => percent.reference ?? 0));
    if (farthest > 80) return [];
    return [
      {
        says: "No target was set in the far part of the range. This is consistent with a rail that is too short.",
        evidence: [{ name: "farthest target", value: farthest, unit: "% of span" }],
        rivals: ["target-beyond-range"],
      },
    ];
  },
};
