// Days of a season, as people remember them: early, in the middle of, or late in a month.

const DAYS_IN_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const PARTS = [
  { key: "early", day: 5 },
  { key: "middle", day: 15 },
  { key: "late", day: 25 },
] as const;

export interface PartOfMonth {
  key: (typeof PARTS)[number]["key"];
  month: number;
  /** Day of the year, 1 to 365. */
  day: number;
}

/** The thirty-six parts of a year, from early January to late December. */
export const PARTS_OF_YEAR: readonly PartOfMonth[] = DAYS_IN_MONTH.flatMap((_, index) =>
  PARTS.map(({ key, day }) => ({ key, month: index + 1, day: daysBefore(index) + day })),
);

/** The part of the year that a day belongs to, as close as parts come. */
export function partNear(day: number): PartOfMonth | undefined {
  return [...PARTS_OF_YEAR].sort((a, b) => Math.abs(a.day - day) - Math.abs(b.day - day))[0];
}

function daysBefore(month: number): number {
  return DAYS_IN_MONTH.slice(0, month).reduce((sum, days) => sum + days, 0);
}
