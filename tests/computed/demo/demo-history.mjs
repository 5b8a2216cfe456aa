/**
 * The workbooks of the years 2021 to 2026 of the invented plant, one a year as a workshop keeps them, and one more in
 * which a typing error of 2024 is put right: folder by folder, the rows of each table as texts by column.
 */
import { everyCalibration } from "./demo-calibrations.mjs";
import { everyItem } from "./demo-loop-checks.mjs";
import { standard } from "./demo-standards.mjs";
import { instrumentsIn } from "./history-instruments.mjs";
import { historyLoops } from "./history-loops.mjs";
import { seededNoise } from "./seeded-noise.mjs";
import { takeReadings } from "./take-readings.mjs";

const daysPerYear = 365.25;
const placesOf = {
  "LT-120": { target_material: "plywood", target_width: "500", target_height: "500", target_surface: "flat" },
  "ZT-250": {
    target_material: "painted steel",
    target_width: "300",
    target_height: "300",
    target_surface: "matt grey",
  },
  "LT-430": { target_material: "aluminium plate", target_width: "800", target_height: "800", target_surface: "flat" },
  "ZT-615": { target_material: "gate blade", target_width: "200", target_height: "200", target_surface: "matt white" },
  "LT-808": { target_material: "plywood", target_width: "800", target_height: "800", target_surface: "flat" },
};

export const historyWorkbooks = [2021, 2022, 2023, 2024, 2025, 2026].flatMap((year) => {
  const visits = historyLoops
    .flatMap((loop) => loop.visits.map((visit) => ({ ...loop, ...visit })))
    .filter(({ on }) => on.startsWith(String(year)))
    .sort((one, other) => (one.on < other.on ? -1 : 1));
  const workbook = { folder: `history/${year}`, tables: tablesOf(year, visits) };
  if (!visits.some(({ slip }) => slip)) return [workbook];
  const mended = visits.map((visit) => ({ ...visit, slip: false }));
  return [workbook, { folder: `history/${year}-amended`, tables: tablesOf(year, mended) }];
});

function tablesOf(year, visits) {
  const used = new Set(visits.map(({ tag }) => tag));
  return {
    instruments: instrumentsIn(year).filter(({ tag }) => used.has(tag)),
    standards: standardsIn(year).filter(({ standard: name }) => visits.some((visit) => visit.standards.includes(name))),
    calibrations: visits.map(calibrationOf),
    readings: visits.flatMap(readingsOf),
    loop_checks: visits.map(({ calibration }) => ({
      calibration,
      item: "restored",
      ...everyItem,
      remark: `${permitOf(calibration)} closed, to the shift`,
    })),
  };
}

/** Each standard has a new certificate every year; the meter in December, the others in January. */
function standardsIn(year) {
  const [calibrated, meterCalibrated] = [`${year}-01-13`, `${year - 1}-12-15`];
  const short = String(year).slice(2);
  return [
    standard("TAPE-5", "steel tape, 5 m", "EX-S-21", "distance", "mm", ["0.8", "1", "0.2"]),
    standard("RAIL-3500", "measuring rail, 3.5 m", "EX-S-22", "distance", "mm", ["0.6", "0.1", "0.2"]),
    standard("RANGER-2", "hand-held optical distance meter", "EX-S-23", "distance", "mm", ["2.4", "1", "0.5"]),
    standard("METER-3", "multimeter, 20 mA range", "EX-S-24", "current", "mA", ["0.002", "0.001", "0.001"]),
    standard("AIR-2", "thermometer, −20 to 60 °C", "EX-S-25", "temperature", "°C", ["0.3", "0.1", "0.1"]),
  ].map((row) => {
    const calibratedOn = row.standard === "METER-3" ? meterCalibrated : calibrated;
    return {
      ...row,
      certificate: `EX-CERT-${short}-${row.serial.slice(-2)}`,
      calibrated_on: calibratedOn,
      due_on: `${Number(calibratedOn.slice(0, 4)) + 1}${calibratedOn.slice(4)}`,
    };
  });
}

function calibrationOf({ tag, calibration, on, by, standards, more }) {
  const noise = seededNoise(seedOf(calibration) + 1);
  const performedBy = by ?? everyCalibration.performed_by;
  return {
    ...everyCalibration,
    calibration,
    tag,
    performed_on: on,
    performed_by: performedBy,
    reviewed_by: "",
    work_order: `EX-W-${calibration.slice(2)}`,
    standards,
    air_temperature: (17 + 6 * noise.uniform()).toFixed(1),
    relative_humidity: String(40 + Math.floor(25 * noise.uniform())),
    ...placesOf[tag],
    target_tilt: "0.5",
    alignment_angle: "0.5",
    bypass_permit: permitOf(calibration),
    returned_to_service: `${on}, ${performedBy} to the shift`,
    condition_received: "clean",
    ...more,
  };
}

function readingsOf(visit) {
  const { calibration, on, found, left, cycles, slip } = visit;
  const seed = seedOf(calibration);
  const wander = visit.wander * seededNoise(seed + 2).normal();
  const phases = { as_found: drifted(visit, found, wander), ...(left && { as_left: left }) };
  const rows = takeReadings({ ...visit, seed, startedAt: `${on}T09:10`, phases, cycles });
  return slip ? rows.map(withSlip(rows)) : rows;
}

function drifted({ on, since, drift }, planted, wander) {
  const years = since === undefined ? 0 : (Date.parse(on) - Date.parse(since)) / 86_400_000 / daysPerYear;
  return { ...planted, zero: planted.zero + drift * years + wander };
}

/** In the first reading in which they differ a little, the last two digits of the signal change places. */
function withSlip(rows) {
  const slipped = rows.find(({ signal }) => [1, 2].includes(Math.abs(signal.at(-1) - signal.at(-2))));
  return (row) =>
    row === slipped ? { ...row, signal: row.signal.slice(0, -2) + row.signal.at(-1) + row.signal.at(-2) } : row;
}

function permitOf(calibration) {
  return `EX-B-${calibration.slice(4)}`;
}

function seedOf(calibration) {
  return Number(calibration.replace(/\D/gu, "")) * 10;
}
