import type { OverTheYears, RecordOverTheYears } from "../record/over-the-years-schema.ts";
import type { PhaseName } from "../record/phase-name.ts";
import { axisDomain } from "./axis-domain.ts";
import { createDrawing, type Drawing, type Row } from "./drawing/draw.ts";
import type { ErrorChartSize } from "./error-chart.ts";
import { type DrawnHistory, historyWords } from "./history-words.ts";
import { type LegendItem, legendRows } from "./legend.ts";
import { historyChartSpec } from "./specs/history-chart-spec.ts";

const height = 340;
const sizes = { wide: { width: 900, height }, narrow: { width: 380, height } } as const;
/** What the axis and its labels leave of the width. */
const plotWidth = { wide: 820, narrow: 300 } as const;
const legendRoom = { wide: { left: 0, width: 800 }, narrow: { left: -44, width: 318 } } as const;
/** A band that reaches far out is cut, so that the errors stay to be seen: half the tolerance beyond each limit. */
const mostBeyond = 0.5;
/** Parts of what is shown. */
const [roomAtEnds, roomAboveAndBelow] = [0.04, 0.07];
/** Records of one week would be blown up into a curve: a quarter of a year is the least that is shown, milliseconds. */
const shortestTime = 90 * 86_400_000;
/** A word along its line is as wide as this, pixels; one nearer than that to the word before is left out. */
const widthOfUprightWord = 15;

const mayBeEmpty = ["band", "joined", "breaks", "breakLabels", "crossing", "legendLines", "legendLimits"];
const draw = createDrawing(historyChartSpec, mayBeEmpty);

/** The errors of every record at the leading place, with U, limits, adjustments and forecast; none without a result. */
export async function historyChart(history: DrawnHistory, size: ErrorChartSize): Promise<Drawing | undefined> {
  const { overTheYears: years } = history;
  const place = years.leading === null ? undefined : years.places[years.leading];
  const states = stateRows(years);
  if (place === undefined || states.length === 0) return undefined;
  const words = historyWords(history, place, states.length);
  const [start, end] = xDomainOf(years);
  const svg = await draw({
    idPrefix: `history-${size}`,
    className: `chart history-chart ${size}`,
    title: words.title,
    description: words.description,
    size: sizes[size],
    signals: {
      xDomain: [start, end],
      yDomain: yDomainOf(years, states, place),
      xTitle: "day of the calibration",
      yTitle: `error, ${history.distanceUnit}`,
    },
    data: {
      states,
      joined: joinedRows(years, states),
      tolerance: toleranceRows(states, start, end),
      band: years.band.map(({ on, value, low, high }) => ({ x: Date.parse(on), value, low, high })),
      ...breakRows(years, states, (end - start) / plotWidth[size]),
      crossing: crossingRows(place),
      legendLimits: [],
      ...legendRows(legendOf(years), legendRoom[size].width, legendRoom[size].left),
    },
  });
  return { svg, ...words };
}

/** A row a state, in the order of time; a stretch ends with what was found before an adjustment. */
function stateRows({ records }: OverTheYears): readonly Row[] {
  let stretch = 0;
  return records.flatMap((record) => {
    const before = stretch;
    if (record.isAdjusted) stretch += 1;
    return [...stateRow(record, "asFound", before), ...stateRow(record, "asLeft", stretch)];
  });
}

function stateRow(record: RecordOverTheYears, series: PhaseName, stretch: number): readonly Row[] {
  const point = record[series]?.point;
  if (point === undefined || point === null) return [];
  const { errorDistance: y, expandedUncertainty, toleranceLow, toleranceHigh } = point;
  const [low, high] = [y - expandedUncertainty, y + expandedUncertainty];
  return [
    { x: Date.parse(record.performedOn), y, low, high, series, shape: "sensor", stretch, toleranceLow, toleranceHigh },
  ];
}

/** The fitted line joins what lies on it. */
function joinedRows({ band, records }: OverTheYears, states: readonly Row[]): readonly Row[] {
  const last = records.filter(({ isAdjusted }) => isAdjusted).length;
  return band.length === 0 ? states : states.filter(({ stretch }) => stretch !== last);
}

function xDomainOf({ records, band }: OverTheYears): readonly [number, number] {
  const days = [...records.map(({ performedOn }) => performedOn), ...band.map(({ on }) => on)].map((on) =>
    Date.parse(on),
  );
  return axisDomain(days, { below: roomAtEnds, above: roomAtEnds }, shortestTime);
}

function yDomainOf({ band }: OverTheYears, states: readonly Row[], place: Limits): readonly [number, number] {
  const beyond = mostBeyond * (place.toleranceHigh - place.toleranceLow);
  const [least, most] = [place.toleranceLow - beyond, place.toleranceHigh + beyond];
  const reach = band.flatMap(({ low, high }) => [Math.max(low, least), Math.min(high, most)]);
  const bars = states.flatMap((row) => [row.low, row.high, row.toleranceLow, row.toleranceHigh].map(Number));
  return axisDomain([0, place.toleranceLow, place.toleranceHigh, ...bars, ...reach], {
    below: roomAboveAndBelow,
    above: roomAboveAndBelow,
  });
}

type Limits = Pick<OverTheYears["places"][number], "toleranceLow" | "toleranceHigh">;

/** The tolerance of a record holds until the next one; the first one before it, too. */
function toleranceRows(states: readonly Row[], start: number, end: number): readonly Row[] {
  const row = (x: number, { toleranceLow, toleranceHigh }: Row): Row => ({
    x,
    low: Number(toleranceLow),
    high: Number(toleranceHigh),
  });
  const [first, last] = [states[0] as Row, states.at(-1) as Row];
  return [row(start, first), ...states.map((state) => row(Number(state.x), state)), row(end, last)];
}

/** Every adjustment has its line; its word stands where fewer errors lie, and only where there is room. */
function breakRows(
  { records }: OverTheYears,
  states: readonly Row[],
  perPixel: number,
): { breaks: readonly Row[]; breakLabels: readonly Row[] } {
  const end = states.reduce((sum, { y }) => sum + Number(y), 0) > 0 ? "bottom" : "top";
  const breaks = records
    .filter(({ isAdjusted }) => isAdjusted)
    .map(({ performedOn, adjustment }) => ({ x: Date.parse(performedOn), end, text: adjustment ?? "not stated" }));
  const breakLabels: Row[] = [];
  for (const one of breaks) {
    const before = breakLabels.at(-1);
    if (before === undefined || one.x - Number(before.x) >= widthOfUprightWord * perPixel) breakLabels.push(one);
  }
  return { breaks, breakLabels };
}

function crossingRows({ meets, toleranceLow, toleranceHigh }: OverTheYears["places"][number]): readonly Row[] {
  if (meets === null) return [];
  const { on, limit } = meets;
  return [{ x: Date.parse(on), y: limit === "upper" ? toleranceHigh : toleranceLow, limit, text: on }];
}

const forecastLegend: readonly LegendItem[] = [
  { kind: "series", text: "fitted line", series: "neutral", shapes: [] },
  { kind: "limit", text: "95 % prediction band" },
];

function legendOf({ records, band }: OverTheYears): readonly LegendItem[] {
  const isThere = (series: PhaseName) => records.some((record) => record[series]?.point);
  return [
    ...(isThere("asFound") ? [{ kind: "shape", text: "as found", shape: "sensor", series: "asFound" } as const] : []),
    ...(isThere("asLeft") ? [{ kind: "shape", text: "as left", shape: "sensor", series: "asLeft" } as const] : []),
    { kind: "area", text: "tolerance" },
    { kind: "bar", text: "± U" },
    ...(band.length === 0 ? [] : forecastLegend),
  ];
}
