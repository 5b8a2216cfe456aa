/** What one figure is: the words that the page, `spanwright explain` and the guide share. */
export type FigureDefinition = {
  key: string;
  name: string;
  /** The letter that stands for it in formulas and on the page. */
  symbol?: string;
  unit: string;
  /** In a sentence, for whoever reads a page. */
  meaning: string;
  formula: string;
  source: string;
  /** Where it stands in a record's JSON: the last names of its path; the longest that fits a path is meant. */
  fields: readonly string[];
};

export const viaFit = "JCGM 100:2008 (GUM), H.3";
export const performanceTerms = "IEC 61298-2:2008 terms; ANSI/ISA-51.1-1979 (R1993)";
