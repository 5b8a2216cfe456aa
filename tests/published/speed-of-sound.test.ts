import { expect, test } from "vitest";
import { speedOfSound } from "../../src/analysis/air/speed-of-sound.ts";
import { readColumns } from "./read-data.ts";

test("the speed of sound is that of IEC 61094-2:2009, table F.1, set A, to half a unit of its last digit", () => {
  const columns = readColumns("iec-61094-2-annex-f");
  const column = (name: string) => columns[name]?.[0] ?? Number.NaN;
  const speed = speedOfSound({
    temperatureCelsius: column("temperature_celsius"),
    relativeHumidityPercent: column("relative_humidity_percent"),
    pressureHectopascals: column("pressure_pascals") / 100,
    carbonDioxideFraction: column("carbon_dioxide_fraction"),
  });
  expect(Math.abs(speed - column("speed_metres_per_second"))).toBeLessThan(0.000005);
});
