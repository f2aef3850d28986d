import { readFileSync } from 'node:fs'
import { describe, expect } from 'vitest'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { card, dropFile, field, figure, goTo, openExample, startFrom, type } from './steps.ts'

describe('a loop', () => {
  browserTest('is dragged by its bow: the errors follow, and the drag is one step', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    const before = await figure(page, '1').textContent()
    const bow = page.getByRole('slider', { name: 'Length of first' })
    const box = (await bow.boundingBox())!
    await page.mouse.move(box.x + 11, box.y + 15)
    await page.mouse.down()
    for (let i = 1; i <= 20; i++) await page.mouse.move(box.x + 11 + i, box.y + 15)
    const grip = page.locator('.tube .held')
    await expect.poll(async () => (await grip.boundingBox())?.x).toBeCloseTo(box.x + 20, 0)
    await page.mouse.up()
    await expect.poll(async () => (await bow.boundingBox())?.x).toBeCloseTo(box.x + 20, 0)
    expect(await grip.count()).toBe(0)
    expect(before).toBe('0.0')
    await expect.poll(() => figure(page, '1').textContent()).toMatch(/^−\d/)
    await page.getByRole('button', { name: 'Undo “First loop length”' }).click()
    await expect.poll(() => figure(page, '1').textContent()).toBe('0.0')
    await expect.poll(() => page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true)
  })

  browserTest('is followed by table, card and account though it moves with every frame', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await figure(page, '1').getByRole('button').click()
    const bow = page.getByRole('slider', { name: 'Length of first' })
    const box = (await bow.boundingBox())!
    await page.mouse.move(box.x + 11, box.y + 15)
    await page.mouse.down()
    const places = ['.figures tbody tr:nth-child(3) td', '.card dl', '.account']
    const texts = await bow.evaluate(movedForFrames, { places, frames: 60, from: box.x + 11 })
    // Each has been seen with a value of its own for many of the places the bow was in.
    for (const seen of texts) expect(seen).toBeGreaterThan(5)
    await page.mouse.up()
  })

  browserTest(
    'goes back to where a drag began with Escape, and there is nothing to undo',
    async ({ form }) => {
      const { page } = await form.open()
      await startFrom(page, 'Plain, three valves')
      const before = await field(page, 'Length of first').inputValue()
      const box = (await page.getByRole('slider', { name: 'Length of first' }).boundingBox())!
      await page.mouse.move(box.x + 11, box.y + 15)
      await page.mouse.down()
      await page.mouse.move(box.x + 40, box.y + 15, { steps: 4 })
      await expect.poll(() => field(page, 'Length of first').inputValue()).not.toBe(before)
      await page.keyboard.press('Escape')
      await page.mouse.move(box.x + 60, box.y + 15)
      await page.mouse.up()
      await expect.poll(() => field(page, 'Length of first').inputValue()).toBe(before)
      expect(await page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true)
    },
  )

  browserTest(
    'goes on finely from where it is with Shift, and back to the drawing’s steps',
    async ({ form }) => {
      const { page } = await form.open()
      await startFrom(page, 'Plain, three valves')
      const length = async () => Number(await field(page, 'Length of first').inputValue())
      const before = await length()
      const box = (await page.getByRole('slider', { name: 'Length of first' }).boundingBox())!
      const moveTo = (x: number) => page.mouse.move(box.x + 11 + x, box.y + 15)
      await moveTo(0)
      await page.mouse.down()
      await moveTo(20)
      await expect.poll(length).toBeGreaterThan(before + 5)
      const perPx = ((await length()) - before) / 20
      await page.keyboard.down('Shift')
      await moveTo(30)
      await expect.poll(async () => ((await length()) - before) / perPx).toBeCloseTo(21, 0)
      await page.keyboard.up('Shift')
      await moveTo(31)
      await expect.poll(async () => ((await length()) - before) / perPx).toBeCloseTo(22, 0)
      await page.mouse.up()
    },
  )

  browserTest('stays in the hand though it is the longest and leaves the drawing', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    const bow = page.getByRole('slider', { name: 'Length of third' })
    const box = (await bow.boundingBox())!
    await page.mouse.move(box.x + 11, box.y + 15)
    await page.mouse.down()
    await page.mouse.move(box.x + 11 + 50, box.y + 15, { steps: 10 })
    const grip = page.locator('.tube .held')
    await expect.poll(async () => (await grip.boundingBox())?.x).toBeCloseTo(box.x + 50, 0)
    await page.mouse.up()
    // Let go, all of the loop is to be seen again.
    await expect.poll(async () => (await bow.boundingBox())!.x).toBeLessThan(box.x + 25)
  })

  browserTest('moves by arrow keys, half a millimetre a press, in one step', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    const bow = page.getByRole('slider', { name: 'Length of first' })
    const mm = Number(await field(page, 'Length of first').inputValue())
    for (let i = 0; i < 4; i++) await bow.press('ArrowRight')
    await expect
      .poll(async () => Number(await field(page, 'Length of first').inputValue()))
      .toBeCloseTo(mm + 2, 1)
    await page.getByRole('button', { name: 'Undo “First loop length”' }).click()
    await expect.poll(() => page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true)
  })

  browserTest('has its gate set in plain words, and drops out of the route', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await page.getByRole('button', { name: /^first 1 down/ }).click()
    await page.getByRole('radiogroup', { name: 'Valve 3' }).getByText('up').click()
    await page.getByRole('button', { name: /^first 1 down, 3 up/ }).waitFor()
    await expect.poll(() => figure(page, '1-3').textContent()).toMatch(/^\+2\d\d/)
  })
})

describe('a field', () => {
  browserTest('for a name that ends in a refusal leaves none of its letters behind', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    const name = field(page, 'Name of valve 3')
    await name.click()
    await page.keyboard.type('long valve')
    await expect.poll(() => page.getByRole('alert').textContent()).toContain('"long valve"')
    expect(await name.inputValue()).toBe('long valve')
    await figure(page, '1-3').waitFor()
    expect(await page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true)
    await name.fill('long')
    await figure(page, '1-long').waitFor()
  })

  browserTest('takes what is typed after Enter as another value, clicked again or not', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    const length = field(page, 'Length of first')
    await length.click()
    await page.keyboard.type('170')
    await page.keyboard.press('Enter')
    await page.keyboard.type('160')
    await page.keyboard.press('Enter')
    await expect.poll(() => length.inputValue()).toBe('160.0')
    await length.click()
    await page.keyboard.type('150')
    await page.keyboard.press('Enter')
    await expect.poll(() => length.inputValue()).toBe('150.0')
  })

  browserTest('keeps what was typed and says what was expected', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    await type(page, 'A4', '44')
    await expect
      .poll(() => page.getByRole('alert').textContent())
      .toBe('A4: found 44 Hz, expected 380 to 480 Hz. Is a figure missing? Was 440 Hz meant?')
    const slip = (await page.getByRole('alert').boundingBox())!
    // Its last line lies where the tabs are.
    const onTop = await page.evaluate(([x, y]) => document.elementFromPoint(x, y)?.getAttribute('role'), [
      slip.x + 20,
      slip.y + slip.height - 12,
    ] as const)
    expect(onTop).toBe('alert')
    await expect.poll(() => field(page, 'A4').inputValue()).toBe('44')
    await field(page, 'A4').press('Escape')
    await expect.poll(() => field(page, 'A4').inputValue()).toBe('440.0')
    await expect.poll(() => page.getByRole('alert').count()).toBe(0)
  })

  browserTest('takes calculations, feet and inches, and the decimal comma', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    for (const [typed, shown] of [
      ['2*62.5 + pi*19', '184.7'],
      ['2 ft 9 in', '838.2'],
      ['512,5 mm', '512.5'],
    ] as const) {
      await type(page, 'Length of third', typed)
      await expect.poll(() => field(page, 'Length of third').inputValue()).toBe(shown)
    }
  })

  browserTest('refuses a value that breaks a rule of the file, and nothing changes', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Ascending third')
    await type(page, 'Length of third, ascending', '9 m')
    await expect
      .poll(() => page.getByRole('alert').textContent())
      .toContain('of loops in the open route, expected at most')
    await expect.poll(() => page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true)
  })
})

describe('a loop’s bow', () => {
  browserTest('has a radius, no closer than half the bore of a design that has one', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    await page.getByRole('button', { name: /^first/ }).click()
    await type(page, 'Bow radius', '28')
    await expect.poll(() => field(page, 'Bow radius').inputValue()).toBe('28.0')
    await type(page, 'Bow radius', '3')
    await expect.poll(() => page.getByRole('alert').textContent()).toContain('found 3')
    await field(page, 'Bow radius').press('Escape')
    await expect.poll(() => field(page, 'Bow radius').inputValue()).toBe('28.0')
    await page.getByRole('button', { name: /^Undo “.*bow radius”/ }).click()
    await expect.poll(() => field(page, 'Bow radius').inputValue()).toBe('')
  })
})

describe('the line-up', () => {
  browserTest('loses a design with every press of Delete, however quick', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    await page.locator('.cardName').first().waitFor()
    // Quicker than frames come: no card of a design that is gone is there to be pressed again.
    await page.evaluate(`(async () => {
      for (let press = 0; press < 4; press++) {
        document.querySelector('.cardName').dispatchEvent(new KeyboardEvent('keydown', { key: 'Delete', bubbles: true }))
        await new Promise((later) => setTimeout(later))
      }
    })()`)
    await page.getByRole('heading', { name: 'No designs yet' }).waitFor()
  })

  browserTest('has room for notes, whose typing is one step', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await page.locator('summary', { hasText: 'Notes' }).click()
    await page.getByRole('textbox', { name: 'Notes' }).pressSequentially('dent in the bow')
    await page.getByRole('button', { name: 'Undo “Notes”' }).click()
    await expect.poll(() => page.getByRole('textbox', { name: 'Notes' }).inputValue()).toBe('')
    await expect.poll(() => page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true)
  })

  browserTest(
    'duplicates, renames, moves, hides and deletes designs, each taken back by undo',
    async ({ form }) => {
      const { page } = await form.open()
      const withFocus = page.locator(':focus')
      await startFrom(page, 'Plain, three valves')
      await expect.poll(() => withFocus.textContent()).toBe('Curves')
      await page.getByRole('button', { name: 'More for Plain, three valves' }).click()
      await page.getByRole('menuitem', { name: 'Duplicate' }).click()
      const copy = page.getByRole('button', { name: 'Plain, three valves, copy', exact: true })
      await copy.press('F2')
      await field(page, 'Design name').fill('Not this name')
      await field(page, 'Design name').press('Escape')
      await expect.poll(() => withFocus.textContent()).toBe('Plain, three valves, copy')
      await withFocus.press('F2')
      await field(page, 'Design name').fill('Longer third')
      await field(page, 'Design name').press('Enter')
      const renamed = page.getByRole('button', { name: 'Longer third', exact: true })
      await expect.poll(() => withFocus.textContent()).toBe('Longer third')
      await renamed.press('Alt+ArrowUp')
      await expect
        .poll(() => page.locator('.cardName').allTextContents())
        .toEqual(['Longer third', 'Plain, three valves'])
      await page.getByRole('button', { name: 'Show the curve of Longer third' }).click()
      await expect.poll(() => page.getByRole('columnheader', { name: 'Longer third' }).count()).toBe(0)
      await renamed.press('Delete')
      await expect.poll(() => page.locator('.cardName').allTextContents()).toEqual(['Plain, three valves'])
      await expect.poll(() => withFocus.textContent()).toBe('Plain, three valves')
      for (const step of ['Delete design', 'Move design', 'Design name', 'Duplicate design']) {
        await page.getByRole('button', { name: `Undo “${step}”` }).click()
      }
      await expect.poll(() => page.locator('.cardName').allTextContents()).toEqual(['Plain, three valves'])
    },
  )

  browserTest('may be emptied: the window says what to do, and takes a new design', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await page.locator('.cardName').press('Delete')
    await page.getByRole('heading', { name: 'No designs yet' }).waitFor()
    await page.getByRole('button', { name: 'Add a design…' }).last().click()
    await page.getByRole('radio', { name: /^Early order/ }).check()
    await page.getByRole('button', { name: 'Add design', exact: true }).click()
    await card(page, 'Early order, semitone first').waitFor()
  })
})

describe('a wrong file', () => {
  browserTest(
    'is refused with path, found and expected, and nothing that was open is lost',
    async ({ form }) => {
      const { page } = await form.open()
      await startFrom(page, 'Plain, three valves')
      await type(page, 'Length of third', '800')
      const text = readFileSync(
        new URL('../../src-shared/workbook/examples/bass-in-f.ferrule', import.meta.url),
        'utf8',
      )
      const broken = text.replace(/"lengthMm": [\d.]+/, '"lengthMm": -5')
      await dropFile(page, 'broken.ferrule', broken)
      const trouble = page.getByRole('dialog', { name: 'broken.ferrule was not opened' })
      await expect
        .poll(() => trouble.textContent())
        .toContain('designs[0].loops[0].lengthMm: found -5, expected a length of 0 mm or more.')
      await trouble.getByRole('button', { name: 'Close' }).click()
      await expect.poll(() => field(page, 'Length of third').inputValue()).toBe('800.0')
      await page.getByRole('button', { name: 'Undo “Third loop length”' }).waitFor()
      // Only one that can be opened has unsaved work asked about.
      await dropFile(page, 'bass.ferrule', text)
      await page.getByRole('dialog', { name: /^Save / }).waitFor()
    },
  )
})

describe('the fingering chart', () => {
  browserTest('shows every way to a note when asked, for one note or for all', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    await goTo(page, 'Fingerings')
    const more = page.getByRole('button', { name: /^Show \d+ more for/ })
    await expect.poll(() => more.count()).toBeGreaterThan(2)
    const before = await more.count()
    const ways = page.locator('.chartTable .candidate')
    const shown = await ways.count()
    const [, count] = /^Show (\d+) more/.exec((await more.first().getAttribute('aria-label')) ?? '') ?? []
    await more.first().click()
    await expect.poll(() => ways.count()).toBe(shown + Number(count))
    expect(await more.count()).toBe(before - 1)
    await page.getByRole('button', { name: /^all, up to \d+$/ }).click()
    await expect.poll(() => more.count()).toBe(0)
    await page.getByRole('button', { name: '0 on 4, 0.0 cents, usual, nearest' }).click()
    await expect.poll(() => page.locator('.account h3').first().textContent()).toContain('open on 4')
  })

  browserTest('keeps a chosen fingering, opens its account, and goes back to the usual', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, four valves')
    await goTo(page, 'Fingerings')
    const row = page
      .getByRole('row')
      .filter({ has: page.getByRole('rowheader', { name: 'C3', exact: true }) })
    // 1-3 on harmonic 4.
    const other = row.getByRole('button', { name: /^1-3 on 4,/ })
    await other.click()
    await expect.poll(() => page.locator('.account').textContent()).toContain('C3, 1-3 on')
    await other.press('c')
    await row.getByText('chosen').waitFor()
    await page.getByRole('button', { name: 'Undo “Choose fingering”' }).waitFor()
    await row.getByRole('button', { name: /chosen/ }).press('c')
    await expect.poll(() => row.getByText('chosen').count()).toBe(0)
  })
})

describe('the chart', () => {
  browserTest('is read by arrow keys and opens an account with Enter', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    const chart = page.getByRole('group', { name: /^Combination error by fingering/ })
    await chart.focus()
    await chart.press('End')
    await expect
      .poll(() => page.locator('[aria-live="polite"]').first().textContent())
      .toContain('+53.6 cents')
    await chart.press('Enter')
    await expect.poll(() => page.locator('.account').textContent()).toContain('1-2-3 is +53.6 cents, sharp')
  })
})

describe('twelve valves', () => {
  browserTest('are added one by one, drawn, and no thirteenth is taken', async ({ form }) => {
    const { page, complaints } = await form.open()
    await startFrom(page, 'Plain, six valves')
    const add = page.getByRole('button', { name: 'Add a valve' })
    for (let valve = 7; valve <= 12; valve++) {
      await add.click()
      await page.getByRole('button', { name: `More for valve ${valve}` }).waitFor()
    }
    await expect.poll(() => add.isDisabled()).toBe(true)
    await page.getByRole('slider', { name: 'Length of twelfth' }).waitFor()
    await expect.poll(() => page.getByRole('group', { name: /^Combination error/ }).count()).toBe(1)
    expect(complaints).toEqual([])
  })
})

describe('a new workbook', () => {
  browserTest(
    'is not made while something typed was refused, and has the name it is given',
    async ({ form }) => {
      const { page } = await form.open()
      const leave = async (name: string, text: string): Promise<void> => {
        await field(page, name).fill(text)
        await field(page, name).press('Tab')
      }
      await page.getByRole('button', { name: 'New workbook…' }).click()
      await leave('Fundamental', '5')
      await page.getByRole('button', { name: 'Create workbook' }).click()
      await expect
        .poll(() => page.getByRole('alert').textContent())
        .toBe('Fundamental: “5” is out of range. Expected at least 10 Hz.')
      await expect.poll(() => page.locator(':focus').inputValue()).toBe('5')
      // Another value of the same thing makes the refused one obsolete.
      await leave('Effective length', '3')
      await expect
        .poll(() => page.getByRole('alert').last().textContent())
        .toMatch(/^Effective length: “3” is out of range\. Expected at least \d\d\.\d\d? mm\.$/)
      await leave('Effective length', '3500')
      await expect.poll(() => page.getByRole('alert').count()).toBe(0)
      await leave('Transposition', '7.5')
      await expect
        .poll(() => page.getByRole('alert').textContent())
        .toBe('Transposition: found 7.5, expected a whole number of semitones.')
      await leave('Transposition', '−9')
      await field(page, 'Name').fill('Alto, second try')
      await page.getByRole('button', { name: 'Create workbook' }).click()
      await expect.poll(() => page.locator('.workbookName').textContent()).toContain('Alto, second try')
      await expect.poll(() => page.locator('.cardName').allTextContents()).toEqual(['Plain, three valves'])
      await expect.poll(() => field(page, 'Effective length').inputValue()).toBe('3500.0')
    },
  )
})

interface Moving {
  readonly places: readonly string[]
  readonly frames: number
  readonly from: number
}

/** Moves a held bow with every frame; tells how many texts each place has shown meanwhile. Runs in the window. */
function movedForFrames(bow: Element, { places, frames, from }: Moving): Promise<readonly number[]> {
  const seen = places.map(() => new Set<string>())
  return new Promise((done) => {
    let frame = 0
    const step = (): void => {
      for (const [i, place] of places.entries())
        seen[i]!.add(document.querySelector(place)?.textContent ?? '')
      bow.dispatchEvent(new PointerEvent('pointermove', { bubbles: true, clientX: from + frame }))
      frame += 1
      if (frame < frames) requestAnimationFrame(step)
      else done(seen.map(({ size }) => size))
    }
    requestAnimationFrame(step)
  })
}
