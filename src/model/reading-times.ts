const minutesPerMillisecond = 1 / 60_000;
const minutesPerDay = 1440;
const dayAndClock = /^(?:(\d{4}-\d{2}-\d{2})[T ])?(\d{2}:\d{2}(?::\d{2})?)/u;

/** The times of readings in the order of the table, in minutes from the earliest, and the first that lies before the one above it. */
export type ReadingTimes = { minutes: readonly number[]; backwardsAt: number | undefined };

/**
 * When readings were taken, where every one of them says so and the clock moved.
 *
 * @param times as they are written, with or without a day; a clock without a day is of one day, or goes on past midnight
 *   where it falls back by more than half a day
 * @returns minutes, and the place of the first time that runs backwards; undefined where the times say nothing
 * Source: own choice.
 * @example readingTimes(["23:50", "00:10"]) // { minutes: [0, 20], backwardsAt: undefined }
 */
export function readingTimes(times: readonly (string | undefined)[]): ReadingTimes | undefined {
  let midnights = 0;
  let before: number | undefined;
  const stamps = times.map((time = "") => {
    const [, day, clock] = dayAndClock.exec(time) ?? [];
    if (clock === undefined) return Number.NaN;
    const stamp = Date.parse(`${day ?? "1970-01-01"}T${clock}Z`) * minutesPerMillisecond;
    if (day === undefined && before !== undefined && stamp < before - minutesPerDay / 2) midnights += 1;
    before = stamp;
    return day === undefined ? stamp + midnights * minutesPerDay : stamp;
  });
  if (stamps.length === 0 || !stamps.every(Number.isFinite)) return undefined;
  const first = stamps.reduce((least, stamp) => Math.min(least, stamp));
  if (stamps.every((stamp) => stamp === first)) return undefined;
  const backwardsAt = stamps.findIndex((stamp, place) => place > 0 && stamp < (stamps[place - 1] as number));
  return { minutes: stamps.map((stamp) => stamp - first), backwardsAt: backwardsAt === -1 ? undefined : backwardsAt };
}
