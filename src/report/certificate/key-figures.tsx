import type { FigureKey } from "../../record/figure-definitions.ts";
import { worstPointOf } from "../../record/loop-end.ts";
import { phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import { writeWithUncertainty } from "../../units/round-to-uncertainty.ts";
import { writeFixed, writePlain } from "../../units/write-number.ts";
import { keptTogether } from "../kept-together.ts";
import { figureRows } from "../parts/figure-rows.tsx";
import { figuresTitle } from "../parts/figures-table.tsx";
import { standardUncertaintyWords } from "../parts/standards-table.tsx";
import type { NumberStyle } from "../style/number-style.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";

type KeyRow = { name: string; cell: (phase: PhaseRecord) => preact.ComponentChild };

const keys: readonly FigureKey[] = ["zeroError", "spanError", "linearity.independent", "hysteresis", "repeatability"];

/** The five figures that a loop is known by, each phase beside the other, and U of the worst point. */
export function KeyFigures({ record, style }: { record: CalibrationRecord; style: NumberStyle }) {
  const rows = figureRows(record, style).filter(({ key }) => keys.includes(key));
  const columns: readonly Column<KeyRow>[] = [
    { heading: "% of span", isRowHeader: true, text: ({ name }) => name },
    ...phasesOf(record).map(
      ({ title, phase }): Column<KeyRow> => ({ heading: title, kind: "number", cell: ({ cell }) => cell(phase) }),
    ),
  ];
  const uncertainty: KeyRow = {
    name: `U, worst point${stageWords(record)}`,
    cell: (phase) => uncertaintyWords(record, phase),
  };
  return (
    <DataTable
      caption={`${figuresTitle(record)}; in full in annex B`}
      kind="plain figures key-figures"
      columns={columns}
      rows={[...rows.map(({ name, cell }) => ({ name, cell })), uncertainty]}
    />
  );
}

/** The stage of the worst point where that is not the sensor; in the order of the columns where they differ. */
function stageWords(record: CalibrationRecord): string {
  const stages = new Set(phasesOf(record).flatMap(({ phase }) => phase.worstPoint?.of ?? []));
  return [...stages].every((stage) => stage === "sensor") ? "" : `, ${[...stages].join(", ")}`;
}

function uncertaintyWords({ instrument }: CalibrationRecord, phase: PhaseRecord) {
  const worst = worstPointOf(phase);
  if (worst === undefined) return <span class="not-determined">not determined</span>;
  const { uncertainty } = writeWithUncertainty(worst.errorDistance, worst.expandedUncertainty);
  return (
    <>
      {uncertainty} {instrument.distanceUnit}
      <span class="where">
        k = {writeFixed(worst.coverageFactor, 2)}, at {writePlain(Number(worst.point.toPrecision(6)))}{" "}
        {instrument.distanceUnit}
      </span>
    </>
  );
}

/** The standards in one line each: certificate and due date. */
export function StandardsInShort({ record: { standards, calibration } }: { record: CalibrationRecord }) {
  if (standards.length === 0) {
    return (
      <p class="small">
        Standards used: none is named, so this record does not show to what its results are traceable.
      </p>
    );
  }
  return (
    <div class="standards-in-short">
      <p class="caption">Standards: certificate, due date, U; in full in annex I</p>
      <ul>
        {standards.map((standard) => (
          <li key={standard.standard}>
            <strong>
              <bdi>{standard.standard}</bdi>
            </strong>
            : {standard.certificate ?? "no certificate stated"}, due {standard.dueOn ?? "not stated"}, U{" "}
            {keptTogether(standardUncertaintyWords(standard) ?? "not stated")}
            <OutOfInterval standard={standard} used={calibration.performedOn} />
          </li>
        ))}
      </ul>
    </div>
  );
}

type OutOfIntervalProps = { standard: CalibrationRecord["standards"][number]; used: string | undefined };

/** A standard that was used after it was due, or before it was calibrated, says so where it is named. */
function OutOfInterval({ standard: { calibratedOn, dueOn }, used }: OutOfIntervalProps) {
  if (used === undefined) return null;
  const isOverdue = dueOn !== undefined && dueOn < used;
  if (!isOverdue && (calibratedOn === undefined || calibratedOn <= used)) return null;
  return (
    <>
      ; <strong>used {isOverdue ? "after it was due" : `before it was calibrated, on ${calibratedOn}`}</strong>
    </>
  );
}
