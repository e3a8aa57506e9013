import * as z from 'zod/mini'

/** What the injected script says when its page goes, turns into another without loading, or comes back as it was. */
export const pageMessage = z.object({ about: z.literal('page'), is: z.enum(['left', 'shown']), address: z.string() })
export type PageMessage = z.infer<typeof pageMessage>
