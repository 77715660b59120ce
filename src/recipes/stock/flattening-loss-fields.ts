import { field } from '../../engine/field.js';

/** What flattening takes. */
export const flatteningLossFields = {
  thickness: field.length({ symbol: 't', label: 'rough thickness', above: '0 mm', max: '500 mm' }),
  width: field.length({ symbol: 'W', label: 'width as found', above: '0 mm', max: '3 m' }),
  length: field.length({ symbol: 'L', label: 'length as found', above: '0 mm', max: '30 m' }),
  cup: field.length({
    label: 'cup',
    help: 'Gap in the middle under a straightedge laid across the width.',
    min: '0 mm',
    max: '300 mm',
    default: '0 mm',
  }),
  bow: field.length({
    label: 'bow',
    help: 'Gap in the middle under a line along the length.',
    min: '0 mm',
    max: '2 m',
    default: '0 mm',
  }),
  twist: field.length({
    label: 'twist',
    help: 'How far the fourth corner stands up when three lie on a flat bench.',
    min: '0 mm',
    max: '1 m',
    default: '0 mm',
  }),
  rips: field.count({
    label: 'rip cuts',
    help: 'Cuts along the grain before planing.',
    min: 0,
    max: 100,
    default: 0,
  }),
  crosscuts: field.count({
    label: 'crosscuts',
    help: 'Cuts across the grain before planing.',
    min: 0,
    max: 100,
    default: 0,
  }),
  kerf: field.length({ label: 'saw kerf', min: '0 mm', max: '20 mm', default: '0 mm' }),
  cleanUp: field.length({
    label: 'clean-up',
    help: 'Planed off each face once it is flat.',
    min: '0 mm',
    max: '20 mm',
    default: '0 mm',
  }),
} as const;
