import { expect, it } from 'vitest'
import { CATALOGUE } from '../../core/alterations/catalogue.ts'
import { catalogueTable, developers, withTable } from './catalogue-table.ts'

it('the table of alterations in DEVELOPERS.md is as the rows are: npx tsx tests/house/catalogue-table.ts writes it', () => {
  expect(catalogueTable().split('\n')).toHaveLength(CATALOGUE.length + 2)
  expect(developers()).toBe(withTable(developers()))
})
