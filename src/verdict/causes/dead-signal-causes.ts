import type { Cause } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { deadSignalSightings } from "./evidence/dead-signal.ts";
import { signalEnds } from "./evidence/signal-order.ts";

// A signal that is the same whatever the distance is; a fault signal all the time is among the lost targets.

/** No current or voltage: on a signal that begins at zero it looks like its low end. */
export const openWire: Cause = {
  id: "open-wire",
  title: "open wire or no supply",
  place: "wiring",
  separatedBy:
    "measure the supply at the sensor's terminals, then current and voltage of its output with the card disconnected",
  remedy: { cures: "wiring", does: "find the open wire or the missing supply" },
  isSeenAtSensor: true,
  detect: (evidence) =>
    deadSignalSightings(
      evidence,
      "open-wire",
      `This is consistent with an open wire or with no supply at the sensor.${hiddenWords(evidence)}`,
      ["current-and-voltage-mixed-up"],
    ),
};

function hiddenWords({ instrument }: CauseEvidence): string {
  if (signalEnds(instrument).low !== 0) return "";
  return ` On a signal that begins at 0 ${instrument.signalUnit} nothing in the controller tells a broken wire from its low end.`;
}

/** At the level where the output stops, from the first reading to the last. */
export const signalAtItsEnd: Cause = {
  id: "signal-at-its-end",
  title: "signal that stands still at its end",
  place: "sensor",
  separatedBy:
    "watch the distance that the sensor itself shows while the target moves, and simulate the middle of the signal at its output",
  remedy: {
    cures: "set-up",
    does: "find why the signal stands at its end: the range that the sensor is taught for, its aim, the target; then read all points again",
  },
  detect: (evidence) =>
    deadSignalSightings(
      evidence,
      "signal-at-its-end",
      "That is an end of what it can say, and no measurement of these distances. This is consistent with a target beyond the taught range, or with one that the sensor does not see.",
      ["target-beyond-range", "target-lost-held", "both-ends-taught-wrong"],
    ),
};

/** Pinned above the range, or collapsed to little. */
export const mixedUp: Cause = {
  id: "current-and-voltage-mixed-up",
  title: "current and voltage mixed up between sensor and input",
  place: "wiring",
  separatedBy: "read the output type on the sensor's label and in its settings, and the channel's configured type",
  remedy: {
    cures: "wiring",
    does: "connect a current output to a current input, or a voltage output to a voltage input, the right way round",
  },
  isSeenAtSensor: true,
  detect: (evidence) =>
    deadSignalSightings(
      evidence,
      "current-and-voltage-mixed-up",
      "This is consistent with a current output on a voltage input, or a voltage output on a current input.",
      ["open-wire"],
    ),
};
