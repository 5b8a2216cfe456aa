/**
 * How many cases a test tries: a few where one works, all of them where MANY_CASES is set, as `.ci/run` and
 * `npm run test:many` set it. Each place says what the few still show.
 */
export function howMany(few: number, many: number): number {
  return process.env.MANY_CASES === "1" ? many : few;
}
