import type { ReadingsCheck } from "./check-context.ts";

/** What was adjusted agrees with the phases that were read. */
export const adjustment: ReadingsCheck = ({ calibrations, readings }, { report }) => {
  for (const draft of calibrations) {
    const hasAsFound = readings.some(({ row }) => row.phase === "as_found");
    const hasAsLeft = readings.some(({ row }) => row.phase === "as_left");
    const adjusted = draft.row.adjustment;
    if (hasAsLeft && adjusted === "none") {
      report("calibrations", draft, "model/as-left-without-adjustment", { column: "adjustment" });
    }
    if (hasAsFound && !hasAsLeft && adjusted !== undefined && adjusted !== "none") {
      const values = { adjustment: adjusted };
      report("calibrations", draft, "model/adjustment-without-as-left", { column: "adjustment", values });
    }
    if (hasAsLeft && !hasAsFound) report("calibrations", draft, "model/as-found-missing");
  }
};
