/** Excel measures columns in points; a character of the standard font takes 7 of 96 pixels an inch, with 5 beside. */
export const points = (characters: number): number => (characters * 7 + 5) * 0.75;
