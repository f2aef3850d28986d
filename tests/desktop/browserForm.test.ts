import { expect } from 'vitest'
import { browserTest as test } from './harness/browserForm.ts'

test('the built window is shown in a browser without a complaint', async ({ form }) => {
  const { page, complaints } = await form.open()
  await page.locator('#root > *').first().waitFor()
  expect(await page.evaluate(() => 'ferrule' in globalThis)).toBe(false)
  expect(complaints).toEqual([])
})

test('code made from text does not run there either', async ({ form }) => {
  const { page } = await form.open()
  const outcome = await page.evaluate(
    () =>
      new Promise((resolve) => {
        setTimeout(() => {
          try {
            resolve(new Function('return "ran"')())
          } catch (error) {
            resolve((error as Error).name)
          }
        })
      }),
  )
  expect(outcome).toBe('EvalError')
})

test('another page cannot embed it', async ({ form }) => {
  const other = await form.context.newPage()
  await other.setContent(`<iframe src="${form.address}"></iframe>`)
  await other.waitForTimeout(500)
  const frame = other.frames()[1]
  expect(await frame?.evaluate(() => document.querySelector('#root') !== null)).toBe(false)
  await other.close()
})
