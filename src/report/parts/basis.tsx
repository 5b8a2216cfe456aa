import type { CalibrationRecord } from "../../record/record-schema.ts";
import { plainNumber } from "../number-style.ts";
import { toleranceWords } from "../page-texts.ts";
import { Fact } from "./heading.tsx";

/** What the result rests on: standards, conditions, target, item, method; an empty field says 'not stated'. */
export function Basis({ record }: { record: CalibrationRecord }) {
  return (
    <section aria-labelledby="basis-title">
      <h2 id="basis-title">Basis of the result</h2>
      <Standards record={record} />
      <div class="fact-groups">
        <FactGroup title="Item" facts={itemFacts(record)} />
        <FactGroup title="Work" facts={workFacts(record)} />
        <FactGroup title="Conditions and target" facts={conditionFacts(record)} />
        <FactGroup title="Decision" facts={decisionFacts(record)} />
      </div>
      <p class="small">
        Range, tolerance, signal ends and controller scaling were supplied by the owner of the loop; the result depends
        on them. No sampling: every test point listed was measured. Uncertainty of the results: not evaluated in this
        record beyond what the fit itself gives.
      </p>
      <Warnings record={record} />
      <Inputs record={record} />
    </section>
  );
}

function Standards({ record }: { record: CalibrationRecord }) {
  if (record.standards.length === 0) {
    return <p>Standards used: none is named, so this record does not show to what its results are traceable.</p>;
  }
  return (
    <div class="wide" role="region" aria-label="Standards used" tabIndex={0}>
      <table class="plain">
        <caption>Standards used; through their certificates the results are traceable as stated</caption>
        <thead>
          <tr>
            {["Standard", "What it is", "Certificate", "Calibrated on", "Due on", "Traceable to", "U (k)", "Resolution"].map(
              (title) => (
                <th key={title} scope="col">
                  {title}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {record.standards.map((standard) => (
            <tr key={standard.standard}>
              <th scope="row">{standard.standard}</th>
              <Cell text={[standard.description, standard.serial].filter(Boolean).join(", ")} />
              <Cell text={standard.certificate} />
              <Cell text={standard.calibratedOn} />
              <Cell text={standard.dueOn} />
              <Cell text={standard.traceableTo} />
              <Cell text={uncertaintyWords(standard)} />
              <Cell text={withUnit(standard.resolution, standard.uncertaintyUnit)} />
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Cell({ text }: { text: string | undefined }) {
  return <td>{text ? text : <span class="not-stated">not stated</span>}</td>;
}

function FactGroup({ title, facts }: { title: string; facts: readonly (readonly [string, string | undefined])[] }) {
  return (
    <div class="fact-group">
      <h3>{title}</h3>
      <dl>
        {facts.map(([name, value]) => (
          <Fact key={name} name={name} value={value} />
        ))}
      </dl>
    </div>
  );
}

type Facts = readonly (readonly [string, string | undefined])[];

function itemFacts({ instrument, calibration }: CalibrationRecord): Facts {
  const { distanceUnit, signalUnit, valueUnit } = instrument;
  return [
    ["Tag", instrument.tag],
    ["Principle", instrument.principle],
    ["Serial number", instrument.serial],
    ["Range", range(instrument.rangeLower, instrument.rangeUpper, distanceUnit)],
    ["Signal", range(instrument.signalLower, instrument.signalUpper, signalUnit)],
    ["Counts", range(instrument.countsLower, instrument.countsUpper, "counts")],
    ["Controller value", range(instrument.valueLower, instrument.valueUpper, valueUnit ?? "")],
    ["Condition as received", calibration.conditionReceived],
    ["Depends on the loop", instrument.criticality],
  ];
}

function workFacts({ calibration }: CalibrationRecord): Facts {
  return [
    ["Laboratory", calibration.laboratory],
    ["Address", calibration.laboratoryAddress],
    ["Owner", calibration.owner],
    ["Place of the work", calibration.place],
    ["Reason", calibration.reason],
    ["Procedure", calibration.procedure],
    ["Deviations from it", calibration.deviations],
    ["Work order", calibration.workOrder],
    ["Received on", calibration.receivedOn],
    ["Performed on", calibration.performedOn],
    ["Issued on", calibration.issuedOn],
    ["Bypass permit", calibration.bypassPermit],
    ["Returned to service", calibration.returnedToService],
    ["Remarks", calibration.remarks],
  ];
}

function conditionFacts({ calibration, instrument }: CalibrationRecord): Facts {
  const { targetWidth, targetHeight } = calibration;
  const size =
    targetWidth === undefined || targetHeight === undefined
      ? undefined
      : `${plainNumber(targetWidth)} × ${plainNumber(targetHeight)} ${instrument.distanceUnit}`;
  return [
    ["Air temperature", withUnit(calibration.airTemperature, "°C")],
    ["Relative humidity", withUnit(calibration.relativeHumidity, "%")],
    ["Air pressure", withUnit(calibration.pressure, "hPa")],
    ["Target", calibration.targetMaterial],
    ["Target size", size],
    ["Target tilt", withUnit(calibration.targetTilt, "°")],
    ["Target surface", calibration.targetSurface],
  ];
}

function decisionFacts(record: CalibrationRecord): Facts {
  const { instrument } = record;
  return [
    ["Tolerance", toleranceWords(record)],
    ["Where it comes from", instrument.toleranceSource],
    ["Who set it", instrument.toleranceSetBy],
    ["Decision rule", "simple acceptance (ILAC-G8:09/2019, guard band 0)"],
    ["Prescribed by", record.decisionRule.prescribedBy],
    ["Statement covers", "every reading listed in the working; overall the worst of them"],
  ];
}

function Warnings({ record }: { record: CalibrationRecord }) {
  if (record.warnings.length === 0) return <p>Deviations that the program noticed: none.</p>;
  return (
    <>
      <h3>What the program noticed</h3>
      <ul class="notes">
        {record.warnings.map(({ place, says }) => (
          <li key={`${place} ${says}`}>
            {says} <span class="where">({place})</span>
          </li>
        ))}
      </ul>
    </>
  );
}

function Inputs({ record }: { record: CalibrationRecord }) {
  return (
    <>
      <h3>Tables read</h3>
      <ul class="notes digests">
        {record.inputs.files.map(({ name, sha256, byteLength }) => (
          <li key={name}>
            {name}, {byteLength} bytes, SHA-256 <code>{sha256}</code>
          </li>
        ))}
      </ul>
    </>
  );
}

function range(lower: number | undefined, upper: number | undefined, unit: string): string | undefined {
  if (lower === undefined || upper === undefined) return undefined;
  return `${plainNumber(lower)} to ${plainNumber(upper)} ${unit}`.trim();
}

function withUnit(value: number | undefined, unit: string | undefined): string | undefined {
  return value === undefined ? undefined : `${plainNumber(value)} ${unit ?? ""}`.trim();
}

function uncertaintyWords(standard: CalibrationRecord["standards"][number]): string | undefined {
  const uncertainty = withUnit(standard.expandedUncertainty, standard.uncertaintyUnit);
  if (uncertainty === undefined) return undefined;
  return standard.coverageFactor === undefined
    ? `${uncertainty} (k not stated)`
    : `${uncertainty} (k = ${plainNumber(standard.coverageFactor)})`;
}
