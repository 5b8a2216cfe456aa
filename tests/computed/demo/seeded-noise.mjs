/**
 * Noise that is the same on every machine and every run: Mulberry32 for the uniform stream, Box and Muller (1958) for
 * the normal one.
 */
export function seededNoise(seed) {
  let state = seed >>> 0;
  return { uniform, normal };

  function uniform() {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  }

  function normal() {
    return Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  }
}
