import { type Entry, stop, warn } from "./entry.ts";

/** What tables can say of each other that cannot be, or that should not be. */
export const modelProblems = {
  "model/key-twice": stop("the {what} stands there twice, first at line {firstLine}", "each {what} once"),
  "model/key-alike": stop(
    "the {what} looks like that of line {otherLine}: they differ by capitals, spaces or characters that look the same",
    "names that a person can tell apart",
  ),
  "model/tag-unknown": stop("no instrument has this tag", "a tag of the table instruments"),
  "model/standard-unknown": stop(
    "no standard is called so",
    "a name of the table standards; several have a comma, a semicolon or + between them",
  ),
  "model/calibration-unknown": stop(
    "no calibration is called so",
    "a name of the column calibration of the table calibrations",
  ),
  "model/output-unknown": stop(
    "the instrument {tag} has no switched output called so",
    "an output of the table outputs",
  ),
  "model/range-empty": stop(
    "the range ends at {upper} where it begins at {lower}: it has no span",
    "a range_upper above range_lower",
  ),
  "model/range-reversed": stop(
    "the range ends at {upper}, nearer than it begins, at {lower}",
    "the nearer end in range_lower; a signal that falls with the distance is stated by its ends, such as 20 at range_lower and 4 at range_upper",
  ),
  "model/signal-flat": stop(
    "the signal is the same at both ends of the range",
    "two signals that differ, such as 4 and 20",
  ),
  "model/pair-incomplete": stop("{present} is given and {absent} is not", "both of them, or neither"),
  "model/pair-flat": stop("{first} and {second} are the same", "two values that differ"),
  "model/tolerance-two-sided-basis": stop(
    "the second tolerance has no basis",
    "percent of span, percent of reading, distance or signal",
  ),
  "model/limits-reversed": stop("{lower} is not below {upper}", "a lower and an upper limit, in this order"),
  "model/nothing-measured": stop("the reading has neither signal nor counts nor value", "at least one of the three"),
  "model/counts-unscaled": warn(
    "counts are given, and the instrument does not say which counts its range ends should give",
    "counts_lower and counts_upper in the table instruments",
  ),
  "model/value-unscaled": warn(
    "controller values are given, and the instrument does not say which values its range ends should give",
    "value_lower and value_upper in the table instruments",
  ),
  "model/nothing-judged": stop(
    "no reading {phase} can be compared with its reference: the instrument does not say what counts or values its range ends should give",
    "a signal in the readings, or counts_lower and counts_upper, or value_lower and value_upper in the table instruments",
  ),
  "model/no-readings": stop(
    "the calibration has no readings, or all of them are rejected",
    "rows in the table readings that name it",
  ),
  "model/too-many-readings": stop(
    "the calibration has {readings} readings, and a record holds no more than {most}",
    "up to {most} readings of one calibration, such as every tenth of a long run",
  ),
  "model/reading-outside-range": warn(
    "the reference {reference} {unit} lies outside the range {lower} to {upper} {unit} by more than 10 % of span",
    "test points inside the range",
  ),
  "model/signal-outside-range": warn(
    "the signal {signal} {unit} lies outside {lower} to {upper} {unit} by more than 10 % of that span",
    "the signal as it was read; where it was mistyped, the row with its reason in the column rejected",
  ),
  "model/readings-out-of-order": warn(
    "the reference goes {actual} here, in a {direction} run of cycle {cycle}",
    "rising readings that rise and falling readings that fall, in the order in which they were taken",
  ),
  "model/direction-contradicted": warn(
    "the reference goes {actual} to this reading and from it, and the direction says {direction}{more}",
    "{fits} would fit",
  ),
  "model/phase-contradicted": warn(
    "the reading stands among those {others}, and the phase says {phase}",
    "{others} would fit, or the rows in the order of the work",
  ),
  "model/times-backwards": warn(
    "{phase}, the times run backwards: the reading above was taken at {before}; no drift in time is looked for by such times",
    "the readings in the order in which they were taken, each with its time",
  ),
  "model/time-of-another-day": warn(
    "the reading is of another day than the calibration, performed on {performedOn}",
    "the day on which it was read, or the day of the work",
  ),
  "model/read-twice": warn(
    "the point {point} was read before in cycle {cycle}, {direction}, {phase}, at line {line}",
    "each point once a run, or the number of the cycle that it belongs to",
  ),
  "model/point-wide": stop(
    "readings from {first} to {last} {unit} run together without a gap of 2 % of span, wider than one test point (lines {lines})",
    "the column point with the nominal position of each reading",
  ),
  "model/few-points": warn(
    "few test points {phase}: {points}",
    "at least five, as good practice asks (common practice)",
  ),
  "model/set-point-outside-range": warn(
    "the set point {setPoint} {unit} lies outside the range {lower} to {upper} {unit}",
    "a set point inside the range",
  ),
  "model/set-point-unlimited": warn(
    "the output {output} has no set_point_tolerance: how far it trips off its set point is reported and cannot be decided",
    "the greatest error that is allowed of the set point",
  ),
  "model/limit-outside-range": warn(
    "the limit {value}{unit} lies far outside what the controller shows over the range, {lower} to {upper}{unit}: the loop never comes there",
    "a limit that the value can reach",
  ),
  "model/trip-outside-range": warn(
    "the trip at {reference} {unit} lies outside the range {lower} to {upper} {unit}",
    "a trip inside the range",
  ),
  "model/trips-exchanged": warn(
    "the output {output} recedes at {recede} {unit}, nearer than it approaches at {approach} {unit} (line {line})",
    "a release farther away than the operation: approach and recede may be exchanged",
  ),
  "model/trips-one-direction": warn(
    "the output {output} was tripped on {direction} only, {phase}",
    "trips on approach and on recede, for the differential travel",
  ),
  "model/few-approaches": warn(
    "fewer than three trips of the output {output} on approach, {phase}: {approaches}",
    "three approaches or more (common practice)",
  ),
  "model/standard-overdue": warn(
    "the standard {standard} was due on {due}; it was used on {used}",
    "a standard inside its calibration interval on the day of use",
  ),
  "model/standard-not-yet-calibrated": warn(
    "the certificate of the standard {standard} is of {calibrated}, later than its use on {used}",
    "a certificate that was valid on the day of use",
  ),
  "model/standard-without-uncertainty": warn(
    "the standard {standard} states no expanded uncertainty",
    "expanded_uncertainty with its unit and coverage factor, from the certificate",
  ),
  "model/standard-unit": stop(
    "the standard {standard} measures {quantity}, and its uncertainty is in {unit}",
    "the quantity that it measures, or its uncertainty in {units}",
  ),
  "model/no-standard": warn(
    "the calibration names no standard, so nothing shows its traceability",
    "the standards used, by name",
  ),
  "model/as-left-without-adjustment": warn(
    "there are readings as left, and the adjustment is none",
    "what was adjusted, or as found readings only",
  ),
  "model/adjustment-without-as-left": warn(
    "the loop was adjusted ({adjustment}) and there are no readings as left",
    "readings as left after every adjustment",
  ),
  "model/as-found-missing": warn(
    "there are readings as left and none as found",
    "readings as found, taken before anything is touched",
  ),
  "model/reviewer-is-performer": warn("{person} performed and {action} the calibration", "two different people"),
  "model/pin-contradicted": warn(
    "the column pins of the instrument has {says}",
    "one pin for each of them, the same in both tables",
  ),
  "model/output-contradicted": warn(
    "the table outputs has {stated} for {output}",
    "one and the same in both tables; the direction of the current decides, labels differ from maker to maker",
  ),
  "model/states-contradicted": warn(
    "the output {output} went {state} on {direction} here, and by {others} other trips of the phase it is {seen}",
    "the state after each trip as it was seen; an output that does not do the same each time has a fault",
  ),
  "model/function-contradicted": warn(
    "by the states after its trips the output {output} is {seen}, and the table outputs has {stated}",
    "one and the same in both tables",
  ),
  "model/pin-not-there": warn(
    "the connector {connector} has no pin {pin}",
    "a pin of the connector, or its right name",
  ),
  "model/pin-uncommon": warn(
    "{role} is on pin {pin}; by the common assignment (IEC 60947-5-2) it is on pin {usual}",
    "the pins as they are wired; where they are so, whoever plugs in another sensor has to know",
  ),
  "model/wire-uncommon": warn(
    "by the common colours (IEC 60947-5-2) this wire carries {role}, and no output",
    "the wire as it is; black, white or a number for an output",
  ),
  "model/air-unlikely": warn(
    "air of {celsius} °C is rare around a sensor{hint}",
    "the temperature of the air in °C, mostly from {least} to {most} °C, or with its unit behind it",
  ),
  "model/echo-missed": warn(
    "a flat target tilted by {tilt}° throws its echo beside the sensor: its beam of {beam}° has an edge {edge}° from the axis",
    "a target that stands square to the axis, or the tilt and the beam_angle as they are",
  ),
  "model/permit-missing": warn(
    "the loop is a safety function, and the calibration names no permit for its bypass",
    "the number of the permit in bypass_permit",
  ),
  "model/loop-check-open": warn(
    "{count} items of the loop check have no result; the first is {item}",
    "pass, fail or not applicable; an item without a result counts as not looked at, unless its number decides",
  ),
  "model/performed-in-future": warn(
    "the calibration is dated later than today, {today}",
    "the day on which the work was done",
  ),
  "model/dates-out-of-order": warn("{later} comes before {earlier}", "dates in the order of the work"),
  "model/due-before-calibrated": stop(
    "the due date comes before the calibration date",
    "dates in the order of the work",
  ),
  "verdict/loop-check-contradiction": warn(
    "the result of {item} is pass, and yet: {outside}",
    "a result that the numbers bear out, or what is wrong in the numbers put right",
  ),
} satisfies Record<string, Entry>;
