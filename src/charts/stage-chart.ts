import { type PhaseName, phaseWords } from "../record/phase-name.ts";
import { spanOf } from "../record/range.ts";
import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import { axisDomain } from "./axis-domain.ts";
import { distanceText, leftOutText, percentText, sentenceCase, toleranceText } from "./chart-words.ts";
import { distanceAxis } from "./distance-axis.ts";
import { createDrawing, type Drawing, type Row } from "./drawing/draw.ts";
import { type LegendItem, legendRows } from "./legend.ts";
import { drawnReadings, toleranceRows } from "./phase-rows.ts";
import { smallChart, smallLegendWidth } from "./small-chart.ts";
import { stageChartSpec } from "./specs/stage-chart-spec.ts";

const draw = createDrawing(stageChartSpec);

type Stage = "sensor" | "controller";
type StageReading = { point: number; x: number; y: number; series: Stage; shape: Stage };

/** Sensor and controller against each other; none where a reading has no error of both. */
export async function stageChart(record: CalibrationRecord, name: PhaseName): Promise<Drawing | undefined> {
  const phase = record.phases[name];
  if (phase === undefined || phase.judged === "value") return undefined;
  const readings = stageReadings(record, phase);
  if (readings.length === 0) return undefined;
  const words = wordsOf(record, name, phase, readings);
  const tolerance = toleranceRows([phase], 100 / spanOf(record.instrument));
  const limits = tolerance.flatMap(({ low, high }) => [Number(low), Number(high)]);
  const svg = await draw({
    ...smallChart("stage", name, words),
    signals: {
      ...distanceAxis(record),
      yDomain: axisDomain([0, ...readings.map(({ y }) => y), ...limits], { below: 0.08, above: 0.08 }),
      yTitle: "error, % of span",
    },
    data: {
      readings,
      means: stageMeans(readings),
      tolerance,
      ...legendRows(legendOf(phase), smallLegendWidth),
    },
  });
  return { svg, ...words };
}

/** The stage before the controller, by what was read of it. */
function firstStage({ judged }: PhaseRecord): string {
  return judged === "counts" ? "sensor and input card" : "sensor";
}

function stageReadings(record: CalibrationRecord, phase: PhaseRecord): readonly StageReading[] {
  return drawnReadings(phase).flatMap(({ point, reference, errorPercentSpan, loopErrorDistance }) => {
    if (loopErrorDistance === undefined) return [];
    const loopPercent = (100 * loopErrorDistance) / spanOf(record.instrument);
    return [
      { point, x: reference, y: errorPercentSpan, series: "sensor", shape: "sensor" },
      { point, x: reference, y: loopPercent, series: "controller", shape: "controller" },
    ] as const;
  });
}

/** Mean error of each stage at each test point, rising and falling together. */
function stageMeans(readings: readonly StageReading[]): readonly Row[] {
  const groups = new Map<string, StageReading[]>();
  for (const reading of readings) {
    const key = `${reading.series} ${reading.point}`;
    groups.set(key, [...(groups.get(key) ?? []), reading]);
  }
  return [...groups.values()].map((group) => {
    const [{ series, shape }] = group as [StageReading];
    return { x: mean(group.map(({ x }) => x)), y: mean(group.map(({ y }) => y)), series, shape };
  });
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function legendOf(phase: PhaseRecord): readonly LegendItem[] {
  return [
    { kind: "series", text: firstStage(phase), series: "sensor", shapes: ["sensor"] },
    { kind: "series", text: "controller", series: "controller", shapes: ["controller"] },
    { kind: "area", text: "tolerance" },
  ];
}

function wordsOf(
  record: CalibrationRecord,
  name: PhaseName,
  phase: PhaseRecord,
  readings: readonly StageReading[],
): Omit<Drawing, "svg"> {
  const [sensor, controller] = [worstOf(readings, "sensor"), worstOf(readings, "controller")];
  const stage = firstStage(phase);
  const at = ({ x, y }: StageReading) => `${percentText(record, y)} of span at ${distanceText(record, x)}`;
  return {
    title:
      `${sentenceCase(phaseWords[name])}, the error reaches ${percentText(record, sensor.y)} of span in the ${stage} ` +
      `and ${percentText(record, controller.y)} in the controller.`,
    caption:
      `Each mark is one reading: filled circles and the solid line are the ${stage}, open diamonds and the dashed line ` +
      "what the controller showed. Where the two lines part, the error arises between them. The shaded band is the " +
      `tolerance.${leftOutText([phase], readings.length / 2)}`,
    description:
      `Errors of ${record.instrument.tag} by stage, ${phaseWords[name]}, ${readings.length / 2} readings. Farthest from ` +
      `zero: ${stage} ${at(sensor)}, controller ${at(controller)}. ${toleranceText(record)}`,
  };
}

function worstOf(readings: readonly StageReading[], stage: Stage): StageReading {
  return readings
    .filter(({ series }) => series === stage)
    .reduce((left, right) => (Math.abs(right.y) > Math.abs(left.y) ? right : left));
}
