import { answersOf, wordOf } from "./answers-of.ts";
import { taughtAtEnds, withConstants } from "./cure.ts";
import type { Judged } from "./judge.ts";
import { type MadeLoop, phaseOf } from "./make-loop.ts";
import { randomFrom } from "./random.ts";

/** What the record foretold of a re-teach, and whether the same loop passed when it was taught and read again. */
export type Forecast = {
  seed: number;
  /** The chance that it states; nothing where it states none. */
  chance: number | null;
  /** The bound: whether the best two constants would do for these very readings. */
  isCurable: boolean;
  passesTaughtAtEnds: boolean;
  /** Of all teaches of the loop, each read anew: how many there were and how many passed. */
  taught: { times: number; passed: number };
  passesWithBestConstants: boolean | null;
};

/** A chance in the middle is known by a single teach within a half only, so that such a loop is taught again and again. */
const teachesInDoubt = 20;
const isInDoubt = (chance: number | null) => chance !== null && chance > 0.1 && chance < 0.9;

/** Sensors whose error a re-teach could touch, as found outside; each is taught on its own physics and read anew. */
export async function forecastsOf(judged: readonly Judged[]): Promise<readonly Forecast[]> {
  const asked = judged.filter(isAsked);
  const sheets = asked.flatMap(({ made, record }) => {
    const random = randomFrom(1_000_000 + made.seed);
    const { loop } = made.asFound;
    const best = record?.reteach?.asFound?.sensor?.best;
    const times = isInDoubt(chanceIn(record?.reteach?.asFound)) ? teachesInDoubt : 1;
    return [
      ...Array.from({ length: times }, (_, time) => ({
        name: `L${made.seed}E${time}`,
        asFound: phaseOf(taughtAtEnds(loop, random), [], random),
        asLeft: null,
      })),
      ...(best ? [{ name: `L${made.seed}B`, asFound: phaseOf(taughtBest(made, best), [], random), asLeft: null }] : []),
    ];
  });
  const answers = await answersOf(sheets);
  const passes = (name: string) => {
    const answer = answers.get(name);
    return answer === undefined ? null : wordOf(answer, "asFound") === "pass";
  };
  const taughtOf = (seed: number) => {
    const words = Array.from({ length: teachesInDoubt }, (_, time) => passes(`L${seed}E${time}`)).filter(
      (word) => word !== null,
    );
    return { times: words.length, passed: words.filter(Boolean).length };
  };
  return asked.map(({ made, record }) => ({
    seed: made.seed,
    chance: chanceIn(record?.reteach?.asFound),
    isCurable: record?.reteach?.asFound?.sensor?.isCurable === true,
    passesTaughtAtEnds: passes(`L${made.seed}E0`) === true,
    taught: taughtOf(made.seed),
    passesWithBestConstants: passes(`L${made.seed}B`),
  }));
}

const taughtAway = new Set([
  "zero shift",
  "upper end taught wrong",
  "lower end taught wrong",
  "both ends taught wrong",
]);
const stays = new Set(["curvature", "hysteresis of the sensor", "scatter everywhere", "scatter grows with distance"]);

function isAsked({ made: { faults, family }, word, record }: Judged): boolean {
  const isOfSensor = faults.every(({ kind: { id } }) => taughtAway.has(id) || stays.has(id));
  return family !== "healthy" && isOfSensor && word !== "pass" && Boolean(record?.reteach?.asFound?.sensor);
}

/** The record has the constants in the unit of the loop. */
function taughtBest({ asFound: { loop } }: MadeLoop, best: { lower: number; upper: number }) {
  const { millimetresPerUnit } = loop.design;
  return withConstants(loop, { lower: best.lower * millimetresPerUnit, upper: best.upper * millimetresPerUnit });
}

/** The first number, however deep, whose name speaks of a chance. */
export function chanceIn(part: unknown): number | null {
  if (part === null || typeof part !== "object") return null;
  for (const [name, value] of Object.entries(part)) {
    if (/chance/iu.test(name) && typeof value === "number") return value;
    const deeper = chanceIn(value);
    if (deeper !== null) return deeper;
  }
  return null;
}
