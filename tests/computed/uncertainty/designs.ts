/** What disturbs the readings of a simulated sensor beside the standards; millimetres. */
export type Disturbance = "white noise" | "cycle effect" | "growing noise" | "coarse display" | "random walk";

/** How a simulated calibration is read. */
export type Design = { disturbance: Disturbance; cycles: number; points: number };

const readBy: Readonly<Record<Disturbance, readonly (readonly [cycles: number, points: number])[]>> = {
  "white noise": [
    ...([1, 2, 3, 5, 10] as const).map((cycles) => [cycles, 11] as const),
    ...([3, 5, 21] as const).flatMap((points) => [[1, points] as const, [3, points] as const]),
    [2, 3],
    [2, 5],
  ],
  "cycle effect": [
    ...([1, 2, 3, 5, 10] as const).map((cycles) => [cycles, 11] as const),
    ...([3, 5] as const).flatMap((points) => [[2, points] as const, [3, points] as const]),
  ],
  "growing noise": [...([1, 2, 3, 5, 10] as const).map((cycles) => [cycles, 11] as const), [2, 3], [2, 5]],
  "coarse display": ([1, 2, 3, 5, 10] as const).map((cycles) => [cycles, 11] as const),
  "random walk": ([1, 3, 10] as const).map((cycles) => [cycles, 11] as const),
};

export const designs: readonly Design[] = Object.entries(readBy).flatMap(([disturbance, plans]) =>
  plans.map(([cycles, points]) => ({ disturbance: disturbance as Disturbance, cycles, points })),
);
