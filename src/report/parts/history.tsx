import type { Drawing } from "../../charts/drawing/draw.ts";
import type { OverTheYears } from "../../record/over-the-years-schema.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import type { NotesOfRecords } from "../columns/history-columns.tsx";
import { DriftTable, RecordsTable } from "./history-tables.tsx";
import { IntervalProposals } from "./interval-proposals.tsx";
import { Picture } from "./pictures.tsx";

/** The drawings of a history: one for paper and screens, one for phones. */
export type HistoryDrawings = { wide: Drawing | undefined; narrow: Drawing | undefined };

/** Over the years, on the page of a record: where a folder of filed records was given. */
export function History({ record, drawings }: { record: CalibrationRecord; drawings: HistoryDrawings | undefined }) {
  const { overTheYears, instrument } = record;
  if (overTheYears === undefined) return null;
  return (
    <>
      <p>
        From the filed records of this tag and this one. The test point whose forecast meets a limit first speaks for
        the loop.
      </p>
      <OverTheYearsParts years={overTheYears} unit={instrument.distanceUnit} drawings={drawings} />
    </>
  );
}

type PartsProps = {
  years: OverTheYears;
  unit: string;
  drawings: HistoryDrawings | undefined;
  notes?: NotesOfRecords | undefined;
};

/** Picture, records, drift, intervals: the same on the page of a record and on that of a tag. */
export function OverTheYearsParts({ years, unit, drawings, notes }: PartsProps) {
  return (
    <>
      {drawings?.wide && <Picture drawing={drawings.wide} kind="wide-only" />}
      {drawings?.narrow && <Picture drawing={drawings.narrow} kind="narrow-only" />}
      <RecordsTable years={years} unit={unit} notes={notes} />
      <DriftTable years={years} unit={unit} />
      <IntervalProposals years={years} unit={unit} />
    </>
  );
}
