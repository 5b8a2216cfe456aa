import { type Entry, stop, warn } from "./entry.ts";

/** What cannot be right, or is hardly meant, by what the numbers of a calibration say of each other. */
export const plausibilityProblems = {
  "plausible/tolerance-refused": stop(
    "the tolerance is as wide as {percent} % of the span: {limits} {unit} at {reference} {unit}",
    "a tolerance up to 25 % of span, or yes in the column tolerance_is_wide",
  ),
  "plausible/tolerance-wide": warn(
    "the tolerance is as wide as {percent} % of the span: {limits} {unit} at {reference} {unit}",
    "a tolerance up to 10 % of span, as common practice has it, or a wider one that is meant",
  ),
  "plausible/output-tolerance-refused": stop(
    "the tolerance of {output} is as wide as {percent} % of the span: {limits} {unit}",
    "a tolerance up to 25 % of span, or yes in the column tolerance_is_wide of the table instruments",
  ),
  "plausible/output-tolerance-wide": warn(
    "the tolerance of {output} is as wide as {percent} % of the span: {limits} {unit}",
    "a tolerance up to 10 % of span, as common practice has it, or a wider one that is meant",
  ),
  "plausible/tolerance-fine": warn(
    "the tolerance {phase}, {tolerance} {unit} at {reference} {unit}, is finer than one step of {what}, {step} {unit}",
    "readings and standards that show a fraction of the tolerance",
  ),
  "plausible/tolerance-none": warn(
    "the tolerance {phase} is 0 at {reference} {unit}: there no error at all is allowed",
    "a part of the reading with the least that is allowed, such as 1 % of reading or 5 mm, whichever is greater",
  ),
  "plausible/unit-of-column": stop(
    "{phase}, the numbers as a whole fit {unit}, and not {own}: so taken they lie {after} % of span off what the other columns say, as they stand {before} %",
    "numbers in {own}, or each with its unit behind it",
  ),
  "plausible/unit-of-range": stop(
    "{phase}, the readings fit a range in {unit}, and not in {own}: {after} % of span off, as it stands {before} %",
    "the range and the readings in one unit, or each number with its unit behind it",
  ),
  "plausible/scale-unknown": stop(
    "{phase}, the numbers follow the distance and are no signal of {lower} to {upper} {own}: they go from {least} to {greatest}",
    "the signal in {own}; counts in the column counts",
  ),
  "plausible/references-outside": stop(
    "{phase}, the references are none of the range of {lower} to {upper} {own}: they go from {least} to {greatest} {own}",
    "references inside the range, in {own} or each with its unit behind it; or the range that is meant",
  ),
  "plausible/unit-of-row": stop(
    "{typed} fits the other readings in {unit}, and not in {own}",
    "the number in {own}, about {expected}, or with its unit behind it",
  ),
  "plausible/point-unit": stop(
    "the reference {reference} and the point {point} are the same distance in {unit} and in {own}",
    "both in {own}, or each with its unit behind it",
  ),
  "plausible/point-apart": warn(
    "the reference {reference} {own} and the point {point} {own} lie {percent} % of span apart{hint}",
    "the distance that was set, and the nominal position that it was meant for",
  ),
  "plausible/reading-apart": warn(
    "{column} {typed} {own} lies {percent} % of span off what the other readings say; about {expected} would fit{hint}",
    "the number as it was read; the point read again; or the row with its reason in the column rejected",
  ),
  "plausible/rows-exchanged": warn(
    "{column} {typed} {own} does not fit here, nor {other} {own} at line {line}: exchanged they fit",
    "each number in its own row",
  ),
  "plausible/reading-of-other-phase": warn(
    "the reading lies {percent} % of span off those {phase}, and fits those {other}",
    "the phase in which it was taken",
  ),
  "plausible/row-copied": warn(
    "the reading has the same numbers as that of line {line}; it is not counted as a repeat",
    "each reading once, as it was read",
  ),
  "plausible/cycle-copied": warn(
    "cycle {cycle} {phase}{part} repeats the numbers of another to the last digit, from line {line} on; it is not counted as a repeat",
    "each cycle as it was read",
  ),
  "plausible/phase-copied": warn(
    "{same} of {readings} as left have the numbers of those as found to the last digit, though the loop was adjusted",
    "each phase as it was read",
  ),
  "plausible/phases-exchanged": warn(
    "{how}: the phases as found and as left may be exchanged",
    "as found before anything was adjusted, as left after it",
  ),
  "plausible/load-too-small": warn(
    "the card's {card} Ω load the voltage output more than it allows: load_min is {least} Ω",
    "a card of more resistance, or the data of sensor and card as they are",
  ),
  "plausible/burden-too-great": warn(
    "{burden} Ω are stated in series with the current output, and {setBy} {greatest} Ω",
    "less resistance, more supply, or the data of sensor and loop as they are",
  ),
  "plausible/supply-outside": warn(
    "the loop is fed with {supply} V, and the sensor takes: {limits}",
    "a supply that the sensor takes, or the data as they are",
  ),
  "plausible/range-in-blind-zone": warn(
    "the range begins at {lower} {unit}, inside the blind zone of {zone} {unit}: nearer than that the sensor measures nothing",
    "a range that begins beyond the blind zone, or the data as they are",
  ),
  "plausible/outputs-exchanged": warn(
    "{one} trips at {at} {own} and {other} at {otherAt} {own}, each where the other one is set to: exchanged they fit",
    "each trip under its own output; or the outputs, their cores or their rows exchanged, and none of them taught before",
  ),
  "plausible/trip-unit": stop(
    "the trip at {typed} fits {what} in {unit}, and not in {own}",
    "the number in {own}, or with its unit behind it",
  ),
  "plausible/trip-apart": warn(
    "the trip of {output} at {typed} {own}, on {direction}, lies far from the others; about {expected} would fit{hint}",
    "the distance at which the output changed",
  ),
} satisfies Record<string, Entry>;
