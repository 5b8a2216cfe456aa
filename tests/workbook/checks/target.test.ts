import { expect, test } from "vitest";
import { withColumn } from "../smallest-workbook.ts";
import { told } from "./told.ts";

const tilted = async (principle: string, beam: string, tilt: string) => {
  const { "instruments.csv": instruments = "" } = withColumn(
    "instruments.csv",
    "principle,beam_angle",
    `${principle},${beam}`,
  );
  const texts = { ...withColumn("calibrations.csv", "target_tilt", tilt), "instruments.csv": instruments };
  return (await told(texts)).filter((one) => one.startsWith("model/echo-missed"));
};

// By reflection at a plane: the ray that meets a plate tilted by 4° square leaves the sensor 4° beside its axis, which is
// the edge of a beam of 8°.
test.each([
  ["ultrasonic", "8", "4", 0],
  ["ultrasonic", "8", "4.1", 1],
  ["radar", "8", "20", 1],
  ["laser", "8", "20", 0],
  ["ultrasonic", "", "20", 0],
  ["ultrasonic", "30", "", 0],
])("%s, a beam of %s°, a plate tilted by %s°: told %i times", async (principle, beam, tilt, times) => {
  expect(await tilted(principle, beam, tilt)).toHaveLength(times);
});
