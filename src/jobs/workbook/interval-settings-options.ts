import type { ProblemList } from "../../problems/problem-list.ts";
import { readNumber } from "../../units/read-number.ts";
import { type IntervalSettings, usualIntervalSettings } from "../../verdict/intervals/interval-settings.ts";

/** Settings of the interval proposals as they were typed; what is not typed stays as usual. */
export type SettingOptions = { [Name in keyof IntervalSettings]?: string | undefined };

type Reading = { option: string; accepted: string; isRight: (value: number) => boolean; isPercent?: true };

const isFactor = (value: number) => value > 0 && value <= 1;
const isMonths = (value: number) => Number.isInteger(value) && value >= 1 && value <= 240;

const readings: { readonly [Name in keyof IntervalSettings]: Reading } = {
  extendWithin: {
    option: "--extend-within",
    accepted: "a percentage of the tolerance above 0, at most 100",
    isRight: isFactor,
    isPercent: true,
  },
  extendAfter: {
    option: "--extend-after",
    accepted: "a whole number of results from 1 to 10",
    isRight: (value) => Number.isInteger(value) && value >= 1 && value <= 10,
  },
  extendBy: { option: "--extend-by", accepted: "a factor from 1 to 3", isRight: (value) => value >= 1 && value <= 3 },
  shortenConditionalBy: {
    option: "--shorten-conditional-by",
    accepted: "a factor above 0, at most 1",
    isRight: isFactor,
  },
  shortenBy: { option: "--shorten-by", accepted: "a factor above 0, at most 1", isRight: isFactor },
  fullInterval: {
    option: "--full-interval",
    accepted: "a percentage of the interval above 0, at most 100",
    isRight: isFactor,
    isPercent: true,
  },
  leastMonths: { option: "--least-months", accepted: "whole months from 1 to 240", isRight: isMonths },
  mostMonths: { option: "--most-months", accepted: "whole months from 1 to 240", isRight: isMonths },
};

/** The settings, or nothing and a problem for each that cannot be read. */
export function readIntervalSettings(typed: SettingOptions, problems: ProblemList): IntervalSettings | undefined {
  const settings = { ...usualIntervalSettings };
  let isRight = true;
  const refuse = (option: string, accepted: string, read: string) => {
    problems.add("options/not-understood", { file: "command line" }, { read, values: { option, accepted } });
    isRight = false;
  };
  for (const name of Object.keys(readings) as (keyof IntervalSettings)[]) {
    const text = typed[name];
    if (text === undefined) continue;
    const { option, accepted, isRight: isAllowed, isPercent } = readings[name];
    const value = (readNumber(text, "point")?.value ?? Number.NaN) / (isPercent ? 100 : 1);
    if (isAllowed(value)) settings[name] = value;
    else refuse(option, accepted, text);
  }
  if (isRight && settings.leastMonths > settings.mostMonths) {
    refuse("--least-months", `at most --most-months, ${settings.mostMonths}`, String(settings.leastMonths));
  }
  return isRight ? settings : undefined;
}
