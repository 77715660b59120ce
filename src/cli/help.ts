export const help = `reckoner: woodworking mathematics, worked with units, sources and cautions

  reckoner list [WORD]                    the recipes, by topic; only those with WORD
  reckoner show RECIPE                    what it takes and gives, its formulas, sources, an example
  reckoner work RECIPE field=value ...    reckon it; --json for outputs as {value, unit} with full precision
  reckoner sweep RECIPE field=A..B ...    reckon over a range; --steps N, --output NAME, --json
  reckoner uncertain RECIPE field='A +- B'what uncertain inputs do to the answer; --samples N, --seed N, --json
  reckoner solve RECIPE field OUTPUT=VALUE field=value ...
                                          the input that meets a target; --from A --to B, --json
  reckoner run NOTEBOOK [-o FILE]         run a notebook; FILE ends in .ipynb, .html or .md
  reckoner notes redo FILE                reckon a build note again and say what changed; --write saves it, --json
  reckoner handout NOTEBOOK [-o FILE]     a page for a class in which the recipes are alive; --answers FILE
  reckoner kernel install [--prefix DIR]  make the TypeScript kernel known to Jupyter; kernel uninstall undoes it
  reckoner --version

A value is text with a unit: width='900 mm', from='8 %', air as from='{"temperature":"21 degC","humidity":"50 %"}'
or from.temperature='21 degC' from.humidity='50 %'. A list is written lengths='1.2 m, 0.9 m'; a table as JSON or as
the name of a CSV file; named parts as parts='oil:2, spirit:1'.
Exit: 0 done, 1 failed, 2 bad input (one line says which field, what it got, what it takes).
`;
