import { parseSync } from 'vite'
import type { Source } from '../imports/sources.ts'

/** A text in the code, with the file and line it stands in. */
export interface Text {
  readonly path: string
  readonly line: number
  readonly text: string
}

interface Node {
  readonly type: string
  readonly start: number
  readonly [field: string]: unknown
}

/** Attributes, and fields of plain objects, that a person gets to read or to hear. */
const readNames = new Set(
  'alt aria-description aria-label aria-roledescription aria-valuetext expected found heading help hint label lead message name placeholder shown text textValue title unit what'.split(
    ' ',
  ),
)

/** Attributes of words that nobody reads. */
const unreadNames = new Set(['className', 'placement'])

const word = /\p{L}{2}/u
const twoWords = /\p{L}{2}\s+\p{L}{2}/u
const wordAndGap = /\p{L}{2}\s|\s\p{L}{2}/u

/**
 * Every text of a file that a person would read and that stands in the code itself: between tags, in an attribute or
 * field that is read, and wherever two words follow each other. Alternatives and the parts of a template count one by
 * one; what is compared or looked up does not, nor do the reasons of programmer mistakes.
 */
export function textsOf({ path, text: source }: Source): readonly Text[] {
  const { program, errors } = parseSync(path, source)
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]!.message}`)
  const found = new Map<number, string>()
  const add = ({ start }: Node, text: string, least: RegExp): void => {
    if (least.test(text)) found.set(start, text.trim().replace(/\s+/g, ' '))
  }
  for (const node of nodesOf(program as unknown as Node)) {
    if (node.type === 'JSXText') add(node, String(node.value), word)
    if (node.type === 'Literal' && typeof node.value === 'string') add(node, node.value, twoWords)
    if (node.type === 'TemplateElement') add(node, cooked(node), wordAndGap)
    for (const part of shownBy(node).flatMap(partsOf))
      add(part, part.type === 'Literal' ? String(part.value) : cooked(part), word)
  }
  return [...found].map(([start, text]) => ({ path, line: source.slice(0, start).split('\n').length, text }))
}

/** What an element or an object shows by this node. */
function shownBy(node: Node): readonly Node[] {
  if (node.type === 'JSXElement' || node.type === 'JSXFragment')
    return childrenOf(node, 'children').filter(({ type }) => type === 'JSXExpressionContainer')
  if (node.type === 'JSXAttribute') return isRead(nameOf(node, 'name')) ? childrenOf(node, 'value') : []
  if (node.type === 'Property') return isRead(nameOf(node, 'key')) ? childrenOf(node, 'value') : []
  return []
}

/** Fields of a node in which the value that it comes to may stand. */
const valueFields: Readonly<Record<string, readonly string[]>> = {
  TemplateLiteral: ['quasis', 'expressions'],
  ConditionalExpression: ['consequent', 'alternate'],
  LogicalExpression: ['left', 'right'],
  JSXExpressionContainer: ['expression'],
  ParenthesizedExpression: ['expression'],
  TSAsExpression: ['expression'],
}

/** The texts that a value may come to: those of each alternative, and the parts of what is put together. */
function partsOf(node: Node): readonly Node[] {
  if (node.type === 'TemplateElement') return [node]
  if (node.type === 'Literal') return typeof node.value === 'string' ? [node] : []
  const joined = node.type === 'BinaryExpression' && node.operator === '+'
  const fields = joined ? ['left', 'right'] : (valueFields[node.type] ?? [])
  return fields.flatMap((field) => childrenOf(node, field)).flatMap(partsOf)
}

/** A node and all below it but imports, programmer mistakes and attributes that nobody reads. */
function nodesOf(node: Node): readonly Node[] {
  if (node.type === 'ImportDeclaration') return []
  if (node.type === 'NewExpression' && /Error$/.test(nameOf(node, 'callee'))) return []
  if (node.type === 'JSXAttribute' && unreadNames.has(nameOf(node, 'name'))) return []
  const inside = Object.keys(node).flatMap((field) => childrenOf(node, field))
  return [node, ...inside.filter((child) => !isNameOfAField(node, child)).flatMap(nodesOf)]
}

/** The name by which a form knows a field of its own, or a file a picture: `<input name="system">`. */
function isNameOfAField(parent: Node, child: Node): boolean {
  if (parent.type !== 'JSXOpeningElement' || child.type !== 'JSXAttribute') return false
  return nameOf(child, 'name') === 'name' && /^([a-z]|Picture$)/.test(nameOf(parent, 'name'))
}

function isRead(name: string): boolean {
  return readNames.has(name)
}

function nameOf(node: Node, field: string): string {
  const name = childrenOf(node, field)[0]
  return String(name?.name ?? name?.value ?? '')
}

function cooked({ value }: Node): string {
  return (value as { readonly cooked: string }).cooked
}

function childrenOf(node: Node, field: string): readonly Node[] {
  return [node[field]].flat().filter(isNode)
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && typeof (value as Partial<Node>).type === 'string'
}
