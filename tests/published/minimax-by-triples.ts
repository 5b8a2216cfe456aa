/**
 * The least greatest deviation of any straight line, by trying every line that three points (or two at one abscissa)
 * hold between them: the slow road that checks `minimaxLine`. By Helly's theorem in the plane of slope and intercept the
 * worst three points decide for all.
 */
export function minimaxDeviationByTriples(abscissas: readonly number[], ordinates: readonly number[]): number {
  let worst = 0;
  for (let i = 0; i < abscissas.length; i++)
    for (let j = 0; j < abscissas.length; j++)
      for (let k = 0; k < abscissas.length; k++)
        worst = Math.max(worst, deviationOfThree(i, j, k, abscissas, ordinates));
  return worst;
}

/** Half the height of the middle point over the chord of the outer two; half the spread where all stand at one place. */
function deviationOfThree(i: number, j: number, k: number, x: readonly number[], y: readonly number[]): number {
  const [left, middle, right] = [x[i]!, x[j]!, x[k]!];
  if (!(left <= middle && middle <= right)) return 0;
  if (left === right) return Math.abs(y[i]! - y[j]!) / 2;
  const share = (middle - left) / (right - left);
  return Math.abs(y[j]! - ((1 - share) * y[i]! + share * y[k]!)) / 2;
}
