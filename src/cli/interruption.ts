type Listened = Pick<NodeJS.Process, "once" | "off">;

/** Whether somebody pressed Ctrl-C; a second time ends the process at once, as ever. */
export type Interruption = { isAsked: () => boolean; end: () => void };

/** Listens from now to `end`, so that a record that was begun is finished and no other is begun. */
export function interruptionOf(process: Listened): Interruption {
  let isAsked = false;
  const note = () => {
    isAsked = true;
  };
  process.once("SIGINT", note);
  return { isAsked: () => isAsked, end: () => void process.off("SIGINT", note) };
}
