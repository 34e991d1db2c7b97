/** A sound lesson to spoil. */
export const soundLesson = (): Record<string, unknown> => ({
  format: 'kerfline-lesson',
  version: 1,
  id: 'sound',
  title: { en: 'Sound' },
  question: { en: 'What happens?' },
  site: {
    format: 'kerfline-site',
    version: 1,
    name: 'Sound',
    lanes: [{ id: 'lane1', centreline: [[0, -20], [0, 20]], width: 3.5 }], // prettier-ignore
    loops: [
      {
        id: 'L1',
        turns: 3,
        wire: 'awg14',
        slot: { depth: 0.05, width: 0.008 },
        shape: { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 1.8 }
      }
    ],
    circuits: [
      { id: 'C1', strings: [[{ loop: 'L1' }]], leadIn: { cable: 'pair-14', length: 30 }, channel: null }
    ]
  },
  experiment: {
    x: { variable: { kind: 'turns', subject: 'L1' }, values: [1, 2, 3, 4] },
    figures: [{ kind: 'loopInductance', subject: 'L1' }]
  },
  measures: {
    two: { is: { kind: 'value', x: 2 }, shown: 'inductance' },
    four: { is: { kind: 'value', x: 4 }, shown: 'inductance' },
    times: { is: { kind: 'ratio', of: 'four', to: 'two' }, shown: 'number', digits: 3 }
  },
  predictions: [
    { says: { en: 'Less than twice.' }, when: { measure: 'times', below: 2 } },
    { says: { en: 'Twice or more.' }, when: { measure: 'times', atLeast: 2 } }
  ],
  explanation: [{ en: 'It grows {times} times.' }]
});
