import { describe, expect, it } from 'vitest';
import { search, searchedQuestions, searchedWords } from '../../../src/page/forms/ask/search-questions.js';
import { understand } from '../../../src/page/forms/ask/understand.js';
import { TextHistory } from '../../../src/page/forms/ask/question-store.js';
import { recipeModel, namesFor } from '../../../src/page/forms/worker/recipe-models.js';
import { commonest } from '../../../src/page/forms/worker/questions.js';
import { catalogue } from '../../../src/recipes/catalogue.js';
import { glossary, recipesUsing } from '../../../src/recipes/glossary.js';

const models = new Map(catalogue.map((recipe) => [recipe.name, recipeModel(recipe)]));
const words = glossary().map((entry) => ({
  ...entry,
  recipes: recipesUsing(entry).map(({ name }) => name),
}));
const all = [...searchedQuestions(models.values()), ...searchedWords(words)];
const first = (words: string): string | undefined => search(words, all)[0]?.target;
const firstThree = (words: string): string[] => search(words, all, 3).map(({ target }) => target);

/** Questions as makers ask them, with the recipe that answers each. */
const asked: readonly (readonly [string, string])[] = [
  ['how much will a 640 mm Scots pine top shrink from 14 % to 9 %', 'movementAcross'],
  ['will my table top expand in summer', 'movementAcross'],
  ['how heavy is it?', 'pieceWeight'],
  ['can two people lift the counter', 'pieceWeight'],
  ['how many clamps', 'clampPlan'],
  ['how many cramps for a 2 m slab', 'clampPlan'],
  ['how much glue do I need', 'glueQuantity'],
  ['will the top sag', 'topSag'],
  ['shelf bends too much', 'topSag'],
  ['will it tip over when a child climbs on it', 'tipping'],
  ['how many strips for a worktop', 'stripCount'],
  ['do I have enough wood in the pile', 'topFromPile'],
  ['cut list', 'cuttingPlan'],
  ['EMC', 'equilibriumMoisture'],
  ['miter angle for a hopper', 'splayedCorner'],
  ['how much varnish', 'finishQuantity'],
  ['what will it cost', 'bill'],
  ['is the frame square', 'squareness'],
  ['biscuits', 'biscuitSpacing'],
  ['shellac two pound cut', 'shellacCut'],
  ['which grit first', 'gritSequence'],
  ['wobbly frame', 'rackingFrame'],
  ['how many bags of shavings', 'chipVolume'],
  ['moisture meter reading in a cold shed', 'meterCorrection'],
  ['will it go through the door', 'passage'],
  ['how high should the bench be', 'heightsForPeople'],
  ['wood from a pallet', 'palletBoards'],
  ['box in a post', 'postCasing'],
  ['why does my mitre gape', 'mitreGap'],
  ['filler for nail holes', 'nailHoles'],
  ['glue several slabs at once', 'slabStack'],
  ['chamfer depth', 'chamfer'],
  ['test a stain', 'stainTrials'],
];

describe('the search by question', () => {
  it('finds what makers ask: first in four of five, among three in nearly all', () => {
    const wrong = asked
      .filter(([words, name]) => first(words) !== name)
      .map(([words]) => `${words}: ${first(words) ?? 'nothing'}`);
    const near = asked.filter(([words, name]) => firstThree(words).includes(name)).map(([words]) => words);
    const missed = asked.map(([words]) => words).filter((words) => !near.includes(words));
    expect(wrong.length, wrong.join('; ')).toBeLessThanOrEqual(asked.length * 0.2);
    expect(missed.length, missed.join('; ')).toBeLessThanOrEqual(1);
  });

  it('forgives a slip of the keys and finds nothing for nonsense', () => {
    expect(first('clmaps')).toBe('clampPlan');
    expect(search('xyzzy', all)).toEqual([]);
    expect(search('', all)).toEqual([]);
  });

  it('puts sizes, moistures and timbers of a question into its fields', () => {
    const model = models.get('movementAcross')!;
    const timbers = namesFor(
      catalogue.find(({ name }) => name === 'movementAcross')!,
      ['timber'],
    );
    expect(
      understand('how much will a 640 mm Scots pine top shrink from 14 % to 9 %', model, timbers),
    ).toEqual({
      width: '640 mm',
      from: '14 %',
      to: '9 %',
      timber: 'Scots pine',
    });
    expect(understand('strips 48 mm wide', models.get('stripCount')!, [])).toEqual({ topWidth: '48 mm' });
  });
});

describe('the form model of every recipe', () => {
  it('has a question, short labels and an example for each needed field', () => {
    for (const model of models.values()) {
      expect(model.question.split(' ').length, model.name).toBeLessThanOrEqual(9);
      for (const field of model.inputs) {
        expect(field.label.length, `${model.name}.${field.name}`).toBeGreaterThan(0);
        expect(field.label.length, `${model.name}.${field.name}: ${field.label}`).toBeLessThanOrEqual(40);
        if (!field.optional) expect(field.example, `${model.name}.${field.name}`).toBeDefined();
      }
    }
  });

  it('has names to choose from that each field takes', () => {
    for (const recipe of catalogue)
      for (const field of models.get(recipe.name)!.inputs.filter(({ hasNames }) => hasNames)) {
        const names = namesFor(recipe, [field.name]);
        expect(names.length, `${recipe.name}.${field.name}`).toBeGreaterThan(5);
        for (const name of names.slice(0, 40))
          expect(() => recipe.inputs[field.name]!.read(name)).not.toThrow();
      }
  });

  it('offers the ten that are asked most', () => {
    expect(commonest).toHaveLength(10);
    for (const name of commonest) expect(models.has(name), name).toBe(true);
  });
});

describe('steps back and forward', () => {
  it('joins typing in one field and keeps other steps apart', () => {
    const history = new TextHistory('a');
    history.add('ab', 'change “Width”', 1000);
    history.add('abc', 'change “Width”', 2000);
    history.add('abcd', 'change “Length”', 2100);
    expect(history.undoWords).toBe('change “Length”');
    history.undo();
    expect(history.text).toBe('abc');
    history.undo();
    expect(history.text).toBe('a');
    expect(history.undo()).toBe(false);
    history.redo();
    expect(history.text).toBe('abc');
  });
});

describe('words of the trade', () => {
  it.each([
    ['caul', 'caul'],
    ['crosswise', 'across the grain'],
    ['what is flat-sawn', 'flat-sawn'],
    ['kerf', 'kerf'],
  ])('%s explains %s', (asked, term) => {
    const word = search(asked, all).find(({ kind }) => kind === 'word');
    expect(word?.title).toBe(term);
    expect(word?.detail.length).toBeGreaterThan(10);
  });
});
