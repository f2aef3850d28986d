/** What the tubing panel says about taking its loops along. */
export const tubingWords = {
  menu: 'Loops in and out',
  shown: 'Loops ▾',
  copy: 'Copy loops for a spreadsheet',
  csv: 'Loops as CSV',
  svg: 'Drawing to scale as SVG',
  dxf: 'Drawing to scale as DXF',
} as const
