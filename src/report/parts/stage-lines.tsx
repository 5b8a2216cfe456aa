import type { PhaseCauses } from "../../record/causes-schema.ts";
import { writePlain } from "../../units/write-number.ts";
import { numberWords } from "../texts/cause-texts.ts";

/** The straight line of the error of each stage on what the stage was given. */
export function StageLines({ title, lines }: { title: string; lines: PhaseCauses["stageLines"] }) {
  return (
    <section class="wide" aria-label={`${title}, the line of each stage`} tabIndex={0}>
      <table class="plain stage-lines">
        <caption>{title}, the line of each stage; errors and residuals in percent of span</caption>
        <thead>
          <tr>
            <th scope="col">Stage</th>
            <th scope="col" class="number">
              Readings
            </th>
            <th scope="col" class="number">
              Left out
            </th>
            <th scope="col" class="number">
              Gain
            </th>
            <th scope="col" class="number">
              Error at 0 %
            </th>
            <th scope="col" class="number">
              Error at 100 %
            </th>
            <th scope="col" class="number">
              Greatest residual
            </th>
            <th scope="col" class="number">
              No error at
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.stage}>
              <th scope="row">
                {line.stage}
                <span class="where">
                  {writePlain(line.from)} to {writePlain(line.to)} {line.inputUnit}
                </span>
              </th>
              <td class="number">{line.readings}</td>
              <td class="number">{line.excluded}</td>
              <td class="number">{numberWords(line.gain, line.gainStandardUncertainty, false)}</td>
              <td class="number">{errorWords(line.errorAtLower)}</td>
              <td class="number">{errorWords(line.errorAtUpper)}</td>
              <td class="number">{numberWords(line.greatestResidual, undefined, true)}</td>
              <td class="number">{crossingWords(line)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function errorWords({ percentSpan, standardUncertainty }: { percentSpan: number; standardUncertainty: number }) {
  return numberWords(percentSpan, standardUncertainty, true);
}

function crossingWords({ zeroCrossing, inputUnit }: PhaseCauses["stageLines"][number]): string {
  if (zeroCrossing === null) return "nowhere for certain";
  return `${numberWords(zeroCrossing.value, zeroCrossing.standardUncertainty, false)} ${inputUnit}`;
}
