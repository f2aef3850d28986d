import { expect, it } from 'vitest'
import { designSchema, loopSchema, workbookSchema } from '#shared/workbook/schema.ts'
import { keyOrder } from '#shared/workbook/writeWorkbook.ts'
import { schemaKeys } from './schemaKeys.ts'

const fileKeys = {
  ...schemaKeys(workbookSchema),
  designs: { ...schemaKeys(designSchema), loops: schemaKeys(loopSchema) },
}

it('gives every key that the schema knows its place in the file, and no other', () => {
  expect(keyOrder).toEqual(fileKeys)
})

it('is looked for in every form of the schema', () => {
  expect(fileKeys).toMatchObject({
    reference: { temperament: { kind: null, key: null, cents: null } },
    designs: { fingerings: { pressed: null }, mainSlide: { outMm: null }, tuning: { harmonic: null } },
    bench: { slides: { furtherPairs: { returnSpacingMm: null } } },
  })
})
