import { InputError } from '../../../units/input-error.js';
import { shopFields } from '../../../shop/shop-fields.js';
import type { Field } from '../../../engine/field.js';
import type { Outcome, ReadFields } from '../model/answer.js';
import type { RecipeModel } from '../model/recipe-model.js';
import { fieldModel } from './field-model.js';
import { issuesOfFields, readFields } from './read-fields.js';

const examples: Readonly<Record<string, unknown>> = {
  thicknesserWidth: '330 mm',
  thicknesserLeast: '5 mm',
  sawKerf: '3 mm',
  jointing: '3 mm',
  clamps: [{ kind: 'sash clamp', opens: '900 mm', count: 6 }],
  clampForce: '2 kN',
  glue: 'PVA D3',
  glueOpenTime: '10 min',
  glueClosedTime: '15 min',
  glueHold: '45 min',
  finish: 'oil varnish',
  finishCoverage: '12 m2/L',
  finishTin: '1 L',
  timber: 'Scots pine',
  moistureNow: '14 %',
  moistureLater: '9 %',
  place: 'Seattle-Tacoma, WA',
  timberPrice: '450/m3',
  hourly: '24',
};

/** The shop as a form. */
export function shopModel(): RecipeModel {
  return {
    name: 'shop',
    title: 'My shop',
    topic: '',
    about: '',
    isAsync: false,
    question: 'My shop',
    words: '',
    noun: 'shop',
    main: undefined,
    inputs: Object.entries(shopFields).map(([name, field]) => ({
      ...fieldModel(name, field, examples[name]),
      inExample: true,
    })),
    outputs: [],
    sketch: undefined,
  };
}

/** What is wrong with values of the shop, field by field. */
export function checkShop(values: Readonly<Record<string, unknown>>): Outcome {
  const fields: Readonly<Record<string, Field>> = shopFields;
  const read: ReadFields = readFields(fields, values);
  try {
    const issues = issuesOfFields(fields, values);
    return issues.length > 0
      ? { state: 'wrong', issues, missing: [], read }
      : { state: 'waiting', missing: [], read };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { state: 'wrong', issues: error.issues, missing: [], read };
  }
}
