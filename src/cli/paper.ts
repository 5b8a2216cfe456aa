export const papers = ["A4", "Letter"] as const;
export type Paper = (typeof papers)[number];

/** Countries that write on Letter, by their codes in ISO 3166-1; common practice. */
const onLetter = new Set(["US", "CA", "MX", "PH", "CL", "CO", "VE", "GT", "CR", "PA", "SV", "NI", "DO", "PR"]);

type Environment = Readonly<Record<string, string | undefined>>;

/** The paper of the place where the command runs, as its locale names it; A4 where it names none. */
export function usualPaper({ LC_ALL, LC_PAPER, LANG }: Environment): Paper {
  const locale = [LC_ALL, LC_PAPER, LANG].find((one) => one !== undefined && one !== "") ?? "";
  const country = /^[a-z]+[_-]([A-Z]{2})\b/u.exec(locale)?.[1];
  return country !== undefined && onLetter.has(country) ? "Letter" : "A4";
}
