/** Code of a channel, by name. */
export type Channels = Readonly<Record<string, { code: string }>>;

/** A function in the text of a program. */
export class FunctionText {
  constructor(
    readonly parameters: string,
    readonly body: string,
  ) {}
}

class Beyond extends Error {}

/** Leaves a chart to vega: it holds something that the walker does not know. */
export function beyond(what: string): never {
  throw new Beyond(what);
}

export function isBeyond(fault: unknown): boolean {
  return fault instanceof Beyond;
}

/** A value as text that gives it again; what is undefined is left out. */
export function textOf(value: unknown): string {
  if (value instanceof FunctionText) return `function(${value.parameters}){${value.body}}`;
  if (Array.isArray(value)) return `[${value.map(textOf).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "undefined";
  const entries = Object.entries(value).filter(([, one]) => one !== undefined);
  return `{${entries.map(([name, one]) => `${JSON.stringify(name)}:${textOf(one)}`).join(",")}}`;
}

/** What an expression may call; `chart-functions.ts` has them. */
const knownFunctions = [
  ...["isValid", "isDate", "toDate", "toNumber", "utcFormat", "lerp", "span", "range", "__bandwidth"],
];

export function expressionText(parameters: string, code: string): FunctionText {
  return new FunctionText(parameters, code.endsWith(";") ? known(code) : `return(${known(code)});`);
}

function known(code: string): string {
  for (const [, name = ""] of code.matchAll(/\bthis\.(\w+)/gu)) {
    if (!knownFunctions.includes(name)) beyond(`the function ${name}`);
  }
  return code;
}

/** Channels that would change more than how an item looks. */
const beyondChannels = ["description", "aria", "href", "clip", "lineBreak", "blend", "strokeForeground", "tension"];

/** An encoder: it sets the channels of an item and says whether one of them changed. */
export function encoderText(set: { marktype: string; channels: Channels } | undefined): FunctionText | undefined {
  if (set === undefined) return undefined;
  const entries = Object.entries(set.channels);
  for (const [name, { code }] of entries) {
    const isSaidZero = (name === "zindex" || name === "limit") && code !== "0";
    if (beyondChannels.includes(name) || isSaidZero) beyond(`the channel ${name}`);
  }
  const settings = entries.map(([name, { code }]) => {
    const place = `item[${JSON.stringify(name)}]`;
    return `$=${known(code)};if(${place}!==$)${place}=$,m=1;`;
  });
  if (entries.length === 0) return undefined;
  const start = "var datum=item.datum,m=0,$;";
  return new FunctionText("item,_", `${start}${settings.join("")}${placeText(set.channels, set.marktype)}return m;`);
}

/** Two edges or a middle as a place and a size, as vega does it. */
function placeText({ x, x2, xc, y, y2, yc }: Channels, marktype: string): string {
  if (marktype === "rule") return "";
  const mayTurn = marktype === "group" || marktype === "rect";
  return (
    along("x", "width", { start: x, end: x2, middle: xc }) + along("y", "height", { start: y, end: y2, middle: yc })
  );

  type Said = Channels[string] | undefined;
  function along(from: string, size: string, { start, end, middle }: Record<string, Said>): string {
    const to = `${from}2`;
    const turned = `if(item.${from}>item.${to})$=item.${from},item.${from}=item.${to},item.${to}=$;`;
    const sized = `${mayTurn ? turned : ""}item.${size}=item.${to}-item.${from};`;
    const placed = `item.${from}=item.${to}-(item.${size}||0);`;
    const centred = middle === undefined ? "" : `item.${from}=item.${from}c-(item.${size}||0)/2;`;
    return (end === undefined ? "" : start === undefined ? placed : sized) + centred;
  }
}
