import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writePlain } from "../../units/write-number.ts";
import { withUnit } from "./stated-facts.ts";

/** The standards used, each with its certificate, its due date and its uncertainty. */
export function StandardsTable({ record }: { record: CalibrationRecord }) {
  if (record.standards.length === 0) {
    return <p>Standards used: none is named, so this record does not show to what its results are traceable.</p>;
  }
  return (
    <section class="wide" aria-label="Standards used" tabIndex={0}>
      <table class="plain">
        <caption>Standards used; through their certificates the results are traceable as stated</caption>
        <thead>
          <tr>
            {[
              "Standard",
              "What it is",
              "Certificate",
              "Calibrated on",
              "Due on",
              "Traceable to",
              "U (k)",
              "Resolution",
            ].map((title) => (
              <th key={title} scope="col">
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {record.standards.map((standard) => (
            <tr key={standard.standard}>
              <th scope="row">{standard.standard}</th>
              <Cell text={[standard.description, standard.serial].filter(Boolean).join(", ")} />
              <Cell text={standard.certificate} />
              <Cell text={standard.calibratedOn} kind="date" />
              <Cell text={standard.dueOn} kind="date" />
              <Cell text={standard.traceableTo} />
              <Cell text={uncertaintyWords(standard)} />
              <Cell text={withUnit(standard.resolution, standard.uncertaintyUnit)} />
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Cell({ text, kind }: { text: string | undefined; kind?: "date" }) {
  return <td class={kind}>{text ? text : <span class="not-stated">not stated</span>}</td>;
}

function uncertaintyWords(standard: CalibrationRecord["standards"][number]): string | undefined {
  const uncertainty = withUnit(standard.expandedUncertainty, standard.uncertaintyUnit);
  if (uncertainty === undefined) return undefined;
  return standard.coverageFactor === undefined
    ? `${uncertainty} (k not stated)`
    : `${uncertainty} (k = ${writePlain(standard.coverageFactor)})`;
}
