import type { Forecast } from "./forecasts.ts";
import { isFound, type Judged } from "./judge.ts";

/** A part of a whole. */
export type Count = { of: number; right: number };

export type Score = ReturnType<typeof scoreOf>;

/** The figures that the detectors and the advice are held to. */
export function scoreOf(judged: readonly Judged[], forecasts: readonly Forecast[]) {
  const of = (family: string) => judged.filter(({ made }) => made.family === family);
  const healthy = of("healthy");
  const single = of("one fault");
  const double = of("two faults");
  const named = single.filter(({ naming }) => naming.length > 0);
  const bothAsked = double.filter(({ naming }) => naming.length === 2);
  return {
    loops: judged.length,
    broke: judged.filter(({ broke }) => broke !== null).length,
    falsePass: judged.filter(({ isFalsePass }) => isFalsePass).length,
    falsePassAsLeft: judged.filter(({ isFalsePassAsLeft }) => isFalsePassAsLeft).length,
    falseReplace: judged.filter(({ isFalseReplace }) => isFalseReplace).length,
    replaces: judged.filter(({ advice, made }) => advice === "replace" && made.family !== "doubtful").length,
    healthyWithoutFinding: count(healthy, ({ titles }) => titles.length === 0),
    healthyPassed: count(healthy, ({ isFalseFail }) => !isFalseFail),
    adviceHealthy: count(healthy, ({ isAdviceRight }) => isAdviceRight),
    adviceSingle: count(single, ({ isAdviceRight }) => isAdviceRight),
    adviceDouble: count(double, ({ isAdviceRight }) => isAdviceRight),
    singleWithoutStrange: count(single, ({ strange }) => strange.length === 0),
    singleNamed: count(named, ({ naming }) => naming.every(isFound)),
    bothNamed: count(bothAsked, ({ naming }) => naming.every(isFound)),
    oneOfTwoNamed: count(bothAsked, ({ naming }) => naming.some(isFound)),
    bothCured: count(double, ({ made, steps }) =>
      made.faults.every(({ kind }) => steps.some((step) => kind.advice.includes(step) || step === "replace")),
    ),
    chances: chanceBins(forecasts),
    bound: boundOf(forecasts),
  };
}

function count<T>(all: readonly T[], isRight: (one: T) => boolean): Count {
  return { of: all.length, right: all.filter(isRight).length };
}

/** Stated chances in fifths, beside what came out when the sensor was taught at its ends. */
function chanceBins(forecasts: readonly Forecast[]) {
  const stated = forecasts.flatMap(({ chance, taught }) => (chance === null ? [] : [{ chance, taught }]));
  return [0, 0.2, 0.4, 0.6, 0.8].map((from) => {
    const inside = stated.filter(({ chance }) => chance >= from && (chance < from + 0.2 || from === 0.8));
    const meanOf = (part: (one: (typeof inside)[number]) => number) =>
      inside.reduce((sum, one) => sum + part(one), 0) / inside.length;
    return {
      from,
      of: inside.length,
      stated: meanOf(({ chance }) => chance),
      passed: meanOf(({ taught }) => taught.passed / taught.times),
    };
  });
}

function boundOf(forecasts: readonly Forecast[]) {
  const curable = forecasts.filter(({ isCurable }) => isCurable);
  const not = forecasts.filter(({ isCurable }) => !isCurable);
  return {
    curableThatPass: count(curable, ({ passesTaughtAtEnds }) => passesTaughtAtEnds),
    curableThatPassAtBest: count(curable, ({ passesWithBestConstants }) => passesWithBestConstants === true),
    notCurableThatPass: count(not, ({ passesTaughtAtEnds }) => passesTaughtAtEnds),
  };
}
