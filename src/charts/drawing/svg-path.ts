import { onceForEachValue } from "../../record/once-for-each.ts";

/** A step of a path to a place; an arc has its shape, a curve its handles before it. */
export type PathStep = { command: "M" | "L" | "A" | "C" | "Q"; shape: readonly number[]; x: number; y: number };

/** A run of steps that are drawn without lifting, closed or not. */
export type Subpath = { steps: readonly PathStep[]; isClosed: boolean };

/** Subpaths, and how far they are moved: those of a symbol are the same for all that look like it. */
export type Outline = { subpaths: readonly Subpath[]; dx: number; dy: number };

type Place = Readonly<{ x: number; y: number }>;

const none: readonly number[] = [];

const number = /-?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/gu;
const numbersOf: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, A: 7, C: 6, Q: 4, Z: 0 };

/**
 * The steps of a path in absolute places, without points that nobody sees, moved by some way.
 * @throws Error for a command that vega does not write
 */
export function readPath(d: string, dx = 0, dy = 0): Outline {
  return { subpaths: d.length < longestKept ? seenIn(d) : seenSteps(d), dx, dy };
}

/** The outline of a symbol is the same in every chart, wherever it stands; that of a line is longer. */
const seenIn = onceForEachValue(seenSteps, 1000);
const longestKept = 200;

function seenSteps(d: string): readonly Subpath[] {
  return readSteps(d).map(({ steps, isClosed }) => ({ steps: withoutCollinear(steps), isClosed }));
}

/** A line through places, as vega draws one without bends: of a single place, a dot. */
export function straightPath(places: readonly Place[], dx: number, dy: number): Outline {
  const steps = places.map(({ x, y }, index): PathStep => ({ command: index === 0 ? "M" : "L", shape: none, x, y }));
  return { subpaths: [{ steps: withoutCollinear(steps), isClosed: places.length === 1 }], dx, dy };
}

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

/** A rectangle, moved by some way. */
export function rectanglePath(by: Place, { x, y, width, height }: Place & { width: number; height: number }): Outline {
  const [right, below] = [x + width, y + height];
  const corners = [
    [x, y],
    [right, y],
    [right, below],
    [right - width, below],
  ] as const;
  const steps = corners.map(([cornerX, cornerY], index): PathStep => {
    return { command: index === 0 ? "M" : "L", shape: none, x: cornerX, y: cornerY };
  });
  return { subpaths: [{ steps: withoutCollinear(steps), isClosed: true }], dx: by.x, dy: by.y };
}

/** A point nearer than this to the line between its neighbours is not seen; pixels. */
const unseen = 0.02;

/** Outlines as one path: relative steps of one decimal. */
export function writePath(outlines: readonly Outline[]): string {
  const path = new PathText();
  let [x, y] = [0, 0];
  for (const { subpaths, dx, dy } of outlines) {
    for (const { steps, isClosed } of subpaths) {
      for (const step of steps) {
        const [toX, toY] = [rounded(step.x + dx), rounded(step.y + dy)];
        addStep(path, step, { x: toX - x, y: toY - y }, { x: x - dx, y: y - dy });
        [x, y] = [toX, toY];
      }
      const [start] = steps;
      if (!isClosed || start === undefined) continue;
      path.command("z");
      [x, y] = [rounded(start.x + dx), rounded(start.y + dy)];
    }
  }
  return path.text.replace(/^m/u, "M");
}

/** The handles of a curve are said from where the step begins. */
function addStep(path: PathText, { command, shape }: PathStep, by: Place, from: Place): void {
  if (command === "L" && rounded(by.y) === 0) {
    path.command("h");
    path.number(by.x);
    return;
  }
  if (command === "L" && rounded(by.x) === 0) {
    path.command("v");
    path.number(by.y);
    return;
  }
  path.command(command.toLowerCase());
  for (const [index, value] of shape.entries()) {
    path.number(command === "A" ? value : value - (index % 2 === 0 ? from.x : from.y));
  }
  path.number(by.x);
  path.number(by.y);
}

/** A path as it grows (SVG 2, 9.3.9): no command that is that of the step before, no blank that two numbers can do without. */
class PathText {
  text = "";
  #command = "";
  #isAfterNumber = false;
  #isAfterFraction = false;

  command(command: string): void {
    // A second place behind an m is a line to it.
    if (command === this.#command && command !== "m" && command !== "z") return;
    this.text += command;
    this.#command = command;
    this.#isAfterNumber = false;
  }

  number(value: number): void {
    const next = short(value);
    const isParted = !this.#isAfterNumber || next.startsWith("-") || (this.#isAfterFraction && next.startsWith("."));
    this.text += isParted ? next : ` ${next}`;
    this.#isAfterNumber = true;
    this.#isAfterFraction = next.includes(".");
  }
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

/** Places are tenths of a pixel, of which a drawing has some thousands. */
const textOf = onceForEachValue((tenths: number) => String(tenths / 10).replace(/^(-?)0\./u, "$1."), 20_000);

/** A number with one decimal at most, for nobody sees a tenth of a pixel, and no zero that says nothing. */
export function short(value: number): string {
  return textOf(tenthsOf(value));
}

function rounded(value: number): number {
  return tenthsOf(value) / 10;
}

/** A place halfway between two tenths goes up, whatever its last digits. */
function tenthsOf(value: number): number {
  return Math.round(10 * value + 1e-6) || 0;
}
