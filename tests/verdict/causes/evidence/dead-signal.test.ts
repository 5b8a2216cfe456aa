import { expect, test } from "vitest";
import { deadSignalSightings } from "../../../../src/verdict/causes/evidence/dead-signal.ts";
import { nothingWrong, planted } from "../planted.ts";

const causes = ["open-wire", "current-and-voltage-mixed-up", "target-lost-fault", "signal-at-its-end"] as const;
const seenAt = (level: number) => {
  const evidence = planted({ signal: () => level });
  return causes.filter((cause) => deadSignalSightings(evidence, cause, "So it is.", []).length > 0);
};

test("a current of 0, 1.2, 20.5 and 21.8 mA at every distance has four names, one inside the range none", () => {
  expect(seenAt(20.5)).toEqual(["signal-at-its-end"]);
  expect(seenAt(0)).toEqual(["open-wire"]);
  expect(seenAt(1.2)).toEqual(["current-and-voltage-mixed-up"]);
  expect(seenAt(21.8)).toEqual(["target-lost-fault"]);
  expect(seenAt(12)).toEqual([]);
});

test("the sentence names the level, and the rivals are those of the cause that asks", () => {
  const [seen] = deadSignalSightings(planted({ signal: () => 1.2 }), causes[1], "So it is.", ["open-wire"]);
  expect(seen?.says).toBe("The signal stays at 1.2 mA at every distance. So it is.");
  expect(seen?.rivals).toEqual(["open-wire"]);
});

test("a signal that moves is not dead", () => {
  expect(causes.flatMap((cause) => deadSignalSightings(planted(nothingWrong), cause, "", []))).toEqual([]);
});
