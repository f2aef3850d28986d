/** Readings as people paste them, before they are spoilt. */
export const readings: readonly string[] = [
  'fingering\tharmonic\tcents\n0\t4\t0\n1\t4\t12,5\n1-2\t4\t−3.5\n1-3\t3\t+21 c\nT12\t6\t-4',
  '1-3;4;12,5\n2;Bb3;-4\n1 2;F3;0',
  '"1-2",4,12.5\n"0",5,-14\n13,6,8',
  'cents,note,valves\n5,F3,1+2\n-2,Bb2,open',
]

/** Measured bores as people paste them. */
export const profiles: readonly string[] = [
  'x (mm);d (mm)\n0;11,66\n120;13,2\n240;18\n400;62,5\n',
  'distance in\tradius in\n0\t0.23\n4.5\t.25\n9\t0.31\n12\t1.2\n',
  '# bell, measured from the rim\n400 62.5\n240 18\n120 13.2\n0 11.66',
  '0,11.66\n120,13.2\n1.2e2,14\n500,120',
]

/** Tables of loops as people paste them. */
export const loops: readonly string[] = [
  'name;length (mm);valves\nfirst;486,5;1\nsecond;233,1;2\nfirst, compensating;162,9;1-4',
  'loop\tlength in\tbore\tpressed\treleased\nfirst\t19 1/8\t0.68\t1\t4\nsecond\t9.2\t\t2\t',
  'first,486.5,mm,1\n"third, long",9" ,in,3',
]

/** What people type into a field. */
export const typed: readonly string[] = [
  '12,5',
  '1 3/16 in',
  '2 ft 9 1/2 in',
  '2*62.5 + pi*19',
  'sqrt(3) * 2 cm - abs(-4 mm)',
  '((1+2)*(3-4))/(5^2)',
  '9½"',
  '442,5 Hz',
  '−12.3e2 mm',
]
