import { expect, test } from "vitest";
import { readIntervalSettings, type SettingOptions } from "../../../src/jobs/workbook/interval-settings-options.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { usualIntervalSettings } from "../../../src/verdict/intervals/interval-settings.ts";

function read(typed: SettingOptions) {
  const problems = new ProblemList();
  return { settings: readIntervalSettings(typed, problems), told: problems.all.map(sentence) };
}

test("what is not typed stays as usual", () => {
  expect(read({})).toEqual({ settings: usualIntervalSettings, told: [] });
});

test("each setting is read in its own unit", () => {
  const typed = {
    ...{ extendWithin: "70", extendAfter: "3", extendBy: "1.5", shortenConditionalBy: "0.9", shortenBy: "0.7" },
    ...{ fullInterval: "95", leastMonths: "3", mostMonths: "24" },
  };
  const { settings } = read(typed);
  expect(settings?.extendWithin).toBeCloseTo(0.7, 12);
  expect(settings?.fullInterval).toBeCloseTo(0.95, 12);
  expect(settings).toMatchObject({
    extendAfter: 3,
    extendBy: 1.5,
    shortenConditionalBy: 0.9,
    shortenBy: 0.7,
    leastMonths: 3,
    mostMonths: 24,
  });
});

test.each([
  ["extendWithin", "0", "--extend-within", "a percentage of the tolerance above 0, at most 100"],
  ["extendWithin", "101", "--extend-within", "a percentage of the tolerance above 0, at most 100"],
  ["extendAfter", "1.5", "--extend-after", "a whole number of results from 1 to 10"],
  ["extendAfter", "0", "--extend-after", "a whole number of results from 1 to 10"],
  ["extendBy", "0.9", "--extend-by", "a factor from 1 to 3"],
  ["shortenBy", "1.1", "--shorten-by", "a factor above 0, at most 1"],
  ["shortenConditionalBy", "0", "--shorten-conditional-by", "a factor above 0, at most 1"],
  ["fullInterval", "x", "--full-interval", "a percentage of the interval above 0, at most 100"],
  ["leastMonths", "1.5", "--least-months", "whole months from 1 to 240"],
  ["mostMonths", "241", "--most-months", "whole months from 1 to 240"],
] as const)("%s of %s is refused", (name, text, option, accepted) => {
  expect(read({ [name]: text })).toEqual({
    settings: undefined,
    told: [`command line: the option ${option} cannot be read; read "${text}"; accepted: ${accepted}`],
  });
});

test("the shortest interval may not be longer than the longest", () => {
  expect(read({ leastMonths: "24", mostMonths: "12" })).toEqual({
    settings: undefined,
    told: ['command line: the option --least-months cannot be read; read "24"; accepted: at most --most-months, 12'],
  });
});
