import { directionChart } from "../../charts/direction-chart.ts";
import type { Drawing } from "../../charts/drawing/draw.ts";
import { errorChart } from "../../charts/error-chart.ts";
import { historyChart } from "../../charts/history-chart.ts";
import { residualChart } from "../../charts/residual-chart.ts";
import { reteachChart } from "../../charts/reteach-chart.ts";
import { soundChart } from "../../charts/sound-chart.ts";
import { stageChart } from "../../charts/stage-chart.ts";
import { tripChart } from "../../charts/trip-chart.ts";
import { phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import type { PageDrawings } from "../../report/page-drawings.ts";
import { withDecimalMark } from "../../units/decimal-mark.ts";

/** Draws every picture of a record, one after the other; where the data do not allow one, the page says so. */
export async function drawPictures(record: CalibrationRecord): Promise<PageDrawings> {
  const marked = <Drawn>(draw: () => Drawn) => withDecimalMark(record.instrument.decimalMark, draw);
  const drawable = phasesOf(record).filter(({ phase }) => phase.counted.used > 0);
  const stages: Drawing[] = [];
  const others: Drawing[] = [];
  const absent: string[] = [];
  for (const { name, title } of drawable) {
    const stage = await marked(() => stageChart(record, name));
    const residuals = await marked(() => residualChart(record, name));
    const directions = await marked(() => directionChart(record, name));
    if (stage !== undefined) stages.push(stage);
    others.push(...[residuals, directions].filter((drawing) => drawing !== undefined));
    if (residuals === undefined) absent.push(`${title}, residuals from the line: not drawn, there is no line.`);
    if (directions === undefined) {
      absent.push(`${title}, rising against falling: not drawn, no test point was read in both directions.`);
    }
  }
  for (const index of (record.switching ?? []).keys()) {
    const trips = await marked(() => tripChart(record, index));
    if (trips !== undefined) others.push(trips);
  }
  const hasErrors = drawable.length > 0;
  return {
    errorWide: hasErrors ? await marked(() => errorChart(record, "wide")) : undefined,
    errorNarrow: hasErrors ? await marked(() => errorChart(record, "narrow")) : undefined,
    stages,
    reteach: await marked(() => reteachChart(record)),
    sound: await marked(() => soundChart(record)),
    history: await marked(() => historyDrawings(record)),
    others,
    absent,
  };
}

async function historyDrawings(record: CalibrationRecord): Promise<PageDrawings["history"]> {
  const { overTheYears, instrument } = record;
  if (overTheYears === undefined) return undefined;
  const history = { tag: instrument.tag, distanceUnit: instrument.distanceUnit, overTheYears };
  const [wide, narrow] = await Promise.all([historyChart(history, "wide"), historyChart(history, "narrow")]);
  return { wide, narrow };
}
