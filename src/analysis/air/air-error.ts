/**
 * The error that the air alone makes in an ultrasonic sensor that does not correct for it.
 *
 * The echo comes back after 2x/c(actual); the sensor takes it for c(assumed)·time/2 = x·c(assumed)/c(actual). So the
 * error is x·(c(assumed)/c(actual) − 1): zero at the sensor's face, and growing with the distance from it.
 *
 * @param reference x, distance from the sensor's face
 * @param assumedSpeed speed of sound that the sensor reckons with: that of the air in which it was taught, m/s
 * @param actualSpeed speed of sound between sensor and target, m/s
 * @returns indicated minus reference, unit of the reference; above zero where the air is colder than when taught
 * Faults: none.
 * Source: time of flight; common practice of the trade has 0.17 to 0.18 % per kelvin near room temperature.
 * @example airError(1000, 343.2, 330) // 40
 */
export function airError(reference: number, assumedSpeed: number, actualSpeed: number): number {
  return reference * (assumedSpeed / actualSpeed - 1);
}
