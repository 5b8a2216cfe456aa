/** The parts of a loop of which something is said, in its order; each ends with a stage that was read. */
export const judgedParts = ["sensor", "wiring", "input card", "controller"] as const;
