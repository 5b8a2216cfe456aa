/** What may be between the sensor and its target. */
export const media = ["air", "other gas", "vapour", "foam", "dust"] as const;
export type Medium = (typeof media)[number];

type Stated = { medium?: Medium | undefined };

/**
 * What was between the sensor and its target: of the calibration, else of the instrument in service, else air.
 *
 * @param calibration its medium, where it was another than in service
 * @param instrument its medium in service
 * @returns one of the five
 * Source: own choice.
 * @example mediumOf({}, { medium: "vapour" }) // "vapour"
 */
export function mediumOf(calibration: Stated, instrument: Stated): Medium {
  return calibration.medium ?? instrument.medium ?? "air";
}

/**
 * Whether sound runs through a medium at a speed that the formulas for air do not give.
 *
 * @param medium as above
 * @returns true for another gas and for vapour; foam and dust weaken an echo and leave the speed to the air between them
 * Source: the speed of sound goes with √(γ/M) of the gas; of foam and dust: common practice.
 * @example isGasOfItsOwn("vapour") // true
 */
export function isGasOfItsOwn(medium: Medium): medium is "other gas" | "vapour" {
  return medium === "other gas" || medium === "vapour";
}
