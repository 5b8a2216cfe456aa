import { beamFootprint } from "../../analysis/air/beam-footprint.ts";
import { isDetermined } from "../../analysis/figures/figure.ts";
import type { Candidate } from "../../model/instrument.ts";
import { leastOf } from "../../numeric/least-and-greatest.ts";
import { isInside } from "../../units/is-inside.ts";
import { numberWords, outsideWords } from "../loop-check/limit-words.ts";
import { type FitCell, notStated } from "./fit-cell.ts";
import type { LoopNeeds } from "./loop-needs.ts";

const withoutBeam: ReadonlySet<Candidate["principle"]> = new Set(["inductive", "capacitive"]);

/**
 * Whether the whole beam of a candidate meets the target at the far end of the range. The target is that of the
 * calibration, its shorter side.
 *
 * @param candidate principle, beam_angle
 * @param needs range and target of the loop
 * @returns one cell
 * Source: `beam-footprint.ts`; own choice that the shorter side decides.
 * @example fitBeam({ candidate: "A", principle: "radar", beamAngle: 4 }, needs).offers // "279 mm", at 4000 mm
 */
export function fitBeam(
  { principle, beamAngle }: Candidate,
  { instrument, calibration }: Pick<LoopNeeds, "instrument" | "calibration">,
): FitCell {
  const { rangeUpper, distanceUnit: unit } = instrument;
  const sides = [calibration.targetWidth, calibration.targetHeight].filter((side) => side !== undefined);
  const side = sides.length === 0 ? null : leastOf(sides);
  const width = beamAngle === undefined ? undefined : beamFootprint(rangeUpper, beamAngle);
  const widthKnown = width !== undefined && isDetermined(width) ? width : undefined;
  const question = {
    demand: `beam at ${numberWords(rangeUpper, unit)}`,
    needs: side === null ? "target not stated" : `target of ${numberWords(side, unit)}`,
    offers: widthKnown === undefined ? notStated : numberWords(widthKnown, unit, 3),
  };
  if (withoutBeam.has(principle)) {
    return { ...question, offers: "no beam", result: "fits", reason: "it has no beam that could pass the target" };
  }
  if (side === null) {
    return { ...question, result: "cannot be told", reason: "target_width and target_height are not stated" };
  }
  if (widthKnown === undefined) return { ...question, result: "cannot be told", reason: whyNot(width) };
  if (isInside(widthKnown, { low: null, high: side })) {
    return { ...question, result: "fits", reason: "the whole beam meets the target" };
  }
  const wide = outsideWords(widthKnown, { low: null, high: side }, unit, "");
  return { ...question, result: "does not fit", reason: `part of the beam passes the target: ${wide}` };
}

function whyNot(width: ReturnType<typeof beamFootprint> | undefined): string {
  return width === undefined || isDetermined(width) ? "beam_angle is not stated" : width.notDetermined;
}
