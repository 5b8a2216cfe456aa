import { type PhaseName, phaseWords } from "../record/phase-name.ts";
import { phasesOf } from "../record/phases-of.ts";
import { spanOf } from "../record/range.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import { decimalsForSignificant, writeFixed, writePlain } from "../units/write-number.ts";
import { axisDomain } from "./axis-domain.ts";
import { sentenceCase } from "./chart-words.ts";
import { createDrawing, type Drawing, type Row } from "./drawing/draw.ts";
import { type LegendItem, legendRows } from "./legend.ts";
import { smallLegendWidth } from "./small-chart.ts";
import { tripChartSpec } from "./specs/trip-chart-spec.ts";

type Switching = NonNullable<CalibrationRecord["switching"]>[number];
type SwitchedPhase = NonNullable<Switching["phases"][PhaseName]>;
type Trip = SwitchedPhase["trips"][number] & { cycle: number };
type Tripped = { name: PhaseName; phase: SwitchedPhase; trips: readonly Trip[] };

const draw = createDrawing(tripChartSpec, ["travels", "tolerance", "legendAreas"]);

const heightOfRest = 108;
const heightOfRow = 24;
/** An axis that shows a thousandth of the span at least. */
const shortestPart = 0.001;

/** The trips of one switched output around its set point, a row a cycle; none where it was not tripped. */
export async function tripChart(record: CalibrationRecord, index: number): Promise<Drawing | undefined> {
  const switching = record.switching?.[index];
  const tripped = switching === undefined ? [] : trippedPhases(switching);
  if (switching === undefined || tripped.length === 0) return undefined;
  const words = wordsOf(record, switching, tripped);
  const rowLabels = [...new Set(tripped.flatMap(({ name, trips }) => trips.map((trip) => rowLabel(name, trip))))];
  const limits = toleranceRow(switching);
  const svg = await draw({
    idPrefix: `trips-${index}`,
    className: "chart trip-chart",
    // Without the output's name: no text of a table stands in an attribute.
    title: `Trips of switched output ${index + 1} around its set point`,
    description: words.description,
    size: { width: 470, height: heightOfRest + heightOfRow * rowLabels.length },
    signals: {
      xDomain: xDomain(record, switching, tripped, limits),
      xTitle: `reference distance, ${record.instrument.distanceUnit}`,
      rowLabels,
    },
    data: {
      trips: tripped.flatMap(({ name, trips }) =>
        trips.map((trip) => ({
          x: trip.reference,
          row: rowLabel(name, trip),
          series: name,
          shape: trip.direction,
        })),
      ),
      travels: tripped.flatMap(travelRows),
      setPoint: [{ x: switching.output.setPoint }],
      tolerance: limits,
      legendAreas: [],
      ...legendRows(legendOf(tripped, limits), smallLegendWidth),
    },
  });
  return { svg, ...words };
}

function trippedPhases(switching: Switching): readonly Tripped[] {
  return phasesOf(switching).map(({ name, phase }) => ({ name, phase, trips: withCycles(phase.trips) }));
}

/** A trip that names no cycle is numbered by its place among those of its direction. */
function withCycles(trips: SwitchedPhase["trips"]): readonly Trip[] {
  return trips.map((trip, index) => ({
    ...trip,
    cycle: trip.cycle ?? trips.slice(0, index + 1).filter(({ direction }) => direction === trip.direction).length,
  }));
}

function rowLabel(name: PhaseName, { cycle }: Trip): string {
  return `${phaseWords[name]} ${cycle}`;
}

function travelRows({ name, trips }: Tripped): readonly Row[] {
  return trips.flatMap((trip) => {
    if (trip.direction !== "approach" || !trip.isCounted) return [];
    const back = trips.find(
      ({ direction, cycle, isCounted }) => direction === "recede" && cycle === trip.cycle && isCounted,
    );
    if (back === undefined) return [];
    return [{ row: rowLabel(name, trip), operating: trip.reference, release: back.reference, series: name }];
  });
}

function toleranceRow({ output: { setPoint, setPointTolerance } }: Switching): readonly Row[] {
  if (setPointTolerance === undefined) return [];
  return [{ low: setPoint - setPointTolerance, high: setPoint + setPointTolerance }];
}

function xDomain(
  record: CalibrationRecord,
  { output }: Switching,
  tripped: readonly Tripped[],
  limits: readonly Row[],
): readonly [number, number] {
  const distances = tripped.flatMap(({ trips }) => trips.map(({ reference }) => reference));
  const shown = [output.setPoint, ...distances, ...limits.flatMap(({ low, high }) => [Number(low), Number(high)])];
  return axisDomain(shown, { below: 0.06, above: 0.06 }, shortestPart * spanOf(record.instrument));
}

function legendOf(tripped: readonly Tripped[], limits: readonly Row[]): readonly LegendItem[] {
  return [
    ...tripped.map(
      ({ name }): LegendItem => ({
        kind: "series",
        text: phaseWords[name],
        series: name,
        shapes: ["approach", "recede"],
      }),
    ),
    { kind: "shape", text: "approach", shape: "approach" },
    { kind: "shape", text: "recede", shape: "recede" },
    { kind: "series", text: "set point", series: "neutral", shapes: [] },
    ...(limits.length === 0 ? [] : [{ kind: "area", text: "tolerance" } as const]),
  ];
}

function wordsOf(
  { instrument }: CalibrationRecord,
  { output }: Switching,
  tripped: readonly Tripped[],
): Omit<Drawing, "svg"> {
  const unit = instrument.distanceUnit;
  const { output: name, setPoint, setPointTolerance } = output;
  const tolerance = setPointTolerance === undefined ? "" : ` ± ${writePlain(setPointTolerance)}`;
  const verb = output.criticalDirection === "recede" ? "releases" : "operates";
  const [first, ...others] = tripped.map(({ name: phaseName, phase }) => ({ words: phaseWords[phaseName], phase }));
  const point = `its set point (${writePlain(setPoint)}${tolerance} ${unit})`;
  const clauses = [
    ...(first === undefined ? [] : [`${offWords(first.phase, unit, point)} ${first.words}`]),
    ...others.map(({ phase, words }) => `${offWords(phase, unit, "it")} ${words}`),
  ];
  return {
    title: `Output ${name} ${verb} ${clauses.join(" and ")}.`,
    caption:
      "Each mark is one change of state, a row a cycle: triangles that point left were taken with the target coming " +
      "nearer, those that point right with it going away. The line between them is the differential travel. As found: " +
      "open marks, dashed lines; as left: filled marks, solid lines.",
    description: tripped
      .map(({ name: phaseName, phase }) => `${sentenceCase(phaseWords[phaseName])}: ${meansWords(phase, unit)}.`)
      .join(" "),
  };
}

/** "20.5 mm short of its set point (420 ± 15 mm)": which way, and how far. */
function offWords({ setPoint }: SwitchedPhase, unit: string, point: string): string {
  if (setPoint === null) return `at an unknown distance from ${point}`;
  const far = writeFixed(Math.abs(setPoint.error), decimalsForSignificant(setPoint.expandedUncertainty, 2));
  if (Number(far) === 0) return `at ${point}`;
  return `${far} ${unit} ${setPoint.error < 0 ? "short of" : "beyond"} ${point}`;
}

function meansWords({ operating, release, decimals }: SwitchedPhase, unit: string): string {
  const words = (what: string, mean: SwitchedPhase["operating"]) =>
    mean === null ? [] : [`${what} at ${writeFixed(mean.mean, decimals + 1)} ${unit}, mean of ${mean.count}`];
  return [...words("operates", operating), ...words("releases", release)].join("; ");
}
