import type { Command } from "commander";
import type { Console } from "./console.ts";

/** 0: done, whatever the verdict; 1: a check has a doubt; 2: the input or the command line is wrong, or nothing was written. */
export type ExitCode = 0 | 1 | 2;

/** Adds one command to the program; what it ends with is handed to `settle`. */
export type AddCommand = (program: Command, console: Console, settle: (exitCode: ExitCode) => void) => void;
