/** Light or dark as the person chose; where they did not, as the system says. */
import { useEffect } from 'preact/hooks'

export function useTheme(theme: 'system' | 'light' | 'dark'): void {
  useEffect(() => {
    if (theme === 'system') delete document.documentElement.dataset.theme
    else document.documentElement.dataset.theme = theme
  }, [theme])
}
