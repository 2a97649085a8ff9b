/** Names in the demo as it stands in its file, by id; in other languages it is opened with names of theirs. */
export const demoNames = {
  orchard: 'Bench orchard',
  'lower-bench': 'Lower bench',
  'upper-shelf': 'Upper shelf',
  'mouse-ear': 'Mouse-ear',
  'petal-fall': 'Petal fall',
  'full-leaf': 'Full leaf',
  'arc-8': 'Arc axial, 8 + 8',
  'tower-8': 'Axial with tower, 8 + 8',
  low: 'Low gear',
  high: 'High gear',
  one: 'One gear',
  'scab-cover': 'Protective fungicide (invented)',
  'calcium-feed': 'Calcium leaf feed (invented)'
} as const;

/** What grows in its blocks. */
export const demoCrops = { 'lower-bench': 'Apple, slender spindle', 'upper-shelf': 'Apple, young planting on wires' } as const;
