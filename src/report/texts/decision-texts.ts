import type { CalibrationRecord, JudgedPointRecord } from "../../record/record-schema.ts";
import { marked } from "../../units/decimal-mark.ts";
import { writeWithUncertainty } from "../../units/round-to-uncertainty.ts";
import { writeFixed, writePlain, writeSignificant } from "../../units/write-number.ts";

/** The decision rule as a sentence of the record, with the risk that it leaves. */
export function ruleWords({ decisionRule }: CalibrationRecord): string {
  const band = `${writePlain(decisionRule.guardFactor)} · U`;
  switch (decisionRule.name) {
    case "simple acceptance":
      return (
        "simple acceptance: each reading passes where its error lies inside the tolerance or on its limit, whatever " +
        "the uncertainty; a result on the limit may be wrong as often as right"
      );
    case "guard band":
      return (
        `guard band of ${band}: the mean error of each direction at each test point passes where it lies inside the ` +
        "tolerance by the guard band or more"
      );
    case "non-binary guard band":
      return (
        `non-binary guard band of ${band}: pass inside the tolerance by the guard band or more, conditional pass ` +
        "inside the tolerance, conditional fail outside by no more than the guard band, fail beyond that; judged is the " +
        "mean error of each direction at each test point"
      );
    case "managed guard band":
      return (
        "managed guard band: for loops about the middle of their tolerance the guard band keeps false acceptance under 2 %, " +
        "whatever part of them is in tolerance; judged is the mean error of each direction at each test point"
      );
  }
}

/** The decision rule in one line, for the first page. */
export function ruleInShort({ decisionRule }: CalibrationRecord): string {
  const band = `guard band of ${writePlain(decisionRule.guardFactor)} · U`;
  return {
    "simple acceptance": "simple acceptance: inside the tolerance passes, whatever the uncertainty",
    "guard band": `${band} inside the tolerance`,
    "non-binary guard band": `non-binary ${band}`,
    "managed guard band": "managed guard band: false acceptance under 2 % where its conditions hold",
  }[decisionRule.name];
}

/** "+14.23 ± 0.86 mm (k = 2.05) at 1650 mm, falling". */
export function pointWords({ instrument }: CalibrationRecord, point: JudgedPointRecord): string {
  const { value, uncertainty } = writeWithUncertainty(point.errorDistance, point.expandedUncertainty);
  const sign = point.errorDistance > 0 ? "+" : "";
  const at = `${writePlain(Number(point.point.toPrecision(6)))} ${instrument.distanceUnit}, ${point.direction}`;
  return `${sign}${value} ± ${uncertainty} ${instrument.distanceUnit} (k = ${writeFixed(point.coverageFactor, 2)}) at ${at}`;
}

/** A probability in percent: two digits, "under 0.01 %" for less; near certainty two decimals, for 100 % is never sure. */
export function riskWords(risk: number): string {
  if (risk < 1e-4) return marked("under 0.01 %");
  if (risk > 0.9999) return marked("over 99.99 %");
  return risk < 0.99 ? `${writeSignificant(100 * risk, 2)} %` : `${writeFixed(100 * risk, 2)} %`;
}
