import { scenesAreClear } from './scenesAreClear.ts'

scenesAreClear(
  'Every other view, free of what hinders people, in both themes',
  (name) => !/^(lengths|bench|bore|pictures)/.test(name),
)
