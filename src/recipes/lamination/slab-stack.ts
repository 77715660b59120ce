import { longerClamps, quickerStack } from './glue-remedies.js';
import { timeline } from '../../charts/timeline.js';
import { danger, note } from '../../engine/caution.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { InputError } from '../../units/input-error.js';
import { forceOf, pressureOf } from './clamp-pressure.js';
import { minutes } from './glue-clock.js';
import { openHere } from './glue-timing.js';
import { mm } from './salvage-caution.js';
import { clockOf } from './slab-stack-clock.js';
import { slabStackFields } from './slab-stack-fields.js';
import { pressFormulas, stackPress, twoWayPress } from './slab-press.js';

/**
 * Several slabs glued at once in one set of clamps, one upon another with release paper between, or one small panel with
 * edges and faces pressed at once: force, clamps and reach, pressure on the joints of each slab, packing where one is
 * shorter or thinner, and whether all joints close in time. For slabs of layers glued face to face; a panel of strips
 * for both ways. Lengths, a pressure, a force and times in. Source: the formulas of clampPlan and glueTiming.
 * @throws InputError without exactly one of pressure and timberKind, or for two panels pressed both ways
 */
export const slabStack = recipe({
  name: 'slabStack',
  title: 'Slabs glued in one stack',
  topic: 'lamination',
  about:
    'Several slabs glued at once in one set of clamps, or one panel with edges and faces pressed at once: clamps and reach, pressure on each joint, packing for a shorter or thinner slab, and whether all closes in time.',
  sources: [],
  inputs: slabStackFields,
  outputs: {
    sentence: out.text({ label: 'in one sentence' }),
    force: out.force({
      symbol: 'F',
      label: 'force',
      help: 'Through the stack, or at the edges of the panel.',
    }),
    clamps: out.count({ label: 'clamps' }),
    cauls: out.count({
      label: 'pairs of cauls',
      help: 'One under and one over, each with a clamp at both ends.',
    }),
    forceEach: out.force({ label: 'force per clamp' }),
    caulForceEach: out.force({
      label: 'force, caul clamps',
      help: 'Force of each clamp of the cauls that hold a panel flat.',
      optional: true,
    }),
    reachNeeded: out.length({
      label: 'reach needed',
      help: 'Slabs with the cauls, or the width of the panel.',
    }),
    reachOk: out.flag({ label: 'do the clamps reach?', optional: true }),
    joints: out.table(
      {
        slab: out.count({ label: 'slab' }),
        glueLines: out.count({ label: 'glue lines' }),
        bare: out.pressure({ label: 'pressure, bare', help: 'Pressure on its joints without packing.' }),
        packed: out.pressure({ label: 'pressure, packed', help: 'Pressure on its joints with packing.' }),
        packing: out.text({ label: 'packing', help: 'What fills up a shorter, narrower or thinner slab.' }),
      },
      { label: 'Slab by slab' },
    ),
    inTime: out.flag({ label: 'closes in time', help: 'Whether all may be glued in one go.' }),
    spare: out.time({ label: 'spare time', help: 'Least time left over; below zero it is too late.' }),
    order: out.table(
      {
        step: out.count({ label: 'step' }),
        slab: out.count({ label: 'slab' }),
        start: out.time({ label: 'first glue' }),
        closed: out.time({ label: 'laid together' }),
        waits: out.time({ label: 'waits for pressure' }),
      },
      { label: 'Spreading order', help: 'From the bottom up, the slab with most glue lines first.' },
    ),
    batches: out.count({ label: 'glue-ups', help: 'Into how many goes the clock divides the joints.' }),
  },
  formulas: [...pressFormulas, openHere],
  solve: (given, trace) => {
    const press = {
      pressure: pressureOf(given, trace),
      clampForce: forceOf(given.clampForce, trace),
      caulThickness: given.caulThickness,
      head: given.head,
      offset: given.offset,
    };
    for (const [i, s] of given.slabs.entries())
      if (s.thinnest !== undefined && s.thinnest > s.thickness)
        throw new InputError({
          field: `slabs[${i + 1}].thinnest`,
          message: `got ${mm(s.thinnest)}, takes at most the thickness of ${mm(s.thickness)}`,
        });
    const [only, ...others] = given.slabs;
    if (only === undefined || (given.way === 'two-way' && others.length > 0))
      throw new InputError({
        field: 'slabs',
        message: `got ${given.slabs.length} slabs, takes one panel where way is "two-way"`,
      });
    const pressed =
      given.way === 'stack' ? stackPress(given.slabs, press, trace) : twoWayPress(only, press, trace);
    const clock = clockOf(given, trace);
    trace.note(
      `Spread from the bottom up, the slab with most glue lines first: ${minutes(clock.spare)} to spare of an open time of ${minutes(clock.open)} here.`,
    );
    const reachOk = given.reach === undefined ? undefined : given.reach >= pressed.reachNeeded - 1e-9;
    return {
      sentence: `${pressed.clamps} clamps that reach ${mm(pressed.reachNeeded)}, ${pressed.cauls} pairs of cauls; ${clock.inTime ? `all closes with ${minutes(clock.spare)} to spare` : `too late by ${minutes(-clock.spare)}: ${clock.batches > 1 ? `glue in ${clock.batches} goes` : 'a slower glue or more hands'}`}.`,
      force: pressed.force,
      clamps: pressed.clamps,
      cauls: pressed.cauls,
      forceEach: pressed.forceEach,
      caulForceEach: pressed.caulForceEach,
      reachNeeded: pressed.reachNeeded,
      reachOk,
      joints: pressed.joints,
      inTime: clock.inTime,
      spare: clock.spare,
      order: clock.order,
      batches: clock.batches,
    };
  },
  cautions: (given, answer) => [
    danger(
      'drive two stops or pins beside the stack, clamp up a little at a time from the middle, and keep fingers out of the gaps: it slides and tips while the glue is wet',
    ),
    ...(answer.reachOk === false
      ? [note(`glue fewer slabs at once: the clamps do not reach ${mm(answer.reachNeeded)}`)]
      : []),
    ...(answer.joints.some((j) => j.bare > 1.5 * j.packed)
      ? [
          note(
            'without packing a smaller slab takes all the force and its neighbours bend over its edge: fill up with packing of the same thickness, faced with release paper',
          ),
        ]
      : []),
    ...(given.way === 'stack'
      ? [
          note(
            'release paper or film between slabs, and under the cauls: squeezed glue else makes one block of them',
          ),
          note('cauls across with a crown press the middle of wide slabs too: caulCamber gives it'),
        ]
      : [
          note(
            'tighten cauls lightly first, then the edges, then the cauls again; wax the cauls where they cross glue',
          ),
        ]),
    ...(answer.clamps > 40
      ? [
          note(
            `${answer.clamps} clamps are more than a bench has: a press or weights, the least pressure that the glue maker prints, or fewer slabs side by side`,
          ),
        ]
      : []),
    ...(answer.inTime
      ? []
      : [
          note(
            'glue fewer slabs at once or take a slower glue: a joint that skinned before the clamps were on looks sound and fails',
          ),
        ]),
  ],
  chart: (given, answer) =>
    timeline({
      title: 'Spreading the stack',
      subtitle: answer.sentence,
      unit: 'min',
      stretches: answer.order.flatMap((row) => [
        { name: `Slab ${row.slab}: spread`, start: row.start / 60, end: row.closed / 60 },
        {
          name: `Slab ${row.slab}: waits`,
          start: row.closed / 60,
          end: (row.closed + row.waits) / 60,
          waiting: true,
        },
      ]),
    }),
  mending: {
    fails: (_given, out) => !out.inTime || out.reachOk === false,
    remedies: [longerClamps, ...quickerStack],
    then: '{spare} is left',
  },
  example: {
    slabs: [
      { length: '1950 mm', width: '320 mm', thickness: '40 mm', glueLines: 1 },
      { length: '1950 mm', width: '320 mm', thickness: '40 mm', glueLines: 1 },
      { length: '1800 mm', width: '320 mm', thickness: '38 mm', glueLines: 1 },
    ],
    pressure: '200 kPa',
    clampForce: 'I-beam bar (sash) clamp',
    perLine: '1.5 min',
    openTime: '8 min',
    closedTime: '15 min',
    reach: '300 mm',
  },
});
