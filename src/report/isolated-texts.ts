import type { CalibrationRecord } from "../record/record-schema.ts";
import { textAsRendered } from "./escape.ts";

/** A drawing, what is isolated already, or a tag: what stands between two of them is text. */
const noText = /(<svg.*?<\/svg>|<bdi>.*?<\/bdi>|<[a-z/](?:[^>"]|"[^"]*")*>)/gisu;
/** The letters whose direction Unicode says is from right to left, assigned or not (UAX #9, DerivedBidiClass.txt). */
const rightToLeft = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

/**
 * A page in which every text of a table that is written from right to left is kept to itself (HTML, 4.5.24), in the
 * middle of a sentence too: without it, the words and numbers around it would change their order.
 */
export function isolatedTexts(html: string, records: readonly Pick<CalibrationRecord, "inputs">[]): string {
  if (!rightToLeft.test(html)) return html;
  const texts = [...new Set(records.flatMap(typedTexts))].filter((text) => rightToLeft.test(text));
  if (texts.length === 0) return html;
  const longestFirst = texts.map((text) => textAsRendered(text.trim())).sort((one, other) => other.length - one.length);
  const any = new RegExp(longestFirst.map((text) => text.replace(/[.*+?^${}()|[\]\\]/gu, "\\$&")).join("|"), "gu");
  return html
    .split(noText)
    .map((part, place) => (place % 2 === 1 ? part : part.replace(any, "<bdi>$&</bdi>")))
    .join("");
}

function typedTexts({ inputs }: Pick<CalibrationRecord, "inputs">): readonly string[] {
  return Object.values(inputs.rows).flatMap((rows = []) => rows.flatMap(({ cells }) => Object.values(cells)));
}
