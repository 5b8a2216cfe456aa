import type { Command } from "commander";

/** The shells for which a script is made. */
export const shells = ["bash", "zsh", "fish"] as const;
export type Shell = (typeof shells)[number];

/** A script with which a shell completes the commands of a program and their options, made from the commands. */
export function completionScript(program: Command, shell: Shell): string {
  const leaves = leavesOf(program);
  if (shell === "fish") return leaves.flatMap((leaf) => fishLines(program.name(), leaf)).join("\n");
  const script = bashScript(program.name(), leaves);
  return shell === "zsh" ? `autoload -U +X bashcompinit && bashcompinit\n${script}` : script;
}

/** A command by the words that call it. */
type Leaf = { words: readonly string[]; command: Command };

function leavesOf(command: Command, before: readonly string[] = []): readonly Leaf[] {
  return command.commands.flatMap((one) => {
    const words = [...before, one.name()];
    return one.commands.length === 0 ? [{ words, command: one }] : leavesOf(one, words);
  });
}

function optionsOf({ command }: Leaf): readonly string[] {
  return [...command.options.flatMap(({ long }) => long ?? []), "--help"];
}

function bashScript(name: string, leaves: readonly Leaf[]): string {
  const first = [...new Set(leaves.map(({ words }) => words[0]))];
  const branches = leaves.map((leaf) => `    "${leaf.words.join(" ")}"*) words="${optionsOf(leaf).join(" ")}" ;;`);
  const second = leaves.filter(({ words }) => words.length > 1);
  const parents = [...new Set(second.map(({ words }) => words[0]))].map((parent) => {
    const children = second.filter(({ words }) => words[0] === parent).map(({ words }) => words[1]);
    return `  [ "$COMP_CWORD" -eq 2 ] && [ "\${COMP_WORDS[1]}" = ${parent} ] && words="${children.join(" ")}"`;
  });
  return [
    `_${name}() {`,
    '  local words=""',
    `  case "\${COMP_WORDS[*]:1}" in`,
    // The longer names first, for one may begin as another does.
    ...branches.toSorted((one, other) => (one < other ? 1 : -1)),
    "  esac",
    ...parents,
    `  [ "$COMP_CWORD" -eq 1 ] && words="${first.join(" ")} --help --version"`,
    `  COMPREPLY=( $(compgen -W "$words" -- "\${COMP_WORDS[COMP_CWORD]}") )`,
    "}",
    `complete -o default -F _${name} ${name}`,
  ].join("\n");
}

function fishLines(name: string, { words, command }: Leaf): readonly string[] {
  const [first = "", second] = words;
  const described = ` -d ${fishQuoted(command.description())}`;
  const seen = `-n "__fish_seen_subcommand_from ${second ?? first}"`;
  return [
    second === undefined
      ? `complete -c ${name} -n __fish_use_subcommand -a ${first}${described}`
      : `complete -c ${name} -n "__fish_seen_subcommand_from ${first}" -a ${second}${described}`,
    ...command.options.flatMap(({ long, description }) =>
      long === undefined ? [] : [`complete -c ${name} ${seen} -l ${long.slice(2)} -d ${fishQuoted(description)}`],
    ),
  ];
}

function fishQuoted(text: string): string {
  return `'${text.replaceAll("\\", "\\\\").replaceAll("'", "\\'")}'`;
}
