/** Figures that lie no further apart than this are the same, mm or minutes: the arithmetic of the solver and of sums rounds about so much. */
export const ROUNDING = 1e-6
