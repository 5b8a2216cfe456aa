import type { CalibrationRecord } from "../record/record-schema.ts";
import { textAsRendered } from "./escape.ts";

/** A drawing, what is isolated already, or a tag: what stands between two of them is text. */
const noText = /(<svg.*?<\/svg>|<bdi>.*?<\/bdi>|<[a-z/](?:[^>"]|"[^"]*")*>)/gisu;
const rightToLeft =
  /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Script=Adlam}\p{Script=Samaritan}\p{Script=Mandaic}]/u;

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
