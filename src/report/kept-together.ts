/** A text in which a line never ends between a number and its unit, nor within a value and its uncertainty. */
export function keptTogether(text: string): string {
  return text.replaceAll(" ± ", "\u00a0±\u00a0").replace(/(?<=\d) (?=[%°\p{L}]{1,3}(?!\p{L}))/gu, "\u00a0");
}
