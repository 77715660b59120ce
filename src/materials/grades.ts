import { nearest, InputError, inspectValue } from '../units/input-error.js';
import { tableRows, type DataRow } from './data-tables.js';

const psi = 6894.757293168;

/** A structural grade: figures in Pa and kg/m³. `basis` tells what kind they are; they may not be mixed. */
export interface Grade {
  readonly name: string;
  readonly printedAs: string;
  readonly group: 'hardwood' | 'softwood' | '';
  readonly basis: 'characteristic' | 'allowable';
  /** The basis in the standard's words. */
  readonly basisWords: string;
  readonly bending: number | undefined;
  readonly shear: number | undefined;
  readonly modulus: number | undefined;
  /** Fifth percentile or minimum modulus. */
  readonly modulusLow: number | undefined;
  readonly shearModulus: number | undefined;
  readonly density: number | undefined;
  readonly row: DataRow;
}

const tables = [
  'grades.en-338-2016',
  'grades.as-1720-1-2010',
  'grades.mgp-high-wind',
  'grades.nds-supplement',
] as const;

let grades: readonly Grade[] | undefined;

/** Every grade in data/: C and D classes, MGP and F grades, and a few North American ones. */
export function allGrades(): readonly Grade[] {
  return (grades ??= tables.flatMap((t) => tableRows(t).map(gradeOf)));
}

function gradeOf(row: DataRow): Grade {
  const pa = (name: string): number | undefined => {
    const mpa = row.number(`${name}_mpa`);
    const us = row.number(`${name}_psi`);
    return mpa !== undefined ? mpa * 1e6 : us !== undefined ? us * psi : undefined;
  };
  return {
    name: row.text('grade_name'),
    printedAs: row.printedAs,
    group: row.text('group') as Grade['group'],
    basis: row.text('basis').startsWith('characteristic') ? 'characteristic' : 'allowable',
    basisWords: row.text('basis'),
    bending: pa('bending'),
    shear: pa('shear'),
    modulus: pa('e_mean'),
    modulusLow: pa('e_low') ?? pa('e_min'),
    shearModulus: pa('g'),
    density: row.number('density_kg_m3'),
    row,
  };
}

const plain = (s: string): string => s.toLowerCase().replace(/[\s_.-]+/g, '');

/** A grade by name, undefined when there is none: `C24`, `MGP10`, `F17`, `Hem-Fir No.2 2x-4x`. */
export function gradeNamed(text: string): Grade | undefined {
  return allGrades().find((g) => plain(g.name) === plain(text.slice(0, 60)));
}

/** A grade by name. @throws InputError with the nearest name */
export function findGrade(text: string): Grade {
  const found = gradeNamed(text);
  if (found) return found;
  const names = allGrades().map((g) => g.name);
  const near = nearest(text, names);
  throw new InputError(
    `no grade ${inspectValue(text)}${near ? `; did you mean ${inspectValue(near)}?` : `; takes ${names.slice(0, 12).join(', ')} ...`}`,
  );
}
