import type { Check } from "./check-context.ts";
import { shownNumber } from "./shown-number.ts";

const echoing: readonly (string | undefined)[] = ["ultrasonic", "radar"];

/**
 * A flat target sends an echo back along the ray that meets it square: one tilted by more than half the beam angle has no
 * such ray in the beam, and its echo misses the sensor.
 *
 * Source: the law of reflection at a flat surface, on a beam that is a cone from the sensor.
 */
export const target: Check = ({ drafts, instrumentByTag, report }) => {
  for (const draft of drafts.calibrations) {
    const { tag, targetTilt } = draft.row;
    const { principle, beamAngle } = (tag === undefined ? undefined : instrumentByTag.get(tag)?.row) ?? {};
    if (targetTilt === undefined || beamAngle === undefined || !echoing.includes(principle)) continue;
    if (targetTilt <= beamAngle / 2) continue;
    const values = {
      tilt: shownNumber(targetTilt),
      beam: shownNumber(beamAngle),
      edge: shownNumber(beamAngle / 2),
    };
    report("calibrations", draft, "model/echo-missed", { column: "target_tilt", values });
  }
};
