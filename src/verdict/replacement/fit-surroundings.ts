import type { Candidate, Instrument } from "../../model/instrument.ts";
import { greatestOf } from "../../numeric/least-and-greatest.ts";
import { limitWords, numberWords } from "../loop-check/limit-words.ts";
import { type FitCell, notStated } from "./fit-cell.ts";
import type { LoopNeeds } from "./loop-needs.ts";

/**
 * What the place and the loop ask of a candidate besides measuring: surroundings, protection, response, current of its
 * outputs. Each is asked only where the loop's row states it.
 *
 * @param candidate ambient_min, ambient_max, ingress, response_time, output_current
 * @param needs air_min, air_max, ingress, response_max of the instrument; current_max of its outputs
 * @returns a cell for each that is stated
 * Source: IEC 60529 for the two digits of IP, each as good or better; the rest compares numbers. That the present output
 *   is taken for what the load needs is own choice.
 * @example fitSurroundings({ candidate: "A", ingress: "IP67" }, { instrument: { ...needs.instrument, ingress: "IP65" },
 *   outputs: [] }).map(({ result }) => result) // ["cannot be told", "fits"], the first of the surroundings
 */
export function fitSurroundings(
  candidate: Candidate,
  { instrument, outputs }: Pick<LoopNeeds, "instrument" | "outputs">,
): readonly FitCell[] {
  const currents = outputs.flatMap(({ currentMax }) => (currentMax === undefined ? [] : [currentMax]));
  return [
    ...fitAmbient(candidate, instrument),
    ...fitIngress(candidate, instrument),
    ...fitMost("response", candidate.responseTime, instrument.responseMax, "s", "response_time"),
    ...fitLeast(candidate.outputCurrent, currents.length === 0 ? undefined : greatestOf(currents)),
  ];
}

function fitAmbient({ ambientMin, ambientMax }: Candidate, { airMin, airMax }: Instrument): readonly FitCell[] {
  if (airMin === undefined && airMax === undefined) return [];
  const question = {
    demand: "surroundings",
    needs: limitWords({ low: airMin ?? null, high: airMax ?? null }, "°C"),
    offers:
      ambientMin === undefined && ambientMax === undefined
        ? notStated
        : limitWords({ low: ambientMin ?? null, high: ambientMax ?? null }, "°C"),
  };
  const tooCold = airMin !== undefined && ambientMin !== undefined && airMin < ambientMin;
  const tooHot = airMax !== undefined && ambientMax !== undefined && airMax > ambientMax;
  if (tooCold || tooHot) {
    return [
      { ...question, result: "does not fit", reason: `it gets ${tooCold ? "colder" : "hotter"} than it is made for` },
    ];
  }
  const isOpen =
    (airMin !== undefined && ambientMin === undefined) || (airMax !== undefined && ambientMax === undefined);
  if (isOpen) return [{ ...question, result: "cannot be told", reason: "ambient_min or ambient_max is not stated" }];
  return [{ ...question, result: "fits", reason: "made for it" }];
}

/** The two digits of an IP code; a letter X stands for a side that was not tested. */
function ingressDigits(code: string | undefined): readonly [number, number] | undefined {
  const [, solids, water] = /\bIP\s*([0-6])([0-9])[KM]?\b/iu.exec(code ?? "") ?? [];
  return solids === undefined || water === undefined ? undefined : [Number(solids), Number(water)];
}

function fitIngress({ ingress }: Candidate, instrument: Instrument): readonly FitCell[] {
  if (instrument.ingress === undefined) return [];
  const question = { demand: "ingress protection", needs: instrument.ingress, offers: ingress ?? notStated };
  const [asked, has] = [ingressDigits(instrument.ingress), ingressDigits(ingress)];
  if (asked === undefined || has === undefined) {
    const why = ingress === undefined ? "ingress is not stated" : "not both are a code such as IP65";
    return [{ ...question, result: "cannot be told", reason: why }];
  }
  const isAsGood = has[0] >= asked[0] && has[1] >= asked[1];
  return [
    isAsGood
      ? { ...question, result: "fits", reason: "each digit as high or higher" }
      : { ...question, result: "does not fit", reason: `its ${has[0] < asked[0] ? "first" : "second"} digit is lower` },
  ];
}

function fitMost(
  demand: string,
  offered: number | undefined,
  most: number | undefined,
  unit: string,
  column: string,
): readonly FitCell[] {
  if (most === undefined) return [];
  const question = {
    demand,
    needs: limitWords({ low: null, high: most }, unit),
    offers: offered === undefined ? notStated : numberWords(offered, unit),
  };
  if (offered === undefined) return [{ ...question, result: "cannot be told", reason: `${column} is not stated` }];
  if (offered > most) return [{ ...question, result: "does not fit", reason: "it is slower than the loop may be" }];
  return [
    { ...question, result: "fits", reason: "quick enough by itself; filters of card and controller come on top" },
  ];
}

function fitLeast(offered: number | undefined, least: number | undefined): readonly FitCell[] {
  if (least === undefined) return [];
  const question = {
    demand: "current of a switched output",
    needs: limitWords({ low: least, high: null }, "mA"),
    offers: offered === undefined ? notStated : numberWords(offered, "mA"),
  };
  if (offered === undefined) return [{ ...question, result: "cannot be told", reason: "output_current is not stated" }];
  if (offered < least) return [{ ...question, result: "does not fit", reason: "the present output carries more" }];
  return [{ ...question, result: "fits", reason: "as much as the present output, or more" }];
}
