// @vitest-environment happy-dom
/** The key of the tape: four marks, each with its line, drawn as the tape draws them. */
import { afterEach, expect, it } from 'vitest'
import { TapeKey } from '../../../components/tape/tape-key.tsx'
import { hide, inPage, show, textOf } from '../on-page.tsx'

afterEach(hide)

it('says in four lines what is now, what is only thought, what fits, and what comes after', () => {
  show(<TapeKey />)
  const lines = [...inPage().querySelectorAll('li')]
  expect(lines.map(textOf)).toEqual([
    'The solid triangle above is the garment as it measures now.',
    'The empty triangle above is our estimate: nobody has measured it.',
    'Between the brackets it fits you well.',
    'The dashed triangle below is the garment after the alterations.'
  ])
  // each line has the mark that the tape itself draws for it, and no other
  const marks = ['.tp-nowf', '.tp-hollow', '.tp-band', '.tp-aftf']
  expect(lines.map((line) => marks.filter((mark) => line.querySelector(mark) !== null))).toEqual(marks.map((mark) => [mark]))
})
