import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import { writeWithUncertainty } from "../../units/round-to-uncertainty.ts";
import { writeFixed, writePlain } from "../../units/write-number.ts";

type UncertainLineProps = { title: string; record: CalibrationRecord; phase: PhaseRecord };

/** The line fitted under stated uncertainties: is it straight, and which distance does an output stand for. */
export function UncertainLine({ title, record, phase }: UncertainLineProps) {
  const { uncertainLine, judged, notDetermined } = phase;
  if (uncertainLine === null) {
    return (
      <p class="not-determined">
        {title}, line under stated uncertainties: not determined: {notDetermined.uncertainLine}.
      </p>
    );
  }
  const { instrument } = record;
  const outputUnit =
    judged === "signal" ? instrument.signalUnit : judged === "counts" ? "counts" : (instrument.valueUnit ?? "");
  return (
    <>
      <h3>{title}, line under stated uncertainties</h3>
      <p class="small">
        {methodWords[uncertainLine.method]} (ISO/TS 28037:2010). χ² = {writeFixed(uncertainLine.chiSquared, 1)} with{" "}
        {uncertainLine.degreesOfFreedom} degrees of freedom, 95 % limit {writeFixed(uncertainLine.chiSquaredLimit, 1)}:{" "}
        {uncertainLine.isStraight
          ? "a straight line and the scatter agree."
          : "the readings do not lie on one straight line within their scatter (curvature, hysteresis or a set-up that changed)."}
      </p>
      <section class="wide" aria-label={`${title}, distances by the line`} tabIndex={0}>
        <table class="plain inverse">
          <thead>
            <tr>
              <th scope="row">Output, {outputUnit}</th>
              {uncertainLine.inverse.map(({ output }) => (
                <th key={output} scope="col" class="number">
                  {writePlain(output)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">Distance ± standard uncertainty, {instrument.distanceUnit}</th>
              {uncertainLine.inverse.map(({ output, reference, standardUncertainty }) => {
                const { value, uncertainty } = writeWithUncertainty(reference, standardUncertainty);
                return (
                  <td key={output} class="number">
                    {value} ± {uncertainty}
                  </td>
                );
              })}
            </tr>
          </tbody>
        </table>
      </section>
    </>
  );
}

const methodWords = {
  "errors in both": "Errors in both: reference positions and outputs are uncertain",
  weighted: "Weighted least squares: the outputs are uncertain",
} as const;
