/** Figures that lie no further apart than this are the same, mm or minutes: the arithmetic of the solver and of sums rounds about so much. */
export const ROUNDING = 1e-6

/** Less than this is not said to be wrong, mm: half of the usual mark. */
export const NOTICED_MM = 1

/** To a thousandth of a millimetre, as figures are given. Never −0. */
export const toThousandths = (mm: number): number => Math.round(mm * 1000) / 1000 + 0
