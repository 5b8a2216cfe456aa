import type { CalibrationRecord } from "../../record/record-schema.ts";

/** What it is: record number, tag, place, date; and that it is a draft until somebody has signed it. */
export function Heading({ record }: { record: CalibrationRecord }) {
  const { calibration, instrument } = record;
  return (
    <header class="heading">
      <div>
        <p class="kind">
          Calibration record <strong class="draft">Draft, not signed</strong>
        </p>
        <h1>{instrument.tag}</h1>
        <p class="subject">{instrument.description ?? "description not stated"}</p>
      </div>
      <dl class="facts">
        <Fact name="Record" value={calibration.calibration} />
        <Fact name="Performed on" value={calibration.performedOn} />
        <Fact name="Performed by" value={calibration.performedBy} />
        <Fact name="Location" value={instrument.location} />
      </dl>
    </header>
  );
}

/** A name and what was stated; what the workbook leaves empty says so. */
export function Fact({ name, value }: { name: string; value: string | undefined }) {
  return (
    <div class="fact">
      <dt>{name}</dt>
      <dd>{value === undefined ? <span class="not-stated">not stated</span> : value}</dd>
    </div>
  );
}
