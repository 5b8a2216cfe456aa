/** What the typing hand does, the likelier first. */
export const slipKinds = [
  "two digits exchanged",
  "decimal mark moved",
  "sign wrong",
  "one digit wrong",
  "one digit left out",
  "one digit too many",
] as const;

export type SlipKind = (typeof slipKinds)[number];

/** A number that may have been meant, and the slip that makes the typed one of it. */
export type Alternative = { meant: number; kind: SlipKind };

const mostDecimals = 12;
const markFactors = [10, 100, 1000] as const;
const everyDigit = [..."0123456789"];

/**
 * The numbers that one slip of the typing hand turns into the typed one.
 *
 * @param typed finite number
 * @param decimals digits behind the mark as it was typed, 0 to 12 count
 * @returns numbers in the unit of the typed one, in the order of `slipKinds`; the typed one is not among them
 * Source: own choice of the slips.
 * @example typingAlternatives(14.28, 2)[2] // { meant: 12.48, kind: "two digits exchanged" }
 */
export function typingAlternatives(typed: number, decimals: number): readonly Alternative[] {
  const places = Math.min(decimals, mostDecimals);
  const digits = Math.abs(typed).toFixed(places).replace(".", "");
  const sign = typed < 0 ? -1 : 1;
  const meant = (changed: string, behind: number) => (sign * Number(changed)) / 10 ** behind;
  const all: Alternative[] = [
    ...exchanged(digits)
      .map((changed) => ({ meant: meant(changed, places), kind: slipKinds[0] }))
      // 4.000 for 40.00: a zero that would change places with the digit behind it is a mark that moved.
      .filter(
        (one) => !markFactors.some((factor) => isSame(one.meant, typed * factor) || isSame(one.meant, typed / factor)),
      ),
    ...markFactors.flatMap((factor) => [
      { meant: typed * factor, kind: slipKinds[1] },
      { meant: typed / factor, kind: slipKinds[1] },
    ]),
    { meant: -typed, kind: slipKinds[2] },
    ...replaced(digits).map((changed) => ({ meant: meant(changed, places), kind: slipKinds[3] })),
    ...inserted(digits, places).map(({ changed, behind }) => ({ meant: meant(changed, behind), kind: slipKinds[4] })),
    ...removed(digits, places).map(({ changed, behind }) => ({ meant: meant(changed, behind), kind: slipKinds[5] })),
  ];
  return all.filter((one) => one.meant !== typed);
}

function isSame(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-9 * Math.abs(other);
}

/** A zero in front may be one that changed places: 401 typed as 041. */
function exchanged(digits: string): readonly string[] {
  const padded = [..."0", ...digits];
  return padded.slice(1).flatMap((digit, place) => {
    const before = padded[place] as string;
    return digit === before
      ? []
      : [
          padded
            .with(place, digit)
            .with(place + 1, before)
            .join(""),
        ];
  });
}

function replaced(digits: string): readonly string[] {
  return [...digits].flatMap((_, place) => everyDigit.map((digit) => [...digits].with(place, digit).join("")));
}

type Changed = { changed: string; behind: number };

/** A digit that is left out before the mark makes the number shorter, one behind it the fraction. */
function inserted(digits: string, decimals: number): readonly Changed[] {
  const whole = digits.length - decimals;
  return Array.from({ length: digits.length + 1 }, (_, place) => place).flatMap((place) =>
    everyDigit.flatMap((digit) => {
      const changed = digits.slice(0, place) + digit + digits.slice(place);
      if (place < whole) return [{ changed, behind: decimals }];
      if (place > whole || decimals === 0) return [{ changed, behind: place === whole ? decimals : decimals + 1 }];
      return [decimals, decimals + 1].map((behind) => ({ changed, behind }));
    }),
  );
}

function removed(digits: string, decimals: number): readonly Changed[] {
  const whole = digits.length - decimals;
  return [...digits].map((_, place) => ({
    changed: digits.slice(0, place) + digits.slice(place + 1),
    behind: place < whole ? decimals : decimals - 1,
  }));
}

/**
 * The slip that explains a number best: the likeliest kind of which one number fits, and of its numbers the nearest.
 *
 * @param typed finite number
 * @param decimals digits behind the mark as it was typed
 * @param missedBy how far a number is from what would fit, >= 0
 * @param within how far it may be
 * @returns the number that would fit and the slip; undefined where none fits
 * Source: own choice.
 * @example slipThatFits(14.28, 2, (meant) => Math.abs(meant - 12.47), 0.05) // { meant: 12.48, kind: "two digits exchanged" }
 */
export function slipThatFits(
  typed: number,
  decimals: number,
  missedBy: (meant: number) => number,
  within: number,
): Alternative | undefined {
  const fitting = typingAlternatives(typed, decimals).filter(({ meant }) => missedBy(meant) <= within);
  const [likeliest] = fitting;
  return fitting
    .filter(({ kind }) => kind === likeliest?.kind)
    .toSorted((one, other) => missedBy(one.meant) - missedBy(other.meant))[0];
}
