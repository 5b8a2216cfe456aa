/** What a proposed interval rests on besides the readings; the owner of the loops may set other values. */
export type IntervalSettings = {
  /** Part of the tolerance inside which every mean error has to lie for a longer interval. */
  extendWithin: number;
  /** How many results in a row have to lie there, each at the end of such an interval. */
  extendAfter: number;
  /** Factor on the interval where it is extended. */
  extendBy: number;
  /** Factor where the loop was only just accepted: a conditional pass. */
  shortenConditionalBy: number;
  /** Factor where it was found out of tolerance. */
  shortenBy: number;
  /** Part of the interval that has to have passed before a good result speaks for a longer one. */
  fullInterval: number;
  leastMonths: number;
  mostMonths: number;
};

/** 80 % is the example of ILAC-G24:2022 / OIML D 10, 6.2; the rest is own choice. */
export const usualIntervalSettings: IntervalSettings = Object.freeze({
  extendWithin: 0.8,
  extendAfter: 2,
  extendBy: 1.25,
  shortenConditionalBy: 0.8,
  shortenBy: 0.5,
  fullInterval: 0.9,
  leastMonths: 1,
  mostMonths: 36,
});
