import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import { writeWithUncertainty } from "../../units/round-to-uncertainty.ts";
import { writeFixed, writePlain } from "../../units/write-number.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";

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
        {uncertainLine.degreesOfFreedom} degrees of freedom, 95 % limit {writeFixed(uncertainLine.chiSquaredLimit, 1)}
        {limitWords(uncertainLine)}:{" "}
        {uncertainLine.isStraight
          ? "a straight line and the scatter agree."
          : "the readings do not lie on one straight line within their scatter (curvature, hysteresis or a set-up that changed). No distance is read off such a line."}
      </p>
      {uncertainLine.inverse.length > 0 && (
        <DataTable
          label={`${title}, distances by the line`}
          kind="plain inverse is-wide"
          columns={inverseColumns(uncertainLine.inverse, outputUnit, instrument.distanceUnit)}
          rows={["the line"]}
        />
      )}
    </>
  );
}

/** What the limit is of; older records say nothing and mean chi-squared. */
function limitWords({ scatterDegreesOfFreedom }: NonNullable<PhaseRecord["uncertainLine"]>): string {
  if (scatterDegreesOfFreedom === undefined) return "";
  const freedom = scatterDegreesOfFreedom > 1000 ? "over 1000" : writeFixed(scatterDegreesOfFreedom, 0);
  return ` by F, for the scatter is an estimate with ${freedom} degrees of freedom`;
}

type Inverse = NonNullable<PhaseRecord["uncertainLine"]>["inverse"];

/** An output a column, and below it the distance that it stands for. */
function inverseColumns(inverse: Inverse, outputUnit: string, unit: string): readonly Column<string>[] {
  return [
    {
      ...{ heading: "Output", unit: outputUnit, isRowHeader: true },
      text: () => `Distance ± standard uncertainty, ${unit}`,
    },
    ...inverse.map(({ output, reference, standardUncertainty }): Column<string> => {
      const { value, uncertainty } = writeWithUncertainty(reference, standardUncertainty);
      return { heading: writePlain(output), kind: "number", text: () => `${value} ± ${uncertainty}` };
    }),
  ];
}

const methodWords = {
  "errors in both": "Errors in both: reference positions and outputs are uncertain",
  weighted: "Weighted least squares: the outputs are uncertain",
} as const;
