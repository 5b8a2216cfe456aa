import type { CalibrationRecord, SealedRecord } from "../../record/record-schema.ts";
import { Fact } from "./fact.tsx";
import { StandardsTable } from "./standards-table.tsx";
import { conditionFacts, decisionFacts, type Facts, itemFacts, workFacts } from "./stated-facts.ts";

/** What the result rests on: standards, conditions, target, item, method; an empty field says 'not stated'. */
export function Basis({ record }: { record: SealedRecord }) {
  return (
    <div class="basis">
      <StandardsTable record={record} />
      <div class="fact-groups">
        <FactGroup title="Item" facts={itemFacts(record)} />
        <FactGroup title="Work" facts={workFacts(record)} />
        <FactGroup title="Conditions and target" facts={conditionFacts(record)} />
        <FactGroup title="Decision" facts={decisionFacts(record)} />
      </div>
      <p class="small">
        Range, tolerance, signal ends and controller scaling were supplied by the owner of the loop; the result depends
        on them. No sampling: every test point listed was measured. Traceability: through the certificates of the
        standards listed above, each to the body named there.
      </p>
      <Warnings record={record} />
      <Inputs record={record} />
      <MadeBy record={record} />
    </div>
  );
}

function FactGroup({ title, facts }: { title: string; facts: Facts }) {
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

function Warnings({ record }: { record: CalibrationRecord }) {
  if (record.warnings.length === 0) return <p>Deviations that the program noticed: none.</p>;
  return (
    <>
      <h3>What the program noticed</h3>
      <ul class="notes">
        {warningGroups(record).map(([first, ...others]) => (
          <li key={`${first.place} ${first.says}`}>
            {first.says} <span class="where">({placesOf([first, ...others])})</span>
          </li>
        ))}
      </ul>
    </>
  );
}

type Warning = CalibrationRecord["warnings"][number];
type WarningGroup = readonly [Warning, ...Warning[]];

/** As many places a line names before it only counts. */
const mostPlaces = 6;

/** What tells one place of a column from another: the line of a file, the row or the cell of a sheet. */
const lineOrRow = /:\d+(?=:|$)|, (?:row \d+|cell [A-Z]+\d+)(?=$| \()/u;

/** Warnings of one cause together: of one code in one column, or with the same words. */
function warningGroups({ warnings }: CalibrationRecord): readonly WarningGroup[] {
  const groups = new Map<string, [Warning, ...Warning[]]>();
  for (const warning of warnings) {
    const key = JSON.stringify([warning.code, warning.place.replace(lineOrRow, "")]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [warning]);
    else group.push(warning);
  }
  return [...groups.values()];
}

function placesOf(group: WarningGroup): string {
  const places = group.slice(0, mostPlaces).map(({ place }) => place);
  return group.length > mostPlaces ? `${places.join(", ")} and ${group.length - mostPlaces} more` : places.join(", ");
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

/** Which program computed this, and how it did on published examples just before: ISO/IEC 17025:2017, 7.11.2. */
function MadeBy({ record }: { record: CalibrationRecord }) {
  const { name, version, sha256, selfTest } = record.software;
  if (sha256 === undefined && selfTest === undefined) return null;
  return (
    <>
      <h3>Made by</h3>
      <ul class="notes digests">
        <li>
          {name} {version}
          {sha256 !== undefined && (
            <>
              , SHA-256 of the list of its files <code>{sha256}</code>
            </>
          )}
        </li>
        {selfTest && (
          <li>
            Published examples computed before: {selfTest.of}, as published: {selfTest.passed}
          </li>
        )}
      </ul>
    </>
  );
}
