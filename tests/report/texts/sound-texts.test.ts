import { expect, test } from "vitest";
import { numberStyleOf } from "../../../src/report/style/number-style.ts";
import { airWords, effectsWords, explainedWords, taughtWords } from "../../../src/report/texts/sound-texts.ts";
import { demoRecord } from "../demo-records.ts";

const record = demoRecord("LT-318");
const style = numberStyleOf(record);
const { sound } = record;
if (!sound?.air || !sound.effects) throw new Error("LT-318 has no sound");
const { air, effects } = sound;

test("air, speed and cross-check are said; what was assumed too", () => {
  expect(airWords(air)).toBe(
    "In air of 4 °C, 80 % and 1008 hPa sound travels at 334.20 m/s. The short form of ISO 9613-1, which knows the " +
      "temperature alone, gives 333.70 m/s: they differ by +0.15 %, within the 1 % that humidity and pressure make.",
  );
  expect(airWords({ ...air, assumed: ["pressure"] })).toMatch(/1008 hPa \(pressure not stated: assumed\)/u);
  expect(airWords({ ...air, agrees: false, isInStatedRange: false })).toMatch(/doubtful.*outside the range/u);
});

test("a sensor that corrects itself, one that does not, and one of which it is not stated", () => {
  expect(taughtWords(record, sound, style)).toMatch(
    /^The sensor does not correct .* taught at 20 °C, .* So the day's air alone makes \+117\.1 mm at 4000 mm\.$/u,
  );
  expect(taughtWords(record, { ...sound, isCompensated: true }, style)).toMatch(
    /^The sensor corrects .* If it did not, the air alone would make \+117\.1 mm at 4000 mm\.$/u,
  );
  const { temperatureCompensated: _, ...instrument } = record.instrument;
  expect(taughtWords({ ...record, instrument }, sound, style)).toMatch(
    /^Whether .* is not stated; it is taken as not\./u,
  );
  const unknown = { ...sound, taught: null, errorAtUpperEnd: null };
  expect(taughtWords(record, unknown, style)).toBe("The sensor does not correct for the air temperature.");
});

test("what the air explains, and whether a kelvin matters", () => {
  const [explained] = sound.explained;
  if (explained === undefined) throw new Error("nothing explained");
  expect(explainedWords(record, explained, style)).toBe(
    "As found, the day's air alone makes an error of +105.4 mm at 3600 mm. The worst reading is off by +112.5 mm; " +
      "without what the air makes, by +7.0 mm.",
  );
  expect(effectsWords(record, effects, style)).toBe(
    "At 4000 mm, with a tolerance of ±36.0 mm: one kelvin makes 7.5 mm, under a quarter of the tolerance; the whole " +
      "way from dry to saturated air makes 5.0 mm, under a quarter of the tolerance.",
  );
});
