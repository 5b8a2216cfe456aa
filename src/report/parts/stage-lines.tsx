import type { PhaseCauses } from "../../record/causes-schema.ts";
import { writePlain } from "../../units/write-number.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { numberWords } from "../texts/cause-texts.ts";

/** The straight line of the error of each stage on what the stage was given. */
export function StageLines({ title, lines }: { title: string; lines: PhaseCauses["stageLines"] }) {
  const name = `${title}, the line of each stage`;
  return (
    <DataTable
      label={name}
      caption={`${name}; errors and residuals in percent of span`}
      kind="plain is-wide stage-lines"
      columns={stageColumns}
      rows={lines}
    />
  );
}

type StageLine = PhaseCauses["stageLines"][number];

const stageColumns: readonly Column<StageLine>[] = [
  { heading: "Stage", isRowHeader: true, text: ({ stage }) => stage },
  {
    ...{ heading: "From and to", under: "Stage" },
    text: ({ from, to, inputUnit }) => `${writePlain(from)} to ${writePlain(to)} ${inputUnit}`,
  },
  { heading: "Readings", kind: "number", text: ({ readings }) => String(readings) },
  { heading: "Left out", kind: "number", text: ({ excluded }) => String(excluded) },
  {
    ...{ heading: "Gain", kind: "number" },
    text: ({ gain, gainStandardUncertainty }) => numberWords(gain, gainStandardUncertainty, false),
  },
  { heading: "Error at 0 %", kind: "number", text: ({ errorAtLower }) => errorWords(errorAtLower) },
  { heading: "Error at 100 %", kind: "number", text: ({ errorAtUpper }) => errorWords(errorAtUpper) },
  {
    ...{ heading: "Greatest residual", kind: "number" },
    text: ({ greatestResidual }) => numberWords(greatestResidual, undefined, true),
  },
  { heading: "No error at", kind: "number", text: crossingWords },
];

function errorWords({ percentSpan, standardUncertainty }: { percentSpan: number; standardUncertainty: number }) {
  return numberWords(percentSpan, standardUncertainty, true);
}

function crossingWords({ zeroCrossing, inputUnit }: StageLine): string {
  if (zeroCrossing === null) return "nowhere for certain";
  return `${numberWords(zeroCrossing.value, zeroCrossing.standardUncertainty, false)} ${inputUnit}`;
}
