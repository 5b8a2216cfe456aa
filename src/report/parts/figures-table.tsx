import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import type { NumberStyle } from "../style/number-style.ts";
import { phasesOf } from "../texts/page-texts.ts";
import { Definitions } from "./definitions.tsx";
import { figureRows } from "./figure-rows.tsx";

/** The figures of each phase, side by side, each with what it means; one that cannot be had says why. */
export function FiguresTable({ record, style }: { record: CalibrationRecord; style: NumberStyle }) {
  const phases = phasesOf(record);
  const rows = figureRows(record, style).filter(
    ({ key }) => key !== "loopError" || phases.some(({ phase }) => phase.loopError),
  );
  const keys = rows.map(({ key }) => key);
  return (
    <section aria-labelledby="figures-title">
      <h2 id="figures-title">Figures</h2>
      <p>
        Basis: {record.figureBasis}. {phases.map(({ title, phase }) => countedWords(title, phase)).join(" ")}
      </p>
      <section class="wide" aria-label="Table of figures" tabIndex={0}>
        <table class="figures">
          <thead>
            <tr>
              <th scope="col">Figure</th>
              {phases.map(({ title }) => (
                <th key={title} scope="col" class="number">
                  {title}
                </th>
              ))}
              <th scope="col">What it is</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ key, name, unit, meaning, cell }) => (
              <tr key={key}>
                <th scope="row">
                  {name} <span class="unit">{unit}</span>
                </th>
                {phases.map(({ title, phase }) => (
                  <td key={title} class="number">
                    {cell(phase)}
                  </td>
                ))}
                <td class="meaning">{meaning}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <Definitions title="Formulas and sources of these figures" keys={keys} said={keys} />
    </section>
  );
}

function countedWords(title: string, { counted }: PhaseRecord): string {
  const leftOut = counted.leftOut === 0 ? "none left out" : `${counted.leftOut} left out`;
  const cycles = counted.cycles === 1 ? "1 cycle" : `${counted.cycles} cycles`;
  return `${title}: ${counted.used} readings used, ${leftOut}, ${counted.points} test points, ${cycles}.`;
}
