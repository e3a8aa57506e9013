/** Brings the words of a language while the page is already shown. */
import { useEffect, useState } from 'preact/hooks'
import { isSpoken, loadWords } from '../core/words/languages.ts'

/** Can sentences be made in this language now? Its words are fetched from the package where they are not here yet; of one without words: no. */
export function useSpoken(language: string): boolean {
  const [, setLoaded] = useState('')
  useEffect(() => {
    let gone = false
    loadWords(language)
      .then(() => gone || setLoaded(language))
      .catch(console.error)
    return () => {
      gone = true
    }
  }, [language])
  return isSpoken(language)
}
