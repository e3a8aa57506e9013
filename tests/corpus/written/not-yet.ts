/** Texts that are not yet read as a careful buyer reads them, each with its reason. */
export const NOT_YET: { id: string; because: string }[] = []
