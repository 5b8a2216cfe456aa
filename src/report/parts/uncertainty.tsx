import { leastOf } from "../../numeric/least-and-greatest.ts";
import { worstPointOf } from "../../record/loop-end.ts";
import { phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import { writeFixed, writePlain, writeSignificant } from "../../units/write-number.ts";
import type { NumberStyle } from "../style/number-style.ts";
import { riskWords, ruleWords } from "../texts/decision-texts.ts";
import { endWords } from "../texts/page-texts.ts";
import { BudgetTable, budgetTitle } from "./budget-table.tsx";
import { BudgetsTable } from "./budgets-table.tsx";
import { PointsTable } from "./points-table.tsx";
import { UncertainLine } from "./uncertain-line.tsx";

/** Uncertainty and decision: each test point with its U and statement, the budgets, the rule and its risk. */
export function Uncertainty({ record, style }: { record: CalibrationRecord; style: NumberStyle }) {
  return (
    <>
      <p>
        Decision rule: {ruleWords(record)}. {originOfRule(record)} The statement of a phase is that of its worst test
        point{record.decisionRule.name === "simple acceptance" && " or reading"}.
      </p>
      <p class="small">
        U is the expanded uncertainty, printed to two significant digits, and the error to the same place; nothing is
        rounded before it is decided.
      </p>
      {ratioNote(record)}
      {managedNote(record)}
      {falseAcceptNote(record)}
      {phasesOf(record).map(({ name, title, phase }) => (
        <PhaseUncertainty key={name} title={title} record={record} phase={phase} style={style} />
      ))}
    </>
  );
}

type PhaseProps = { title: string; record: CalibrationRecord; phase: PhaseRecord; style: NumberStyle };

function PhaseUncertainty({ title, record, phase, style }: PhaseProps) {
  const worst = worstPointOf(phase);
  if (worst === undefined) return null;
  const { points, endPoints = [] } = phase;
  return (
    <>
      <PointsTable title={`${title}, test points`} record={record} points={points} style={style} />
      {endPoints.length > 0 && (
        <PointsTable
          title={`${title}, what ${endWords[phase.endOf]}`}
          record={record}
          points={endPoints}
          style={style}
        />
      )}
      <h3>
        {title}, budget of the worst point: {budgetTitle(record, worst)}
      </h3>
      <BudgetTable record={record} point={worst} label={`${budgetTitle(record, worst)}, ${title.toLowerCase()}`} />
      <BudgetsTable record={record} title={`${title}, budgets of all points`} points={points} />
      {endPoints.length > 0 && (
        <BudgetsTable record={record} title={`${title}, ${phase.endOf}, budgets of all points`} points={endPoints} />
      )}
      <UncertainLine title={title} record={record} phase={phase} />
    </>
  );
}

function originOfRule({ decisionRule }: CalibrationRecord): string {
  const { prescribedBy, agreedOn } = decisionRule;
  const who = prescribedBy === undefined ? "Who prescribed it: not stated." : `Prescribed by ${prescribedBy}.`;
  return agreedOn === undefined ? who : `${who} Agreed on ${agreedOn}.`;
}

/** Says where the uncertainty is large for the tolerance. */
function ratioNote(record: CalibrationRecord) {
  const ratios = phasesOf(record).flatMap(({ phase }) =>
    [...phase.points, ...(phase.endPoints ?? [])].map(({ testUncertaintyRatio }) => testUncertaintyRatio),
  );
  const least = leastOf(ratios);
  const asked = record.decisionRule.minimumTestUncertaintyRatio;
  if (ratios.length === 0 || least >= asked) return null;
  return (
    <p class="small">
      <strong>
        Test uncertainty ratio: {writeSignificant(least, 2)} at the least, under the {writePlain(asked)} asked for.
      </strong>{" "}
      The uncertainty takes a large part of the tolerance there.
    </p>
  );
}

function falseAcceptNote(record: CalibrationRecord) {
  const { falseAccept } = record;
  if (falseAccept === undefined) return null;
  return (
    <p class="small">
      Over all such loops, if {rateWords(record, falseAccept.inToleranceRate)}: a loop is passed though out of tolerance
      with {riskWords(falseAccept.falseAccept)}, failed though in tolerance with {riskWords(falseAccept.falseReject)}{" "}
      (errors taken as normal about the middle of the tolerance, and the same over the range; test uncertainty ratio{" "}
      {writeFixed(falseAccept.testUncertaintyRatio, 1)}).{trueRateWords(falseAccept)}
    </p>
  );
}

function trueRateWords({ trueRate, spread, results = 1 }: NonNullable<CalibrationRecord["falseAccept"]>): string {
  if (trueRate === undefined || spread === undefined) return "";
  const judged = results > 1 ? ` All ${results} results have to pass.` : "";
  const taken =
    spread === 0
      ? "What measuring adds explains that rate alone, so no spread is left for the loops"
      : `With what measuring adds taken out, ${writeFixed(trueRate, 1)} % of them are truly in tolerance`;
  return `${judged} ${taken}.`;
}

/** Where the managed guard band does not hold, what is done instead, and why. */
function managedNote(record: CalibrationRecord) {
  const points = phasesOf(record).flatMap(({ phase }) => [...phase.points, ...(phase.endPoints ?? [])]);
  const reasons = [...new Set(points.flatMap(({ whyNotManaged }) => whyNotManaged ?? []))];
  if (reasons.length === 0) return null;
  const count = points.filter(({ whyNotManaged }) => whyNotManaged !== undefined).length;
  return (
    <p class="small">
      <strong>
        At {count} of {points.length} test points the managed guard band does not hold, and a guard band of U is applied
        instead:
      </strong>{" "}
      {reasons.join("; ")}.
    </p>
  );
}

/** What the rate rests on: the owner's word, or counts in the filing folder. */
function rateWords({ instrument, filedRate }: CalibrationRecord, inToleranceRate: number): string {
  if (instrument.inToleranceRate !== undefined || filedRate === undefined) {
    return `${writePlain(inToleranceRate)} % of them are found in tolerance as the owner states`;
  }
  const { inTolerance, of } = filedRate;
  const percent = writeFixed(inToleranceRate, 1);
  return `${percent} % of them are found in tolerance, as ${inTolerance} of ${of} filed records found theirs (that count and one more on either side)`;
}
