import { onceForEachValue } from "../../record/once-for-each.ts";

/** A step of a path to a place; an arc has its shape, a curve its handles before it. */
export type PathStep = { command: "M" | "L" | "A" | "C" | "Q"; shape: readonly number[]; x: number; y: number };

/** A run of steps that are drawn without lifting, closed or not. */
export type Subpath = { steps: readonly PathStep[]; isClosed: boolean };

type Place = Readonly<{ x: number; y: number }>;

const none: readonly number[] = [];

const number = /-?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/gu;
const numbersOf: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, A: 7, C: 6, Q: 4, Z: 0 };

/**
 * The steps of a path in absolute places, moved by some way.
 * @throws Error for a command that vega does not write
 */
export function readPath(d: string, dx = 0, dy = 0): readonly Subpath[] {
  const subpaths = d.length < longestKept ? shapeOf(d) : readSteps(d);
  return subpaths.map((subpath) => movedPath(subpath, dx, dy));
}

/** The outline of a symbol is the same in every chart, wherever it stands; that of a line is longer. */
const shapeOf = onceForEachValue(readSteps, 1000);
const longestKept = 200;

function readSteps(d: string): readonly Subpath[] {
  const subpaths: { steps: PathStep[]; isClosed: boolean }[] = [];
  let [x, y] = [0, 0];
  for (const [, letter = "", rest = ""] of d.matchAll(/([a-zA-Z])([^a-df-zA-Z]*)/gu)) {
    const command = letter.toUpperCase();
    const count = numbersOf[command];
    if (count === undefined) throw new Error(`readPath: ${letter} is not known`);
    const last = subpaths.at(-1);
    if (command === "Z") {
      if (last !== undefined) last.isClosed = true;
      [x, y] = [last?.steps[0]?.x ?? x, last?.steps[0]?.y ?? y];
      continue;
    }
    const numbers = (rest.match(number) ?? []).map(Number);
    for (let index = 0; index < numbers.length; index += count) {
      const step = absolute(letter, numbers.slice(index, index + count), x, y);
      if (step.command === "M") subpaths.push({ steps: [], isClosed: false });
      subpaths.at(-1)?.steps.push(step);
      [x, y] = [step.x, step.y];
    }
  }
  return subpaths;
}

function absolute(letter: string, numbers: readonly number[], x: number, y: number): PathStep {
  const command = letter.toUpperCase();
  const [dx, dy] = letter === command ? [0, 0] : [x, y];
  if (command === "H") return { command: "L", shape: [], x: dx + (numbers[0] ?? 0), y };
  if (command === "V") return { command: "L", shape: [], x, y: dy + (numbers[0] ?? 0) };
  const shape = numbers.slice(0, -2);
  const [toX = 0, toY = 0] = numbers.slice(-2);
  const handles = command === "A" ? shape : shape.map((value, index) => value + (index % 2 === 0 ? dx : dy));
  return { command: command as PathStep["command"], shape: handles, x: dx + toX, y: dy + toY };
}

function moved({ command, shape, x, y }: PathStep, dx: number, dy: number): PathStep {
  const isAsItIs = command === "A" || shape.length === 0;
  const handles = isAsItIs ? shape : shape.map((value, index) => value + (index % 2 === 0 ? dx : dy));
  return { command, shape: handles, x: x + dx, y: y + dy };
}

/** A subpath moved by some way. */
export function movedPath({ steps, isClosed }: Subpath, dx: number, dy: number): Subpath {
  return { steps: steps.map((step) => moved(step, dx, dy)), isClosed };
}

/** A rectangle, moved by some way. */
export function rectanglePath(by: Place, { x, y, width, height }: Place & { width: number; height: number }): Subpath {
  const [right, below] = [x + width, y + height];
  const corners = [
    [x, y],
    [right, y],
    [right, below],
    [right - width, below],
  ] as const;
  const steps = corners.map(([cornerX, cornerY], index) => {
    return { command: index === 0 ? "M" : "L", shape: none, x: cornerX + by.x, y: cornerY + by.y } as const;
  });
  return { steps, isClosed: true };
}

/** A point nearer than this to the line between its neighbours is not seen; pixels. */
const unseen = 0.02;

/** Subpaths as one path: relative steps, one decimal, no point that lies on the line between its neighbours. */
export function writePath(subpaths: readonly Subpath[]): string {
  let [x, y] = [0, 0];
  const parts: string[] = [];
  for (const { steps, isClosed } of subpaths) {
    const [start] = steps;
    for (const step of withoutCollinear(steps)) {
      const to = [rounded(step.x), rounded(step.y)] as const;
      parts.push(relative(step, x, y, to));
      [x, y] = to;
    }
    if (!isClosed || start === undefined) continue;
    parts.push("z");
    [x, y] = [rounded(start.x), rounded(start.y)];
  }
  return parts.join("").replace(/^m/u, "M");
}

function withoutCollinear(steps: readonly PathStep[]): readonly PathStep[] {
  const kept: PathStep[] = [];
  for (const [index, step] of steps.entries()) {
    const before = kept.at(-1);
    const after = steps[index + 1];
    const isBetween =
      step.command === "L" && after?.command === "L" && before !== undefined && liesBetween(before, step, after);
    if (!isBetween) kept.push(step);
  }
  return kept;
}

function liesBetween(one: PathStep, between: PathStep, other: PathStep): boolean {
  const [ax, ay] = [between.x - one.x, between.y - one.y];
  const [bx, by] = [other.x - one.x, other.y - one.y];
  const length = Math.hypot(bx, by);
  const isAhead = ax * bx + ay * by >= 0 && Math.hypot(ax, ay) <= length;
  return isAhead && Math.abs(ax * by - ay * bx) <= unseen * length;
}

function relative({ command, shape }: PathStep, x: number, y: number, [toX, toY]: readonly [number, number]): string {
  const [dx, dy] = [toX - x, toY - y];
  if (command === "L" && rounded(dy) === 0) return `h${short(dx)}`;
  if (command === "L" && rounded(dx) === 0) return `v${short(dy)}`;
  if (shape.length === 0) return `${command.toLowerCase()}${joined([dx, dy])}`;
  const handles = command === "A" ? shape : shape.map((value, index) => value - (index % 2 === 0 ? x : y));
  return `${command.toLowerCase()}${joined([...handles, dx, dy])}`;
}

/** A minus parts two numbers as well as a blank does. */
function joined(numbers: readonly number[]): string {
  let text = "";
  for (const number of numbers) {
    const next = short(number);
    text += text === "" || next.startsWith("-") ? next : ` ${next}`;
  }
  return text;
}

/** Places are tenths of a pixel, of which a drawing has some thousands. */
const textOf = onceForEachValue((place: number) => String(place).replace(/^(-?)0\./u, "$1."), 20_000);

/** A number with one decimal at most, for nobody sees a tenth of a pixel, and no zero that says nothing. */
export function short(value: number): string {
  return textOf(rounded(value));
}

/** A place halfway between two tenths goes up, whatever its last digits. */
function rounded(value: number): number {
  return Math.round(10 * value + 1e-6) / 10 || 0;
}
