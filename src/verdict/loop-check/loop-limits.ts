import { beamFootprint } from "../../analysis/air/beam-footprint.ts";
import { isDetermined } from "../../analysis/figures/figure.ts";
import { milliampFaultLevels } from "../../analysis/readings/fault-signal.ts";
import { loopOf } from "../../analysis/readings/loop.ts";
import { toleranceAt } from "../../analysis/readings/tolerance.ts";
import { burdenLimit, highestCurrent, loopBurden } from "../../analysis/stages/loop-burden.ts";
import type { Calibration } from "../../model/calibration.ts";
import type { Instrument, Output } from "../../model/instrument.ts";
import { spanOf } from "../../model/range.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { writePlain } from "../../units/write-number.ts";
import { inputMatch } from "../switching/input-match.ts";
import { inputLimitsVolts } from "../switching/input-voltage.ts";
import { type AppliedKey, keyOfOutput } from "./loop-items.ts";

/**
 * What an item of a loop check has to keep, as far as the workbook tells: limits of its number, the same quantity as
 * the workbook itself gives it, or a statement that follows from elsewhere; and what that rests on.
 */
export type LoopLimit = {
  low?: number | undefined;
  high?: number | undefined;
  computed?: number | undefined;
  /** A verdict that needs no number of the technician's, in words: "as left, what the controller shows: fail". */
  finding?: { isPass: boolean; says: string };
  basis: string;
};

export type LimitContext = {
  instrument: Instrument;
  calibration: Calibration;
  outputs: readonly Output[];
};

type Limits = Readonly<Partial<Record<AppliedKey, LoopLimit | undefined>>>;

/**
 * The limits of a loop check that follow from the rows of the instrument, its outputs and the calibration.
 *
 * @param context checked rows
 * @returns limit by the item's key, in the item's unit; an item that the rows say nothing of is absent
 * Source: NAMUR NE 43 (fault thresholds of a 4–20 mA loop between failure and measurement: 3.6 to 3.8 and 20.5 to
 *   21 mA); IEC 61131-2 (input voltages); `burden.ts`, `beam-footprint.ts`, `tolerance.ts` for the rest. That counts are
 *   held to the whole tolerance of the loop is our own choice: the card has no tolerance of its own in the workbook.
 * @example loopLimits({ ...needs, instrument: { ...needs.instrument, blindZone: 250 } }).get("blind zone") // { high:
 *   400, computed: 250, basis: "range_lower, blind_zone" }
 */
export function loopLimits(context: LimitContext): ReadonlyMap<AppliedKey, LoopLimit> {
  const all: Limits = {
    ...wiringLimits(context.instrument),
    ...controllerLimits(context.instrument),
    ...siteLimits(context),
    ...Object.assign({}, ...context.outputs.map((output) => outputLimits(output))),
  };
  const entries = Object.entries(all) as [AppliedKey, LoopLimit | undefined][];
  return new Map(entries.flatMap(([key, limit]) => (limit === undefined ? [] : [[key, limit] as const])));
}

function wiringLimits(instrument: Instrument): Limits {
  const { supplyMin, supplyMax, loopPowered, loadMin, cardResistance } = instrument;
  const supply = limit({ low: supplyMin, high: supplyMax, basis: "supply_min, supply_max" });
  return {
    "supply without load": supply,
    "supply at full output": supply,
    "number of wires":
      loopPowered === undefined
        ? undefined
        : { low: loopPowered ? 2 : 3, high: loopPowered ? 2 : undefined, basis: "loop_powered" },
    burden: burdenOf(instrument),
    "load of the voltage output": limit({ low: loadMin, computed: cardResistance, basis: "load_min, card_resistance" }),
  };
}

function burdenOf(instrument: Instrument): LoopLimit | undefined {
  const total = loopBurden(instrument);
  const allowed = burdenLimit(instrument);
  return limit({
    high: isDetermined(allowed) ? allowed.greatest : undefined,
    computed: isDetermined(total) ? total.total : undefined,
    basis:
      isDetermined(allowed) && allowed.setBy === "supply"
        ? `(supply_voltage − supply_min) / ${writePlain(highestCurrent(instrument))} mA`
        : "load_max",
  });
}

const fifths = [0, 25, 50, 75, 100] as const;

function controllerLimits(instrument: Instrument): Limits {
  const { rangeLower, countsLower, countsUpper, valueLower, valueUpper, signalLower, signalUpper } = instrument;
  const { faultLevels, toleranceTerms, characteristics } = loopOf(instrument);
  const { low: faultLow, high: faultHigh } = faultLevels;
  const least = faultLow === milliampFaultLevels.low ? 3.8 : Math.min(signalLower, signalUpper);
  const greatest = faultHigh === milliampFaultLevels.high ? 20.5 : Math.max(signalLower, signalUpper);
  const onLine = (percent: number, lower: number | undefined, upper: number | undefined, basis: string) => {
    if (lower === undefined || upper === undefined) return undefined;
    const { low, high } = toleranceAt(
      toleranceTerms,
      characteristics.signal,
      rangeLower + (percent / 100) * spanOf(instrument),
    );
    const slope = (upper - lower) / spanOf(instrument);
    const ends = [low, high].map((room) => lower + (percent / 100) * (upper - lower) + room * slope);
    return { low: leastOf(ends), high: greatestOf(ends), basis: `${basis}, tolerance` };
  };
  return {
    ...Object.fromEntries(
      fifths.flatMap((percent) => [
        [`counts at ${percent} %`, onLine(percent, countsLower, countsUpper, "counts_lower, counts_upper")],
        [`value at ${percent} %`, onLine(percent, valueLower, valueUpper, "value_lower, value_upper")],
      ]),
    ),
    response: limit({ high: instrument.responseMax, basis: "response_max" }),
    "low fault threshold": thresholdBetween(faultLow, least, faultLow === milliampFaultLevels.low || "fault_low"),
    "high fault threshold": thresholdBetween(
      faultHigh,
      greatest,
      faultHigh === milliampFaultLevels.high || "fault_high",
    ),
  };
}

/** A fault threshold lies between the sensor's fault level and what it still measures, a little beyond its range by NE 43. */
function thresholdBetween(fault: number | undefined, measured: number, statedIn: true | string): LoopLimit | undefined {
  if (fault === undefined) return undefined;
  const basis = statedIn === true ? "NAMUR NE 43" : `${statedIn}, signal ends`;
  return { low: Math.min(fault, measured), high: Math.max(fault, measured), basis };
}

function siteLimits({ instrument, calibration }: LimitContext): Limits {
  const { blindZone, rangeLower, rangeUpper, beamAngle, airMin, airMax } = instrument;
  const { targetWidth, targetHeight, airTemperature } = calibration;
  const sides = [targetWidth, targetHeight].filter((side) => side !== undefined);
  const beam = beamAngle === undefined ? undefined : beamFootprint(rangeUpper, beamAngle);
  return {
    target: limit({
      low: beam !== undefined && isDetermined(beam) ? beam : undefined,
      computed: sides.length === 0 ? undefined : leastOf(sides),
      basis: "beam at range_upper, 2 · d · tan(beam_angle / 2)",
    }),
    "blind zone": { high: rangeLower, computed: blindZone, basis: "range_lower, blind_zone" },
    "drives running": driftOfSignal(instrument),
    air: limit({ low: airMin, high: airMax, computed: airTemperature, basis: "air_min, air_max" }),
  };
}

/** The narrower side of the tolerance at the middle of the range, as a change of the signal either way. */
function driftOfSignal(instrument: Instrument): LoopLimit {
  const { toleranceTerms, characteristics } = loopOf(instrument);
  const middle = instrument.rangeLower + spanOf(instrument) / 2;
  const { low, high } = toleranceAt(toleranceTerms, characteristics.signal, middle);
  const perDistance = Math.abs(instrument.signalUpper - instrument.signalLower) / spanOf(instrument);
  const most = Math.min(-low, high) * perDistance;
  return { low: -most, high: most, basis: "tolerance at the middle of the range" };
}

function outputLimits(output: Output): Limits {
  const { output: name, inputType, onVoltage, offVoltage, setPoint, setPointTolerance } = output;
  const match = inputMatch(output);
  const levels = inputType === undefined ? undefined : inputLimitsVolts[inputType];
  const basis = `input type ${inputType} (IEC 61131-2)`;
  return {
    [keyOfOutput("sink or source", name)]: isDetermined(match)
      ? {
          finding: {
            isPass: match.statement === "pass",
            says: `an output of kind ${output.polarity} needs a ${match.needs} input, and this one is ${output.controllerInput}`,
          },
          basis: "polarity, controller_input",
        }
      : undefined,
    [keyOfOutput("on-state voltage", name)]: levels && { ...levels.on, computed: onVoltage, basis },
    [keyOfOutput("off-state voltage", name)]: levels && { ...levels.off, computed: offVoltage, basis },
    [keyOfOutput("output load", name)]: limit({ high: output.currentMax, basis: "current_max" }),
    [keyOfOutput("trip point", name)]:
      setPointTolerance === undefined
        ? undefined
        : { low: setPoint - setPointTolerance, high: setPoint + setPointTolerance, basis: "set_point_tolerance" },
  };
}

/** A limit that has neither side says nothing. */
function limit({ low, high, computed, basis }: LoopLimit): LoopLimit | undefined {
  return low === undefined && high === undefined ? undefined : { low, high, computed, basis };
}
