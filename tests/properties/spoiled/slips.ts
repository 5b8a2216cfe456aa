import type { Draw } from "./draw.ts";

/** What the hand does to a written number; each gives another text, or the same where it can do nothing. */
export const slips: Readonly<Record<string, (text: string, draw: Draw) => string>> = {
  "two digits exchanged": (text, draw) => {
    const digits = [...text].flatMap((character, place) => (/\d/u.test(character) ? [place] : []));
    const first = draw.whole(digits.length - 1);
    const [left, right] = [digits[first] ?? 0, digits[first + 1] ?? 0];
    return [...text]
      .with(left, text[right] ?? "")
      .with(right, text[left] ?? "")
      .join("");
  },
  "a digit wrong": (text, draw) => atDigit(text, draw, (digit) => String((Number(digit) + 1 + draw.whole(9)) % 10)),
  "a digit left out": (text, draw) => atDigit(text, draw, () => ""),
  "a digit twice": (text, draw) => atDigit(text, draw, (digit) => digit + digit),
  "the mark moved": (text, draw) => {
    const factor = draw.pick([0.001, 0.01, 0.1, 10, 100, 1000]);
    return String(Number((Number(text) * factor).toPrecision(12)));
  },
  "the mark left out": (text) => text.replace(".", ""),
  "a sign put in": (text) => (text.startsWith("-") ? text.slice(1) : `-${text}`),
};

function atDigit(text: string, draw: Draw, change: (digit: string) => string): string {
  const places = [...text].flatMap((character, place) => (/\d/u.test(character) ? [place] : []));
  const place = draw.pick(places);
  return text.slice(0, place) + change(text[place] ?? "") + text.slice(place + 1);
}

/** Other ways to write the same number, or what is none; the program reads what the cell says, or tells. */
export const writings: Readonly<Record<string, (text: string, unit: string) => string>> = {
  "with its unit": (text, unit) => `${text} ${unit}`,
  "with its unit, without a space": (text, unit) => `${text}${unit}`,
  "with another unit of distance": (text) => `${text} ft`,
  "with another unit of the signal": (text) => `${text} A`,
  "with a plus": (text) => `+${text}`,
  "with a true minus": (text) => text.replace("-", "\u2212"),
  "in exponents": (text) => Number(text).toExponential(),
  "with an O for a zero": (text) => text.replace("0", "O"),
  "with spaces": (text) => ` ${text}  `,
  "with a mark at its end": (text) => `${text}.`,
  "with a comma for a point": (text) => text.replace(".", ","),
  "with a point for a comma": (text) => text.replace(",", "."),
  "with thousands apart": (text) => text.replace(/^(-?\d)(\d{3})(?=\.|$)/u, "$1 $2"),
  "with thousands by a comma": (text) => text.replace(/^(-?\d)(\d{3})(?=\.|$)/u, "$1,$2"),
  "with a question mark": (text) => `${text}?`,
  "with a less-than": (text) => `<${text}`,
  "as a date": (text) => text.replace(/^(\d+)\.(\d+)$/u, "$1/$2"),
  "as an error of a spreadsheet": () => "#VALUE!",
  empty: () => "",
};
