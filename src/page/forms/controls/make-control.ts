import { choiceControl } from './choice-control.js';
import type { Control, ControlContext } from './field-control.js';
import { eitherControl, groupControl } from './group-control.js';
import { nameControl } from './name-control.js';
import { quantityControl } from './quantity-control.js';
import { partsTable, recordControl } from './record-control.js';
import { tableControl } from './table-control.js';
import { listControl, textControl } from './text-control.js';

/** The control that fits a field. */
export function makeControl(context: ControlContext): Control {
  const { field } = context;
  switch (field.kind) {
    case 'choice':
    case 'flag':
      return choiceControl(context);
    case 'table':
      return tableControl(context);
    case 'group':
      return groupControl(context, makeControl);
    case 'record':
      return recordControl(context);
    case 'list':
      return listControl(context);
    case 'either':
      return eitherControl(context, makeControl);
    default:
      return otherControl(context);
  }
}

/** Quantities, names, and kinds of their own, which are told by their example. */
function otherControl(context: ControlContext): Control {
  const { field } = context;
  if (field.hasNames) return nameControl(context);
  if (field.units.length > 0) return quantityControl(context);
  if (Array.isArray(field.example))
    return field.example.some((item) => typeof item === 'object')
      ? partsTable(context)
      : listControl(context);
  return textControl(context);
}
