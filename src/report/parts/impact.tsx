import type { ImpactRecord } from "../../record/impact-schema.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeWithUncertainty } from "../../units/round-to-uncertainty.ts";
import { writePlain, writeSigned } from "../../units/write-number.ts";
import type { NumberStyle } from "../style/number-style.ts";
import { outsideStretchWords, signWords, valueErrorWords, windowWords } from "../texts/impact-texts.ts";
import { AnswerFact } from "./answer-fact.tsx";
import { Definitions } from "./definitions.tsx";
import { Fact } from "./heading.tsx";

type ImpactProps = { record: CalibrationRecord; style: NumberStyle };

/** Found out of tolerance: since when, how far, where, and what somebody decided or has yet to decide. */
export function Impact({ record, style }: ImpactProps) {
  const { impact } = record;
  if (impact === undefined) return null;
  return (
    <section aria-labelledby="impact-title">
      <h2 id="impact-title">Found out of tolerance: what it may have touched</h2>
      <p>
        <strong>{windowWords(impact)}</strong> {outsideStretchWords(record, impact, style)}
      </p>
      <ErrorsTable record={record} style={style} impact={impact} />
      <Decision record={record} impact={impact} />
      <Definitions keys={["impact.error", "impact.outside"]} />
    </section>
  );
}

/** One line for the first page. */
export function ImpactAnswer({ record: { impact } }: { record: CalibrationRecord }) {
  if (impact === undefined) return null;
  return (
    <AnswerFact name="What it may have touched">
      <strong>{impact.decision === null ? "not decided yet" : `decided by ${impact.decidedBy ?? "not stated"}`}</strong>
      {impact.since === null ? "" : `; in question since ${impact.since.performedOn}`}
    </AnswerFact>
  );
}

function ErrorsTable({ record, style, impact }: ImpactProps & { impact: ImpactRecord }) {
  const { distanceUnit: unit, valueUnit } = record.instrument;
  const hasValue = impact.rows.some(isValueOfItsOwn);
  const title = `As found, error of what the ${impact.of} ${impact.of === "controller" ? "showed" : "gave"}`;
  return (
    <section class="wide" aria-label={title} tabIndex={0}>
      <table class="plain">
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">Point</th>
            <th scope="col" class="number">
              Distance, {unit}
            </th>
            <th scope="col" class="number">
              Error ± U, {unit}
            </th>
            {hasValue && (
              <th scope="col" class="number">
                Error{valueUnit && `, ${valueUnit}`}
              </th>
            )}
            <th scope="col" class="number">
              Tolerance, {unit}
            </th>
            <th scope="col">Outside</th>
          </tr>
        </thead>
        <tbody>
          {impact.rows.map((row) => (
            <tr key={row.name}>
              <th scope="row">{row.name}</th>
              <td class="number">{writePlain(Number(row.distance.toPrecision(6)))}</td>
              <td class="number">{errorWords(row)}</td>
              {hasValue && <td class="number">{valueErrorWords(row.errorValue)}</td>}
              <td class="number">
                {writeSigned(row.toleranceLow, style.distance)} / {writeSigned(row.toleranceHigh, style.distance)}
              </td>
              <td>{row.isOutside === null ? "not known" : row.isOutside ? <strong>outside</strong> : "inside"}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small">
        {signWords(impact)} Between test points on a straight line, the worse of rising and falling; an outermost point
        stands for places within 2 % of span beyond it, and nothing is said of others.
      </p>
    </section>
  );
}

/** Where the controller shows the distance itself, its error would stand there twice. */
function isValueOfItsOwn({ errorValue, errorDistance }: ImpactRecord["rows"][number]): boolean {
  if (errorValue === null || errorDistance === null) return false;
  return Math.abs(errorValue - errorDistance) > 1e-9 * Math.abs(errorDistance);
}

function errorWords({ errorDistance, expandedUncertainty }: ImpactRecord["rows"][number]): string {
  if (errorDistance === null || expandedUncertainty === null) return "not measured there";
  const { value, uncertainty } = writeWithUncertainty(errorDistance, expandedUncertainty);
  return `${errorDistance > 0 ? "+" : ""}${value} ± ${uncertainty}`;
}

/** What was decided; lines for ink where nothing was. */
function Decision({ record: { calibration }, impact }: { record: CalibrationRecord; impact: ImpactRecord }) {
  const isOpen = impact.decision === null;
  return (
    <>
      <dl class="facts impact-facts">
        <Fact name="What it may have touched" value={calibration.affected} />
        <Fact name="Decision" value={impact.decision ?? undefined} />
        <Fact name="Decided by" value={impact.decidedBy ?? undefined} />
        <Fact name="Decided on" value={impact.decidedOn ?? undefined} />
        <Fact name="Owner told on" value={calibration.ownerToldOn} />
      </dl>
      {isOpen && (
        <table class="plain">
          <caption>To be decided and signed, even if the decision is that nothing was touched</caption>
          <thead>
            <tr>
              <th scope="col">Decision and its reason</th>
              <th scope="col">Name</th>
              <th scope="col">Date</th>
              <th scope="col">Signature</th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <td class="ink" />
              <td class="ink" />
              <td class="ink" />
              <td class="ink" />
            </tr>
          </tbody>
        </table>
      )}
    </>
  );
}
