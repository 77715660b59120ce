import { el, icon } from '../../element.js';
import { messageOf, server } from '../../server-api.js';
import { argumentOf } from '../model/argument.js';
import { recipeClient } from '../recipe-client.js';
import { RecipeForm } from '../view/recipe-form.js';
import { forgetShop } from './shop-client.js';

interface SavedShop {
  readonly shop: Readonly<Record<string, unknown>> | null;
  readonly path: string;
}

/** Quiet time after the last key until the shop is saved. */
const pause = 700;

/** My shop: a form over the person's own file. It is saved by itself once every value can be read. */
export async function shopPage(): Promise<HTMLElement> {
  const [model, saved] = await Promise.all([
    recipeClient.ask('shopModel', null),
    server.get<SavedShop>('/reckoner/shop'),
  ]);
  let values: Readonly<Record<string, unknown>> = saved.shop ?? {};
  let timer: ReturnType<typeof setTimeout> | undefined;
  const state = el('p', { class: 'says', role: 'status' }, `Kept in ${saved.path}, a file of your own.`);
  const save = async (): Promise<void> => {
    try {
      const { path } = await server.put<SavedShop>('/reckoner/shop', values);
      forgetShop();
      state.textContent = `Saved in ${path}.`;
    } catch (error) {
      state.textContent = `Not saved: ${messageOf(error)}`;
    }
  };
  const show = async (): Promise<void> => {
    const shown = values;
    const outcome = await recipeClient.ask('checkShop', shown);
    if (shown !== values) return;
    const given = Object.fromEntries(Object.entries(shown).map(([name, value]) => [name, argumentOf(value)]));
    form.show(given, outcome);
    clearTimeout(timer);
    if (outcome.state === 'wrong') state.textContent = 'Not saved yet: one value needs another look.';
    else if (shown !== (saved.shop ?? {}) && hasChanged) timer = setTimeout(() => void save(), pause);
  };
  let hasChanged = false;
  const form = new RecipeForm({
    model,
    id: 'shop',
    write: (field, value) => {
      const { [field]: _former, ...others } = values;
      values = value === undefined ? others : { ...others, [field]: value };
      hasChanged = true;
      void show();
    },
    take: () => undefined,
    takeable: () => false,
    done: () => undefined,
  });
  await show();
  return el(
    'article',
    { class: 'question-page shop-page' },
    el('a', { href: '#', class: 'button small back' }, icon('back'), 'All questions'),
    el('h1', { tabindex: '-1' }, 'My shop'),
    el(
      'p',
      {},
      'What you have and do as a rule. It fills the forms, where it is marked “from your shop”, and notebooks read it by shop(). Leave out what you do not know.',
    ),
    el('div', { class: 'form-side' }, form.element),
    state,
  );
}
