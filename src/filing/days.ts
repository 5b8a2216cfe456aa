const millisecondsPerDay = 86_400_000;
const daysPerYear = 365.25;

/** Whole days from one ISO date to another; below zero where the other comes first. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(to) - Date.parse(from)) / millisecondsPerDay);
}

/** The ISO date so many days later. */
export function daysLater(from: string, days: number): string {
  return new Date(Date.parse(from) + days * millisecondsPerDay).toISOString().slice(0, 10);
}

/** Years from one ISO date to another, of 365.25 days. */
export function yearsBetween(from: string, to: string): number {
  return daysBetween(from, to) / daysPerYear;
}
