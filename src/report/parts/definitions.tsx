import { type FigureKey, figureDefinition } from "../../record/figure-definitions.ts";

type DefinitionsProps = {
  title?: string;
  keys: readonly FigureKey[];
  /** Those whose meaning stands in the part already. */
  said?: readonly FigureKey[];
};

/** What the figures of a part are: meaning, formula, source; closed on a screen, open on paper. */
export function Definitions({ title = "What these figures are", keys, said = [] }: DefinitionsProps) {
  return (
    <details class="definitions">
      <summary>{title}</summary>
      <dl>
        {keys.map((key) => (
          <Definition key={key} figure={key} isSaid={said.includes(key)} />
        ))}
      </dl>
    </details>
  );
}

function Definition({ figure, isSaid }: { figure: FigureKey; isSaid: boolean }) {
  const { name, symbol, unit, meaning, formula, source } = figureDefinition(figure);
  return (
    <div>
      <dt>
        {name}
        {symbol && (
          <span class="symbol">
            , <WithIndexes text={symbol} />
          </span>
        )}
        {!isSaid && unit !== "none" && <span class="unit"> {unit}</span>}
      </dt>
      <dd>
        {!isSaid && <span class="said">{meaning}</span>}{" "}
        <span class="formula">
          <WithIndexes text={formula} />
        </span>{" "}
        <span class="where">{source}</span>
      </dd>
    </div>
  );
}

/** "u_c" as it is written by hand: what follows the line stands lower. */
function WithIndexes({ text }: { text: string }) {
  return text.split(/_(\w+)/u).map((part, place) => (place % 2 === 0 ? part : <sub key={part}>{part}</sub>));
}
