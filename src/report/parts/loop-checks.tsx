import { lastLooks } from "../../record/looks-by-item.ts";
import type { LoopCheckItem, LoopChecksRecord } from "../../record/loop-check-schema.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writePlain } from "../../units/write-number.ts";
import { Part } from "../annexes/part.tsx";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import {
  allowedWords,
  burdenWords,
  checkNumber,
  contradictionsOf,
  countWords,
  incompleteWords,
} from "../texts/loop-check-texts.ts";
import { AnswerFact } from "./answer-fact.tsx";

/** The loop around the sensor: what was looked at, what it gave, what it had to keep, what is still open. */
export function LoopChecks({ record }: { record: CalibrationRecord }) {
  const { loopChecks } = record;
  if (loopChecks === undefined) return null;
  const incomplete = incompleteWords(record);
  const burden = burdenWords(record);
  return (
    <Part id="loop-check" title="Loop check">
      <p>
        {countWords(loopChecks)}
        {incomplete && <strong> {incomplete}</strong>}
      </p>
      <Contradictions record={record} />
      {loopChecks.items.length > 0 && <ItemsTable items={loopChecks.items} />}
      {burden && <p class="small">{burden}</p>}
      {loopChecks.items.length > 0 && <NotLookedAt loopChecks={loopChecks} />}
    </Part>
  );
}

/** What a loop check adds to the first answer: what failed, what contradicts itself, what is open. */
export function LoopCheckAnswer({ record }: { record: CalibrationRecord }) {
  const { loopChecks } = record;
  if (loopChecks === undefined) return null;
  const incomplete = incompleteWords(record);
  const contradictions = contradictionsOf(record).map(({ item }) => item);
  if (loopChecks.items.length === 0 && contradictions.length === 0 && !incomplete) return null;
  const count = loopChecks.items.length === 0 ? "" : countWords(loopChecks);
  const hasFailed = lastLooks(loopChecks.items).some(({ result }) => result === "fail");
  return (
    <AnswerFact name="Loop check">
      {hasFailed ? <strong>{count}</strong> : count}
      {contradictions.length > 0 && <strong> Contradiction: {contradictions.join(", ")}.</strong>}
      {incomplete && <strong> {incomplete}</strong>}
    </AnswerFact>
  );
}

function Contradictions({ record }: { record: CalibrationRecord }) {
  return contradictionsOf(record).map(({ row, item, outside }) => (
    <p key={row}>
      <strong>
        Contradiction: {item} has the result pass, and yet: {outside.join("; ")}.
      </strong>
    </p>
  ));
}

function ItemsTable({ items }: { items: readonly LoopCheckItem[] }) {
  const ordered = items.toSorted((one, other) => (one.number ?? Infinity) - (other.number ?? Infinity));
  return (
    <DataTable
      kind="plain loop-checks"
      columns={itemColumns}
      rows={ordered}
      classOf={({ result, isContradiction }) => (result === "fail" || isContradiction ? "outside" : "")}
    />
  );
}

const itemColumns: readonly Column<LoopCheckItem>[] = [
  {
    ...{ heading: "Item", isRowHeader: true },
    text: ({ number, item }) => `${number === null ? "" : `${number}. `}${item}`,
  },
  { heading: "Remark", under: "Item", text: ({ remark }) => remark ?? "" },
  {
    ...{ heading: "Who and when", under: "Item" },
    text: ({ checkedBy, time }) => [checkedBy, time].filter((part) => part !== undefined).join(", "),
  },
  { heading: "Measured, allowed", cell: (item) => <Measured item={item} /> },
  { heading: "Result", text: ({ result }) => result },
  {
    ...{ heading: "Decided by", under: "Result" },
    text: ({ decidedBy }) => (decidedBy === "number" ? "by its number; no result was written" : ""),
  },
  {
    ...{ heading: "Contradiction", under: "Result" },
    text: ({ isContradiction }) => (isContradiction ? "contradicted by what lies outside" : ""),
  },
];

function Measured({ item }: { item: LoopCheckItem }) {
  const { measured, unit, computed, basis, found, outside } = item;
  const allowed = allowedWords(item);
  const limits = outside.length === 0 ? allowed : undefined;
  return (
    <>
      {measured !== undefined && measured !== null && (
        <span>{typeof measured === "number" ? `${writePlain(measured)} ${unit ?? ""}` : measured}</span>
      )}
      {outside.map((says) => (
        <span key={says} class="where">
          <strong>{says}</strong>
        </span>
      ))}
      {outside.length === 0 && computed !== null && (
        <span class="where">
          {checkNumber(computed)} {unit} by the tables
        </span>
      )}
      {outside.length === 0 && found !== null && <span class="where">{found}</span>}
      {limits && <span class="where">{limits}</span>}
      {basis && <span class="where">by {basis}</span>}
    </>
  );
}

function NotLookedAt({ loopChecks: { notLookedAt } }: { loopChecks: LoopChecksRecord }) {
  return (
    <p class="small">
      {notLookedAt.length === 0
        ? "Every item of the list that applies to this loop has a result."
        : `Not looked at, of the items that apply to this loop: ${notLookedAt.join(", ")}.`}
    </p>
  );
}
