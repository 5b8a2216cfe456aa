import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Command } from "commander";
import { describe, expect, test } from "vitest";
import { programOf } from "../../src/cli/command-line.ts";
import { tableColumns } from "../../src/model/table-columns.ts";
import { requiredTables, tableNames } from "../../src/model/table-names.ts";
import { recordFormat } from "../../src/record/record-format.ts";
import { sealedRecordSchema } from "../../src/record/record-schema.ts";
import { recordingConsole } from "../cli/recording-console.ts";
import { root } from "./page-runner.ts";

const page = (name: string) => readFileSync(join(root, "docs", name), "utf8");

/** The cells of every row of every table of a page. */
function rowsOf(text: string): readonly (readonly string[])[] {
  const lines = text.split("\n").filter((line) => line.startsWith("| "));
  return lines.map((line) =>
    line
      .slice(1, -1)
      .split(/(?<!\\)\|/u)
      .map((cell) => cell.trim()),
  );
}

describe("commands.md", () => {
  function leavesOf(command: Command): readonly Command[] {
    const { commands } = command;
    return commands.length === 0 ? [command] : commands.flatMap(leavesOf);
  }

  function cellsOf(command: Command): readonly string[] {
    const parent = command.parent?.name() === "spanwright" ? "" : `${command.parent?.name()} `;
    const words = command.registeredArguments.map((argument) => {
      const name = `${argument.name()}${argument.variadic ? "..." : ""}`;
      return argument.required ? `<${name}>` : `[${name}]`;
    });
    const options = command.options.map(({ flags }) => `\`${flags}\``).join("<br>") || "–";
    return [`\`${[parent + command.name(), ...words].join(" ")}\``, options, command.description()];
  }

  /** The rows of the page's table, which are written anew where RENEW_DOCS is in the environment. */
  function rowsOrNew(expected: readonly (readonly string[])[]): readonly (readonly string[])[] {
    const text = page("commands.md");
    if (process.env.RENEW_DOCS === undefined) return rowsOf(text).filter(([command]) => command?.startsWith("`"));
    const rows = expected.map((cells) => `| ${cells.join(" | ")} |\n`).join("");
    const without = text.replaceAll(/^\| `.*\n/gmu, "");
    writeFileSync(
      join(root, "docs/commands.md"),
      without.replace(/^\|[-| ]+\|\n/mu, (line) => line + rows),
    );
    return expected;
  }

  test("has a row for each command, with every option, as the program says them", () => {
    const expected = leavesOf(programOf(recordingConsole(), () => undefined)).map(cellsOf);
    expect(rowsOrNew(expected)).toEqual(expected);
  });
});

describe("tables.md", () => {
  test("names every table and its needed columns, and no other as needed", () => {
    const needed = tableNames.map((table) => {
      const columns = tableColumns(table).filter(({ required }) => required);
      return [table, columns.map(({ name }) => name).join(", ")];
    });
    const rows = new Map(rowsOf(page("tables.md")).map(([table = "", , columns = ""]) => [table, columns]));
    for (const [table = "", columns] of needed) expect(rows.get(table), table).toBe(columns);
    expect([...rows.keys()].slice(2, 5)).toEqual([...requiredTables]);
  });
});

describe("record.md", () => {
  test("names the form and each of its fields, and no other", () => {
    const text = page("record.md");
    expect(text).toContain(`\`${recordFormat}\``);
    const named = rowsOf(text).flatMap(([fields = ""]) => [...fields.matchAll(/`(\w+)`/gu)].map(([, field]) => field));
    expect(named.toSorted()).toEqual(Object.keys(sealedRecordSchema.shape).toSorted());
  });
});
