/** Distance that each stage's output indicates at one reading; a stage that was not read is absent. */
export type IndicatedByStage = { signal?: number | undefined; counts?: number | undefined; value?: number | undefined };

/**
 * The part of the loop error that arises in each stage, in distance. A stage whose neighbour was not read
 * shares a name with it, so that what exists always adds up to the error of the last stage that was read.
 */
export type StageShares = {
  sensor?: number;
  inputCard?: number;
  scaling?: number;
  sensorAndInputCard?: number;
  inputCardAndScaling?: number;
  sensorToController?: number;
};

/**
 * Splits the error of a loop into the parts that its stages add.
 *
 * sensor: d(s) − x. Input card: distance from counts minus distance from signal. Scaling: distance from the
 * controller value minus distance from counts. Loop error = sensor + input card + scaling.
 *
 * @param reference x, distance
 * @param indicated distance by stage, in the same unit
 * @returns the shares that the readings allow, in distance; empty where nothing was read
 * Source: identity, a sum that telescopes.
 * @example stageShares(100, { signal: 101, counts: 101.5, value: 99.5 }) // { sensor: 1, inputCard: 0.5, scaling: -2 }
 */
export function stageShares(reference: number, indicated: IndicatedByStage): StageShares {
  const { signal, counts, value } = indicated;
  const shares: StageShares = {};
  if (signal !== undefined) shares.sensor = signal - reference;
  if (counts !== undefined) {
    if (signal === undefined) shares.sensorAndInputCard = counts - reference;
    else shares.inputCard = counts - signal;
  }
  if (value !== undefined) {
    if (counts !== undefined) shares.scaling = value - counts;
    else if (signal !== undefined) shares.inputCardAndScaling = value - signal;
    else shares.sensorToController = value - reference;
  }
  return shares;
}
