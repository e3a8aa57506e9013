/** The mark by which a small window says where the panel is to begin: a draft of the look, forgotten once it is there. */
export const GO_TO = 'go-to'
export const TAILOR_PRICE = 'tailor-price'
