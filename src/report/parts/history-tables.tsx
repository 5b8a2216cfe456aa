import type { OverTheYears, RecordOverTheYears } from "../../record/over-the-years-schema.ts";
import { decimalsForSignificant, writePlain, writeSigned } from "../../units/write-number.ts";
import {
  adjustmentWords,
  driftWords,
  errorWords,
  forecastWords,
  leadingPlaceOf,
  placeWords,
  stateWords,
} from "../texts/history-texts.ts";

type TableProps = { years: OverTheYears; unit: string };

/** Addresses of the records' pages, by calibration. */
export type RecordLinks = Readonly<Record<string, string>>;

/** Every record with what it found and left at the leading place, and the change since the one before. */
export function RecordsTable({ years, unit, links = {} }: TableProps & { links?: RecordLinks | undefined }) {
  const place = leadingPlaceOf(years);
  const where = place === undefined ? "" : ` at ${writePlain(place.distance)} ${unit}`;
  const title = `Records, with the error${where}`;
  return (
    <section class="wide" aria-label={title} tabIndex={0}>
      <table class="plain history">
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">Calibrated</th>
            <th scope="col">As found, error ± U, {unit}</th>
            <th scope="col">Change since the record before ± U, {unit}</th>
            <th scope="col">Adjustment</th>
            <th scope="col">As left, error ± U, {unit}</th>
          </tr>
        </thead>
        <tbody>
          {years.records.map((record) => (
            <RecordRow key={record.calibration} record={record} unit={unit} link={links[record.calibration]} />
          ))}
        </tbody>
      </table>
      {years.leftOut.length > 0 && <p class="small">Not taken: {years.leftOut.join("; ")}.</p>}
    </section>
  );
}

function RecordRow({ record, unit, link }: { record: RecordOverTheYears; unit: string; link: string | undefined }) {
  const { performedOn, calibration, revision, asFound, asLeft, change } = record;
  return (
    <tr class={record.isAdjusted ? "is-break" : undefined}>
      <th scope="row">
        {performedOn}
        <span class="where">
          {link === undefined ? calibration : <a href={link}>{calibration}</a>}
          {revision > 1 && `, revision ${revision}`}
        </span>
      </th>
      <StateCell state={asFound} unit={unit} />
      <td class="number">
        {change === null ? "–" : errorWords(change)}
        {change !== null && change.perYear !== null && (
          <span class="where">{writeSigned(change.perYear, decimalsForSignificant(change.perYear, 2))} a year</span>
        )}
      </td>
      <td>{record.isAdjusted ? <strong>{adjustmentWords(record)}</strong> : adjustmentWords(record)}</td>
      <StateCell state={asLeft} unit={unit} />
    </tr>
  );
}

function StateCell({ state, unit }: { state: RecordOverTheYears["asFound"]; unit: string }) {
  if (state === null) return <td class="number">–</td>;
  return (
    <td class="number">
      {errorWords(state.point)}
      <span class="where">{stateWords(state, unit)}</span>
    </td>
  );
}

/** The drift and the forecast at every test point and at both ends of the fitted line. */
export function DriftTable({ years, unit }: TableProps) {
  const title = "Drift since the last adjustment, and when its forecast meets a limit";
  return (
    <section class="wide" aria-label={title} tabIndex={0}>
      <table class="plain history drifts">
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">Where</th>
            <th scope="col">Records</th>
            <th scope="col">Drift, {unit} a year, with its 95 % confidence interval</th>
            <th scope="col">95 % prediction band</th>
          </tr>
        </thead>
        <tbody>
          {years.places.map((place, index) => (
            <tr key={`${place.kind} ${place.distance}`}>
              <th scope="row">
                {placeWords(place, unit)}
                {index === years.leading && <span class="where">speaks for the loop</span>}
              </th>
              <td class="number">{place.records}</td>
              <td class="number">
                {place.drift === null ? (
                  <span class="not-determined">{place.notDetermined.drift}</span>
                ) : (
                  driftWords(place.drift)
                )}
              </td>
              <td>{place.drift === null ? "–" : forecastWords(place)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small">
        Least squares of the error on time, since the last adjustment and from what it left. The band tells where one
        further result is expected, from the scatter of these; an error that all of them share, such as that of one
        standard, is not in it. Limits are the tolerance of the last record. The fitted line is that of the sensor.
      </p>
    </section>
  );
}
