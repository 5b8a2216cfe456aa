import { expect, test } from "vitest";
import { withColumn } from "../smallest-workbook.ts";
import { told } from "./told.ts";

const toldOf = (column: string, cell: string) =>
  told(withColumn(column === "air_temperature" ? "calibrations.csv" : "instruments.csv", column, cell));

// Absolute zero is -273.15 °C; 1e6 °C is hotter than the sun's surface. Neither is the temperature of air around a sensor.
test.each(["air_temperature", "taught_at", "air_min", "air_max"])(
  "%s is that of some air, or stops",
  async (column) => {
    const table = column === "air_temperature" ? "calibrations" : "instruments";
    for (const cell of ["-300", "-273.15", "1e6", "300", "400 °C", "-500 °F"]) {
      expect(await toldOf(column, cell)).toEqual([`tables/cell-out-of-bounds ${table}:2:${column}`]);
    }
    for (const cell of ["-60", "-25", "0", "23.5", "70", "86 °F", "300 K"])
      expect(await toldOf(column, cell)).toEqual([]);
    for (const cell of ["86", "-80", "150"]) {
      expect(await toldOf(column, cell)).toEqual([`model/air-unlikely ${table}:2:${column}`]);
    }
  },
);

test("a load of nothing is none that an output may have", async () => {
  expect(await toldOf("load_max", "0")).toEqual(["tables/cell-out-of-bounds instruments:2:load_max"]);
  expect(await toldOf("load_max", "1")).toEqual([]);
});
