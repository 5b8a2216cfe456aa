import { expect, test } from "vitest";
import { filesBelow } from "../architecture/source-files.ts";
import { docblockExamples, type Example, shownFolders } from "./docblock-examples.ts";
import * as inputs from "./example-inputs.ts";
import { isShown, shownValue } from "./shown-value.ts";

declare global {
  interface ImportMeta {
    /** The bundler's: every module of a pattern, by its path. */
    glob<Exports>(pattern: string, options: { eager: true }): Record<string, Exports>;
  }
}

type Names = Readonly<Record<string, unknown>>;

const examples = docblockExamples(shownFolders.flatMap((folder) => filesBelow(`src/${folder}`)));
const run = examples.filter(({ isInWords }) => !isInWords);

/** Named as a pattern, so that a change of any of them is seen to be one of what this test rests on. */
const modules = import.meta.glob<Names>("../../src/{numeric,units,analysis,verdict,record,assembly,proof}/**/*.ts", {
  eager: true,
});
const exportsByPath = new Map(Object.entries(modules).map(([path, names]) => [path.replace("../../", ""), names]));
const everywhere: Names = Object.assign({}, ...exportsByPath.values(), inputs);

/** A file's own names go before those of others. */
function given({ path, expression }: Example): unknown {
  const names: Names = { ...everywhere, ...exportsByPath.get(path) };
  return new Function(...Object.keys(names), `"use strict"; return (${expression});`)(...Object.values(names));
}

/** Why an example is not what the program does; nothing where it is. */
function exampleFault(example: Example): string | undefined {
  const { expression, gives } = example;
  const shown = shownValue(gives);
  let value: unknown;
  try {
    value = given(example);
  } catch (fault) {
    return gives !== "" && String(fault).startsWith(gives) ? undefined : `${expression} throws ${fault}`;
  }
  if (shown === undefined) return `${expression} shows what is no value: ${gives}`;
  return isShown(shown, value) ? undefined : `${expression} gives ${JSON.stringify(value)}, and shows ${gives}`;
}

test.each([...new Set(run.map(({ path }) => path))])("%s shows what it gives", (file) => {
  const ofFile = run.filter(({ path }) => path === file);
  expect(ofFile.flatMap((example) => exampleFault(example) ?? [])).toEqual([]);
});

test("nearly all examples are run, and none is kept in words that need not be", () => {
  expect(run.length).toBeGreaterThan(320);
  expect(examples.filter(({ isInWords }) => isInWords)).toEqual([]);
});

test("an example that shows another value, throws, or shows none is told", () => {
  const text = [
    "/**\n * @example mean([1, 2]) // 1.6\n */",
    "/**\n * @example mean([]) // 0\n */",
    "/** @example mean([1,\n *   2]) // the middle\n */",
    "/** @example mean([]) // RangeError: the mean of no values */",
  ].join("\n");
  const planted = docblockExamples([{ path: "src/numeric/mean.ts", text }]);
  expect(planted.map(exampleFault)).toEqual([
    "mean([1, 2]) gives 1.5, and shows 1.6",
    "mean([]) throws RangeError: the mean of no values is not defined",
    "mean([1, 2]) shows what is no value: the middle",
    undefined,
  ]);
});
