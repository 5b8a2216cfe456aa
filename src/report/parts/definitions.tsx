import { type FigureKey, figureDefinition } from "../../record/figure-definitions.ts";
import { marked } from "../../units/decimal-mark.ts";
import { sourceWords } from "../texts/source-texts.ts";

/** What figures are: meaning, formula, source. */
export function Definitions({ keys }: { keys: readonly FigureKey[] }) {
  return (
    <dl class="definitions">
      {keys.map((key) => (
        <Definition key={key} figure={key} />
      ))}
    </dl>
  );
}

function Definition({ figure }: { figure: FigureKey }) {
  const { name, symbol, unit, meaning, formula, source } = figureDefinition(figure);
  return (
    <div>
      <dt>
        {name}
        {symbol && (
          <var>
            , <WithIndexes text={symbol} />
          </var>
        )}
        {unit !== "none" && <small> {unit}</small>}
      </dt>
      <dd>
        {marked(meaning)}{" "}
        <samp>
          <WithIndexes text={marked(formula)} />
        </samp>{" "}
        <cite>{sourceWords(source)}</cite>
      </dd>
    </div>
  );
}

/** "u_c" as it is written by hand: what follows the line stands lower. */
function WithIndexes({ text }: { text: string }) {
  return text.split(/_(\w+)/u).map((part, place) => (place % 2 === 0 ? part : <sub key={part}>{part}</sub>));
}
