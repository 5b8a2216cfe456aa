import { Marks } from "vega-scenegraph";
import { decimalSign } from "../../units/decimal-mark.ts";
import type { Item } from "./scene.ts";
import { short } from "./svg-path.ts";

/** Where a text stands, as attributes; one that is turned keeps its turn. */
export function placeOfText(item: Item, at: { x: number; y: number }): string {
  let transform = "";
  Marks.text?.attr((name, value) => {
    if (name === "transform") transform = String(value);
  }, item);
  const [x, y, turn] = movedBy(transform);
  const [toX, toY] = [short(at.x + x), short(at.y + y)];
  return turn === 0 ? ` x="${toX}" y="${toY}"` : ` transform="translate(${toX},${toY})rotate(${short(turn)})"`;
}

/** How far a transform moves, and the quarter turn in the middle of it. */
function movedBy(transform: string): [x: number, y: number, turn: number] {
  if (!transform.includes("rotate")) {
    const comma = transform.indexOf(",");
    return [Number(transform.slice("translate(".length, comma)), Number(transform.slice(comma + 1, -1)), 0];
  }
  let [x, y, turn] = [0, 0, 0];
  for (const [, name, numbers = ""] of transform.matchAll(/(\w+)\(([^)]*)\)/gu)) {
    const [one = 0, other = 0] = numbers.split(",").map(Number);
    if (name === "rotate") turn += one;
    else if (name !== "translate") throw new Error(`placeOfText: ${name} is not known`);
    else {
      const angle = (turn * Math.PI) / 180;
      x += one * Math.cos(angle) - other * Math.sin(angle);
      y += one * Math.sin(angle) + other * Math.cos(angle);
    }
  }
  return [x, y, turn];
}

/** What vega writes along an axis; other texts of a drawing have their mark already. */
const pointedNumber = /^(?<ones>[+−-]?\d+)\.(?<decimals>\d+)$/u;

/** What a text says, for SVG; a number along an axis with the decimal mark of now. */
export function textOf({ text }: Item): string {
  if (Array.isArray(text)) throw new Error("textOf: a text has one line");
  const said =
    text === undefined || text === null
      ? ""
      : String(text).trim().replace(pointedNumber, `$<ones>${decimalSign()}$<decimals>`);
  return said.replace(/&/gu, "&amp;").replace(/</gu, "&lt;").replace(/>/gu, "&gt;");
}
