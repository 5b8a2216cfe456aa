import type { ComponentChildren } from "preact";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeFixed, writePlain, writeSigned } from "../../units/write-number.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { riskWords } from "../texts/decision-texts.ts";
import { sourceWords } from "../texts/source-texts.ts";
import type { TrippedPhase } from "../texts/switching-texts.ts";
import {
  chatterWords,
  isSingleTripOutside,
  meanWords,
  percentWords,
  type SwitchedPhaseRecord,
  type SwitchingRecord,
  signedWithUncertainty,
} from "../texts/switching-texts.ts";

type FiguresProps = {
  record: CalibrationRecord;
  number: number;
  switching: SwitchingRecord;
  tripped: readonly TrippedPhase[];
};
type FigureRow = { name: string; limit: ComponentChildren; cell: (phase: SwitchedPhaseRecord) => ComponentChildren };

/** The figures of one output, a row each, the phases side by side, the limit at the end. */
export function SwitchedFigures({ record, number, switching, tripped }: FiguresProps) {
  const columns: readonly Column<FigureRow>[] = [
    { heading: "Figure", isRowHeader: true, text: ({ name }) => name },
    ...tripped.map(({ title, phase }): Column<FigureRow> => ({ heading: title, cell: ({ cell }) => cell(phase) })),
    { heading: "Limit", cell: ({ limit }) => limit },
  ];
  return (
    <DataTable
      label={`Figures of switched output ${number}`}
      kind="plain figures"
      columns={columns}
      rows={rowsOf(record, switching, tripped)}
    />
  );
}

function rowsOf(
  record: CalibrationRecord,
  { output }: SwitchingRecord,
  tripped: readonly TrippedPhase[],
): readonly FigureRow[] {
  const unit = record.instrument.distanceUnit;
  const tolerance = output.setPointTolerance;
  return [
    { name: "Operating distance", limit: "", cell: (phase) => meanCell(phase, "operating", unit) },
    { name: "Release distance", limit: "", cell: (phase) => meanCell(phase, "release", unit) },
    {
      name: `Set-point error ± U, on ${output.criticalDirection ?? "approach"}`,
      limit:
        tolerance === undefined ? "not stated" : `±${writePlain(tolerance)} ${unit}${acceptanceWords(tripped, unit)}`,
      cell: (phase) => setPointCell(phase, unit),
    },
    travelRow("Differential travel", "differential", tripped, unit),
    travelRow("Repeat accuracy over the cycles", "repeat", tripped, unit),
    { name: "Chatter", limit: "one change a run", cell: chatterCell },
    {
      name: "Statement",
      limit: "the worst of them",
      cell: (phase) => <strong>{phase.statement ?? missing(phase, "statement")}</strong>,
    },
  ];
}

function meanCell(phase: SwitchedPhaseRecord, which: "operating" | "release", unit: string) {
  return meanWords(phase, which, unit) ?? missing(phase, which);
}

function setPointCell(phase: SwitchedPhaseRecord, unit: string) {
  const { setPoint } = phase;
  if (setPoint === null) return missing(phase, "setPoint");
  const { error, expandedUncertainty, coverageFactor, decision } = setPoint;
  return (
    <>
      {signedWithUncertainty(error, expandedUncertainty)} {unit} (k = {writeFixed(coverageFactor, 2)}){stated(decision)}
      {isSingleTripOutside(setPoint) && <span class="where">the mean lies inside, a single trip outside</span>}
      {decision ? (
        <span class="where">risk that the true error lies outside: {riskWords(decision.specificRisk)}</span>
      ) : (
        missing(phase, "setPoint.decision")
      )}
    </>
  );
}

/** The limits inside which an error passes, where they are not those of the tolerance. */
function acceptanceWords(tripped: readonly TrippedPhase[], unit: string): string {
  const words = tripped.flatMap(({ title, phase }) => {
    const { decision, expandedUncertainty = 0 } = phase.setPoint ?? {};
    if (!decision || decision.guardBand === 0) return [];
    const { acceptanceLow: low, acceptanceHigh: high } = decision;
    const decimals = Math.max(0, 1 - Math.floor(Math.log10(expandedUncertainty)));
    const range =
      low === null || high === null
        ? "no error"
        : `${writeSigned(low, decimals)} to ${writeSigned(high, decimals)} ${unit}`;
    return [`; ${title.toLowerCase()} accepted: ${range}`];
  });
  return words.join("");
}

function travelRow(
  name: string,
  figure: "differential" | "repeat",
  tripped: readonly TrippedPhase[],
  unit: string,
): FigureRow {
  const judged = tripped.map(({ phase }) => phase[figure]).find((found) => found !== null);
  const limit = judged && (
    <>
      {writePlain(judged.limitPercent)} % <span class="where">{sourceWords(judged.limitFrom)}</span>
    </>
  );
  return { name, limit, cell: (phase) => travelCell(phase, figure, unit) };
}

function travelCell(phase: SwitchedPhaseRecord, figure: "differential" | "repeat", unit: string) {
  const found = phase[figure];
  if (found === null) return missing(phase, figure);
  const greatest = figure === "differential" ? phase.differential?.greatestOfOneCycle : undefined;
  const decimals = figure === "repeat" ? phase.decimals : phase.decimals + 1;
  return (
    <>
      {writeFixed(found.distance, decimals)} {unit}, {percentWords(found.percent)} of the operating distance
      {stated(found)}
      {greatest && (
        <span class="where">
          greatest in one cycle: {writeFixed(greatest.distance, phase.decimals)} {unit}, cycle {greatest.cycle}
        </span>
      )}
      {isReversed(phase) && figure === "differential" && (
        <span class="where">it releases nearer than it operates: were approach and recede exchanged?</span>
      )}
    </>
  );
}

/** Whatever delays a switch makes it release farther away than it operates. */
function isReversed({ operating, release }: SwitchedPhaseRecord): boolean {
  return operating !== null && release !== null && release.mean < operating.mean;
}

function chatterCell(phase: SwitchedPhaseRecord) {
  if (phase.chatter === null) return missing(phase, "chatter");
  return (
    <>
      {chatterWords(phase.chatter)}
      {stated(phase.chatter)}
    </>
  );
}

function stated(judged: { statement: string } | null) {
  if (judged === null) return null;
  return judged.statement === "pass" ? ": pass" : <strong>: {judged.statement}</strong>;
}

function missing({ notDetermined }: SwitchedPhaseRecord, figure: string) {
  return <span class="not-determined">not determined: {notDetermined[figure]}</span>;
}
