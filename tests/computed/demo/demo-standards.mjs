/** The references of the invented workshop, as texts by column; a no-break space parts each uncertainty from its unit. */
export const standards = [
  standard("RAIL-5000", "measuring rail, 5 m", "EX-S-01", "distance", "mm", ["0.9", "0.1", "0.2"]),
  standard("RAIL-300", "measuring rail, 300 mm", "EX-S-02", "distance", "mm", ["0.1", "0.1", "0.02"]),
  standard("RAIL-30IN", "measuring rail, 30 in", "EX-S-03", "distance", "in", ["0.003", "0.005", "0.0005"]),
  standard("STAGE-25", "micrometer stage, 25 mm", "EX-S-04", "distance", "mm", ["0.004", "0.005", "0.001"]),
  standard("TAPE-10", "steel tape, 10 m", "EX-S-05", "distance", "mm", ["1", "1", "0.2"]),
  standard("RANGER-1", "hand-held optical distance meter", "EX-S-06", "distance", "mm", ["4.2", "1", "0.5"]),
  standard("METER-1", "multimeter, 20 mA range", "EX-S-07", "current", "mA", ["0.002", "0.001", "0.001"]),
  standard("METER-2", "multimeter, 10 V range", "EX-S-08", "voltage", "V", ["0.001", "0.001", "0.0005"]),
  standard("AIR-1", "thermometer, −20 to 60 °C", "EX-S-09", "temperature", "°C", ["0.3", "0.1", "0.1"]),
];

export function standard(name, description, serial, quantity, unit, [uncertainty, resolution, drift]) {
  return {
    standard: name,
    description,
    serial,
    quantity,
    certificate: `EX-CERT-26-${serial.slice(-2)}`,
    calibrated_on: "2026-01-14",
    due_on: "2027-01-14",
    traceable_to: "Specimen Reference Laboratory (invented), to the SI",
    expanded_uncertainty: `${uncertainty}\u00a0${unit}`,
    uncertainty_unit: unit,
    coverage_factor: "2",
    resolution,
    drift_per_year: drift,
  };
}
