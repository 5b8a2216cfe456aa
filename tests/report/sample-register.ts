import type { Register, RegisterRow } from "../../src/record/register-form.ts";

/** An invented loop that is in order. */
export function registerRow(more: Partial<RegisterRow> = {}): RegisterRow {
  return {
    tag: "LT-1",
    description: "silo, distance to the surface",
    location: "hall",
    criticality: "quality",
    calibration: "C-1",
    revision: 1,
    path: "LT-1/2026-01-01_C-1_r1.html",
    performedOn: "2026-01-01",
    unit: "mm",
    asFound: "pass",
    overall: "pass",
    asLeft: null,
    worstAsFound: { errorDistance: 1.5, errorPercentSpan: 0.15 },
    worstAsLeft: null,
    recommendation: "leave",
    drift: { percentSpanPerYear: 0.05 },
    due: { state: "not due", on: "2027-01-01", days: 37, why: null },
    records: 1,
    forecast: { notDetermined: "not within 20 years" },
    ...{ missing: [], serial: "S-1", procedure: null, signedBy: ["Ada Specimen (authorised)"] },
    fingerprint: "plum indigo basil puffin · ba78 16bf 8f01 cfea",
    ...{ standards: ["BAR-1 (B-7)"], decided: null, daysLate: null },
    ...more,
  };
}

/** Four loops, one of each kind of trouble. */
export const register: Register = {
  on: "2026-11-25",
  soonDays: 30,
  rows: [
    registerRow(),
    registerRow({ tag: "LT-10", due: { state: "overdue", on: "2026-11-01", days: -24, why: null } }),
    registerRow({
      tag: "LT-2",
      asFound: "fail",
      worstAsFound: { errorDistance: -30, errorPercentSpan: -3 },
      recommendation: "replace",
      drift: { notDetermined: "one record only" },
      due: { state: "not in tolerance", on: null, days: null, why: "not left in tolerance" },
    }),
    registerRow({
      tag: "LT-3",
      description: null,
      location: null,
      criticality: "safety",
      due: { state: "due soon", on: "2026-12-01", days: 6, why: null },
    }),
  ],
  standards: [
    { standard: "BAR-1", certificate: "B-7", dueOn: "2026-11-24", isOverdue: true, tags: 4 },
    { standard: "METER-1", certificate: "M-7", dueOn: "2027-11-24", isOverdue: false, tags: 3 },
  ],
  openFindings: [
    {
      tag: "LT-2",
      calibration: "C-1",
      revision: 1,
      path: "LT-2/2026-01-01_C-1_r1.html",
      performedOn: "2026-01-01",
      asFound: "fail",
      days: 328,
    },
  ],
  late: [
    {
      ...{ tag: "LT-3", calibration: "C-1", path: "LT-3/2026-01-01_C-1_r1.html" },
      ...{ dueOn: "2025-12-01", performedOn: "2026-01-01", days: 31 },
    },
  ],
  years: [],
  records: 9,
  disposedSince: 0,
};
