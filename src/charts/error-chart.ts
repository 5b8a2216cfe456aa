import { leastOf } from "../numeric/least-and-greatest.ts";
import { isOutside } from "../record/is-outside.ts";
import { decidingPoints, type JudgedPart, worstPointOf } from "../record/loop-end.ts";
import { onceForEach } from "../record/once-for-each.ts";
import { type PhaseName, phaseNames, phaseWords } from "../record/phase-name.ts";
import { type NamedPhase, phasesOf } from "../record/phases-of.ts";
import { type Range, spanOf } from "../record/range.ts";
import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import { decimalsOf } from "../units/decimal-mark.ts";
import { writePlain, writeSigned } from "../units/write-number.ts";
import { axisDomain } from "./axis-domain.ts";
import { leftOutText, pointText, rangeText, sentenceCase, spreadText, toleranceText } from "./chart-words.ts";
import { distanceAxis } from "./distance-axis.ts";
import { createDrawing, type Drawing, type Row } from "./drawing/draw.ts";
import { directionLegend, type LegendItem, legendRows } from "./legend.ts";
import { type DrawnReading, endReadings, meanRows, readingRows, toleranceRows } from "./phase-rows.ts";
import { errorChartSpec } from "./specs/error-chart-spec.ts";
import { acceptanceRows, hasAcceptanceLimits, hasNoZone, uncertaintyRows } from "./uncertainty-rows.ts";

/** Wide for paper and screens, narrow for phones. */
export type ErrorChartSize = "wide" | "narrow";

const sizes = { wide: { width: 660, height: 270 }, narrow: { width: 380, height: 340 } } as const;
const legendRoom = { wide: { left: 0, width: 520 }, narrow: { left: -44, width: 258 } } as const;
/** So that the bars at either end of the range stay inside the plot. */
const barRoom = 0.03;
const draw = createDrawing(errorChartSpec, ["acceptance", "legendLimits"]);

/**
 * The error of every reading against the reference distance, as found and as left, with the tolerance, the
 * uncertainty of each judged mean, and the acceptance limits where they are not those of the tolerance.
 * @throws RangeError where no phase has a reading to draw
 */
export async function errorChart(record: CalibrationRecord, size: ErrorChartSize): Promise<Drawing> {
  const words = wordsOf(record);
  const rows = rowsOf(record);
  const svg = await draw({
    idPrefix: `error-${size}`,
    className: `chart error-chart ${size}`,
    title: words.title,
    description: words.description,
    size: sizes[size],
    signals: signalsOf(record, rows),
    data: {
      ...rows,
      limitLabels: limitLabelRows(record, rows),
      ...legendRows(legendOf(record, rows), legendRoom[size].width, legendRoom[size].left),
    },
  });
  return { svg, ...words };
}

type Rows = Readonly<Record<"readings" | "means" | "tolerance" | "uncertainties" | "acceptance", readonly Row[]>>;

function legendOf(record: CalibrationRecord, { acceptance }: Rows): readonly LegendItem[] {
  return [
    ...directionLegend(drawnPhases(record).map(({ name }) => name)),
    { kind: "area", text: "tolerance" },
    { kind: "bar", text: "± U" },
    ...limitItems(acceptance),
  ];
}

/** An acceptance limit for each phase that has some; named where both have. */
function limitItems(acceptance: readonly Row[]): readonly LegendItem[] {
  const series = phaseNames.filter((name) => acceptance.some((row) => row.series === name));
  return series.map((name) => ({
    kind: "limit",
    text: series.length === 1 ? "acceptance limit" : `acceptance limit, ${phaseWords[name]}`,
    series: name,
  }));
}

function drawnPhases(record: CalibrationRecord): readonly NamedPhase<PhaseRecord>[] {
  return phasesOf(record).filter(({ phase }) => endReadings(record, phase).length > 0);
}

/** As found is drawn last, for its open marks hide nothing. */
const rowsOf = onceForEach((record: CalibrationRecord): Rows => {
  const phases = phasesOf(record);
  const percentPerUnit = 100 / spanOf(record.instrument);
  const reach = spanOf(record.instrument) / 100;
  return {
    readings: phases.toReversed().flatMap(({ name, phase }) => readingRows(name, endReadings(record, phase))),
    means: phases.flatMap(({ name, phase }) => meanRows(name, decidingPoints(phase))),
    tolerance: toleranceRows(
      phases.map(({ phase }) => phase),
      1,
    ),
    uncertainties: phases.flatMap(({ name, phase }) => uncertaintyRows(name, decidingPoints(phase), percentPerUnit)),
    acceptance: phases.flatMap(({ name, phase }) => acceptanceRows(name, decidingPoints(phase), percentPerUnit, reach)),
  };
});

/** The limits of the tolerance with their numbers, each at the end of the range where less is drawn beside it. */
function limitLabelRows({ instrument }: CalibrationRecord, { tolerance, readings }: Rows): readonly Row[] {
  const [first, last] = [tolerance[0], tolerance.at(-1)];
  if (first === undefined || last === undefined) return [];
  const percentPerUnit = 100 / spanOf(instrument);
  return (["high", "low"] as const).map((side) => {
    const ends = [
      { at: last, align: "right" },
      { at: first, align: "left" },
    ].map(({ at, align }) => ({
      x: Number(at.x),
      y: Number(at[side]) * percentPerUnit,
      limit: Number(at[side]),
      align,
    }));
    const [end] = ends.toSorted(
      (one, other) => roomAt(other, readings, instrument) - roomAt(one, readings, instrument),
    );
    const { limit, ...place } = end ?? { x: 0, y: 0, limit: 0, align: "right" };
    const text = `${writeSigned(Number(limit.toPrecision(4)), decimalsOfLimit(limit))} ${instrument.distanceUnit}`;
    return { ...place, side, text };
  });
}

/** So much of the range lies below a label. */
const labelShare = 0.15;

/** How far the nearest reading of that end of the range is from a limit there. */
function roomAt({ x, y }: { x: number; y: number }, readings: readonly Row[], range: Range): number {
  const beside = readings.filter((reading) => Math.abs(Number(reading.x) - x) < labelShare * spanOf(range));
  return leastOf(beside.map((reading) => Math.abs(Number(reading.y) - y)));
}

/** As many decimals as four digits need. */
function decimalsOfLimit(limit: number): number {
  return decimalsOf(writePlain(Number(limit.toPrecision(4))));
}

function signalsOf(record: CalibrationRecord, { readings, tolerance, uncertainties, acceptance }: Rows) {
  const { distanceUnit } = record.instrument;
  const percentPerUnit = 100 / spanOf(record.instrument);
  const limits = tolerance.flatMap(({ low, high }) => [Number(low) * percentPerUnit, Number(high) * percentPerUnit]);
  const bars = uncertainties.flatMap(({ low, high }) => [Number(low), Number(high)]);
  const heights = [...readings, ...acceptance].map(({ y }) => Number(y));
  const yDomain = axisDomain([0, ...heights, ...bars, ...limits], { below: 0.09, above: 0.09 });
  return {
    ...distanceAxis(record, barRoom),
    yDomain,
    rightDomain: yDomain.map((percent) => percent / percentPerUnit),
    yTitle: "error, % of span",
    rightTitle: `error, ${distanceUnit}`,
  };
}

/** Once for both sizes. */
const wordsOf = onceForEach((record: CalibrationRecord): Omit<Drawing, "svg"> => {
  const drawn = drawnPhases(record).map(({ name, phase }) => ({
    ...{ name, of: phase.endOf },
    readings: endReadings(record, phase),
  }));
  const phases = phasesOf(record);
  const count = drawn.reduce((sum, { readings }) => sum + readings.length, 0);
  const spreads = drawn.map(
    ({ name, readings }) =>
      `${sentenceCase(phaseWords[name])}, ${readings.length} readings: ${spreadText(record, readings)}.`,
  );
  const worst = phases.flatMap(({ name, phase }) => {
    const point = worstPointOf(phase);
    return point === undefined ? [] : [`${phaseWords[name]} ${pointText(record, point)}`];
  });
  return {
    title: titleOf(record, drawn),
    caption:
      "Each mark is one reading; the lines join the means of each direction." +
      `${uncertaintyText(phases)}${leftOutText(
        phases.map(({ phase }) => phase),
        count,
      )}`,
    description:
      `Error of ${record.instrument.tag} against the reference distance, range ${rangeText(record)}. ` +
      `${spreads.join(" ")} ${toleranceText(record)} ` +
      `Worst mean error and its expanded uncertainty U: ${worst.join("; ")}.`,
  };
});

/** How the acceptance limits of a phase are drawn. */
const limitLines: Readonly<Record<PhaseName, string>> = { asFound: "dotted as found", asLeft: "dashed as left" };

/** What the caption says of the bars, of the acceptance limits where there are any, and of those that are not there. */
function uncertaintyText(phases: readonly NamedPhase<PhaseRecord>[]): string {
  const limited = phases.filter(({ phase }) => hasAcceptanceLimits(phase)).map(({ name }) => limitLines[name]);
  const hasLimits = limited.length > 0;
  const limits = hasLimits
    ? ` Lines without marks, ${limited.join(" and ")}, are the acceptance limits: a mean error between them passes.`
    : "";
  const where = hasLimits ? "Where none are drawn," : "No acceptance limits are drawn:";
  const absence = phases.some(({ phase }) => hasNoZone(phase))
    ? ` ${where} U is so large that no error could pass.`
    : "";
  const sides = phases.length > 1 ? ": as found to the left, as left to the right" : "";
  return (
    " The bar beside the marks is ± U, the expanded uncertainty, about the mean of the worse direction" +
    `${sides}.${limits}${absence}`
  );
}

type Drawn = { name: PhaseName; readings: readonly DrawnReading[]; of: JudgedPart };

/** The picture is of the stage that decides. */
const endTitles: Readonly<Record<Exclude<JudgedPart, "sensor">, string>> = {
  wiring: "Signal at the input card",
  "input card": "Raw counts of the input card",
  controller: "What the controller showed",
};

/** "As found, 3 of 66 readings lie outside the tolerance; as left, none does." */
function titleOf(record: CalibrationRecord, drawn: readonly Drawn[]): string {
  const totals = new Set(drawn.map(({ readings }) => readings.length));
  const end = drawn.at(-1)?.of ?? "sensor";
  const subject = end === "sensor" ? "" : `${endTitles[end]}: `;
  const first = end === "sensor" ? sentenceCase : (words: string) => words;
  const clauses = drawn.map(({ name, readings }, index) => {
    const outside = readings.filter((reading) => isOutside(reading.errorDistance, reading, record.instrument)).length;
    const verb = outside < 2 ? ["lies", "does"] : ["lie", "do"];
    if (index > 0) return `${phaseWords[name]}, ${amount(outside, readings.length, totals.size > 1)} ${verb[1]}`;
    const words = `${subject}${first(phaseWords[name])}, ${amount(outside, readings.length, true)}`;
    return `${words} ${readings.length === 1 ? "reading" : "readings"} ${verb[0]} outside the tolerance`;
  });
  return `${clauses.join("; ")}.`;
}

function amount(outside: number, total: number, isTotalSaid: boolean): string {
  if (outside === total && total > 1) return `all ${total}`;
  return `${outside === 0 ? "none" : outside}${isTotalSaid ? ` of ${total}` : ""}`;
}
