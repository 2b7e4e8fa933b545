/** Only the science: the pure functions of each discipline. */
export {}
