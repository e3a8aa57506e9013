export const de: Record<string, string> = {}
