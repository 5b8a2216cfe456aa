import { fingerprintOf } from "../../proof/fingerprint-words.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import { counted } from "../../units/counted.ts";
import { Part } from "../annexes/part.tsx";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { type ChangeRow, otherRows, resultRows, typedRows } from "../texts/amendment-texts.ts";
import { timeWords } from "../texts/signing-texts.ts";
import { Fact } from "./fact.tsx";

/** Which record a later revision replaces, why, by whom, when, and everything that changed. */
export function AmendmentPart({ record }: { record: SealedRecord }) {
  const { amendment, revision } = record;
  if (amendment === undefined) return null;
  const { replaces, reason, by, at } = amendment;
  const others = otherRows(amendment);
  return (
    <Part id="amendment" title={`Amendment ${revision - 1} to record ${replaces.calibration}`} kind="amendment">
      <p>
        This is revision {revision}, a record of its own. It replaces revision {replaces.revision} (fingerprint{" "}
        <strong class="fingerprint">{fingerprintOf(replaces.sha256)}</strong>), which stays on file as it was issued.
      </p>
      <dl class="typed">
        <Fact name="Reason" value={reason} />
        <Fact name="Amended by" value={by} />
        <Fact name="Amended at" value={timeWords(at)} />
      </dl>
      <ChangeTable title="What was changed in the tables" rows={typedRows(record, amendment)} />
      <ChangeTable title="What that changed in the results" rows={resultRows(amendment)} />
      {others.length > 0 && (
        <details>
          <summary>
            {counted(others.length, "further field of the record differs", "further fields of the record differ")}
          </summary>
          <p class="small">
            By their paths in the record’s data, which holds every digit; [] stands for a list, the places in it count
            from 1.
          </p>
          <ChangeTable title="Further fields" rows={others} isLong />
        </details>
      )}
    </Part>
  );
}

const changeColumns: readonly Column<ChangeRow>[] = [
  { heading: "What", isRowHeader: true, text: ({ what }) => what },
  { heading: "Before", text: ({ before }) => before },
  { heading: "Now", text: ({ after }) => after },
];

function ChangeTable({ title, rows, isLong }: { title: string; rows: readonly ChangeRow[]; isLong?: boolean }) {
  if (rows.length === 0) return <p>{title}: nothing.</p>;
  const kind = isLong ? "plain changes all-changes" : "plain changes";
  return <DataTable label={title} caption={title} kind={kind} columns={changeColumns} rows={rows} />;
}
