/** A row of underscores in a sentence stands for a number that the plan does not say. */
export const BLANK = /_{4,}/g
