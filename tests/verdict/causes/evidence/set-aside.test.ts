import { expect, test } from "vitest";
import { apartReadings } from "../../../../src/verdict/causes/evidence/set-aside.ts";
import { nothingWrong, planted } from "../planted.ts";

const spoiled = planted({ sheet: (readings) => readings.with(4, { ...readings[4]!, signal: 17.777 }) });
const bare = planted(nothingWrong);

test("a reading that something else explains is not looked at", () => {
  expect(spoiled.wild.map(({ index, axis }) => ({ index, axis }))[0]).toEqual({ index: 4, axis: "signal" });
  const [stage] = bare.stages;
  const wild = { ...stage!, readings: stage!.readings };
  expect(apartReadings([wild], bare.readings, new Set([4]), bare.mattering)).toEqual({ exchanged: [], wild: [] });
});

test("where the scatter grows with the distance the far ones are no wild ones", () => {
  const [stage] = bare.stages;
  const grown = { ...stage!, spread: { near: 0.01, far: 1, slopeInUncertainties: 9, degreesOfFreedom: 40 } };
  expect(apartReadings([grown], spoiled.readings, new Set(), bare.mattering)).toEqual({ exchanged: [], wild: [] });
});
