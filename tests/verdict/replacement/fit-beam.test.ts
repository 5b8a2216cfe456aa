import { expect, test } from "vitest";
import type { Candidate } from "../../../src/model/instrument.ts";
import { fitBeam } from "../../../src/verdict/replacement/fit-beam.ts";
import { candidateWith, loopNeeds, type NeedsChanges, told } from "./sample-loop-needs.ts";

const cell = (more: Partial<Candidate>, calibration: NeedsChanges["calibration"] = {}) =>
  fitBeam(candidateWith(more), loopNeeds({ calibration }));

// 2 · 4000 · tan 2° = 8000 · 0.0349208 = 279.4 mm; 2 · 4000 · tan 5° = 8000 · 0.0874887 = 699.9 mm.
test("4° open to 279 mm at 4000 mm, inside the shorter side of 500 mm; 10° to 700 mm, past it", () => {
  expect(cell({ beamAngle: 4 })).toMatchObject({
    demand: "beam at 4000 mm",
    result: "fits",
    needs: "target of 500 mm",
    offers: "279 mm",
  });
  expect(told(cell({ beamAngle: 10 }))).toBe(
    "does not fit: part of the beam passes the target: 699.91 mm where 500 mm at most is allowed",
  );
});

test("one stated side is the shorter one, and none cannot be told", () => {
  expect(cell({ beamAngle: 10 }, { targetWidth: 800, targetHeight: undefined }).result).toBe("fits");
  expect(cell({}, { targetWidth: undefined, targetHeight: undefined })).toMatchObject({
    result: "cannot be told",
    needs: "target not stated",
  });
});

test("a beam that is not stated, or has no edge, cannot be told; an inductive sensor has none", () => {
  expect(told(cell({ beamAngle: undefined }))).toBe("cannot be told: beam_angle is not stated");
  expect(told(cell({ beamAngle: 180 }))).toBe("cannot be told: a beam of 180° has no edge");
  expect(cell({ principle: "inductive", beamAngle: undefined })).toMatchObject({ result: "fits", offers: "no beam" });
  expect(cell({ principle: "capacitive", beamAngle: undefined }).result).toBe("fits");
});
