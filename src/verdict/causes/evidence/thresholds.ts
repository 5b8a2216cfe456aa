/**
 * The limits by which causes are told from noise and from one another. All of them are own choice; a record looks for
 * some fifty causes in up to four stages, so that what is called a finding has to be far rarer by chance than 1 in 20.
 */
export const thresholds = Object.freeze({
  /** An error matters from this part of the tolerance on: below it nothing needs a cause. */
  matteringPartOfTolerance: 0.5,
  /** Chance at which noise alone reaches a finding, two-sided, each test: 1 in 10 000. */
  chanceOfNoise: 1e-4,
  /** The same for a gap between the two ways of a single cycle, whose scatter is known from a few gaps: 1 in 1000. */
  chanceOfNoiseInOneCycle: 1e-3,
  /** A line is taken to pass through a point that it misses by no more than this many uncertainties; beyond 2 the
   * candidate is not among the rivals any more, between 2 and 3 it is still named where it fits best. */
  excludedBeyondUncertainties: 2,
  namedWithinUncertainties: 3,
  /** Below this correlation (size) an output does not follow its input. */
  followsFrom: 0.5,
  /** From this correlation on a sensor surely follows its target. */
  surelyFollowsFrom: 0.9,
  /** Range of an output, percent of span, that counts as standing still while the target moves. */
  stillRange: 5,
  /** Signal below which there is none: a meter's zero and the leakage of an input (mA; percent of span for a voltage). */
  noCurrentMilliamps: 0.1,
  noVoltagePercent: 1,
  /** A voltage so far above its upper end, percent of span, is no measurement. */
  pinnedAbovePercent: 5,
  /** Measuring range beyond the ends of a signal, percent of span: NAMUR NE 43 gives 3.8 and 20.5 mA, −1.25 and 103.125 %. */
  saturationBelow: 1.6,
  saturationAbove: 3.5,
  voltageSaturationAbove: 5,
  saturationSlack: 0.4,
  /** NAMUR NE 43 fault levels 3.6 and 21 mA as percent of span, where no signal was read. */
  faultPercentLow: -2.5,
  faultPercentHigh: 106.25,
  /** A flagged signal this close to the line of the others, percent of span, is a measurement after all. */
  onLineWithin: 1.25,
  /** Errors of the two mistakes of a live zero, percent of span, and how exactly they must be met. */
  liveZeroMistake: 20,
  fromZeroMistake: 25,
  mistakeWithin: 0.6,
  /** Relative closeness of a gain to one of the list. */
  gainWithin: 0.002,
  inverseGainWithin: 0.03,
  /** Air temperature, K, by which a speed-of-sound error may miss what the thermometer says. */
  airWithinKelvin: 4,
  /** Current in V/R, mA, that a leakage across a two-wire loop can point to: 12 V over 500 Ω up to 30 V over 150 Ω. */
  leakageCrossing: Object.freeze([24, 200] as const),
  /** Closeness of a limited current to the one computed from supply and burden, or simulated, percent of span. */
  burdenWithin: 4,
  /** Ends against inside of the gap between rising and falling: play is the same everywhere, a lag half, a loop none. */
  playFrom: 0.75,
  lagFrom: 0.25,
  /** Smallest gap of a cycle as a part of the mean gap, where it is to be the same in every cycle. */
  gapOfEachCycle: 0.5,
  /** A bow counts from this many standard deviations of a single reading on. */
  bowOverRepeatability: 3,
  /** Two standard deviations of repeated readings, at least, over the tolerance. */
  scatterOverTolerance: 0.75,
  /** Far scatter over near scatter. */
  spreadRatio: 3,
  /** A typing error lies so many scatters off; what was meant lies within so many. */
  slipBeyondScatters: 6,
  slipWithinScatters: 4,
  /** Rounding to a grid leaves at least this part of a step as scatter; below it the values only happen to be round. */
  gridScatterPart: 0.15,
  /** Truncation leaves a mean error of half a step; so near to it, in steps, it is called that. */
  truncationWithin: 0.2,
});
