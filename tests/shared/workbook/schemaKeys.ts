import * as z from 'zod'
import type { KeyOrder } from '#shared/workbook/writeWorkbook.ts'

/** Every key that a schema knows, with the keys inside it: of a list those of its items, of a choice those of all. */
export function schemaKeys(schema: z.core.$ZodType): KeyOrder | null {
  if (schema instanceof z.ZodOptional) return schemaKeys(schema.unwrap())
  if (schema instanceof z.ZodArray) return schemaKeys(schema.element)
  if (schema instanceof z.ZodUnion) return schema.options.map(schemaKeys).reduce(both, null)
  if (!(schema instanceof z.ZodObject)) return null
  return Object.fromEntries(Object.entries(schema.shape).map(([key, inner]) => [key, schemaKeys(inner)]))
}

function both(one: KeyOrder | null, other: KeyOrder | null): KeyOrder | null {
  if (one === null || other === null) return one ?? other
  const keys = Object.keys({ ...one, ...other })
  return Object.fromEntries(keys.map((key) => [key, both(one[key] ?? null, other[key] ?? null)]))
}
