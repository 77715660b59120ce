/** How a handout looks beside the common page: fields and sliders large enough for a thumb, and blanks on paper. */
export const handoutStyle = `
.print{display:none}
.result,.chart,.exercise,.shown{border:1px solid var(--line);border-radius:8px;padding:.3rem 1.1rem 1rem;margin:1.4em 0}
.shown{border:0;padding:0}
.result>h3,.exercise>h3{margin-top:.9em}
.sketch svg{display:block;width:100%;max-width:26rem;height:auto;margin:.4rem auto}.sketch text{font-family:system-ui,"DejaVu Sans",sans-serif}.input .letter{color:var(--accent);margin-right:.25em}
.input{display:grid;grid-template-columns:minmax(0,1fr) minmax(0,1.25fr);gap:.1rem 1rem;align-items:center;padding:.3rem 0;border-bottom:1px solid var(--line)}
.input>label{font-size:.95em}
.input .issue{grid-column:1/-1;color:var(--mark);font-size:.9em}.input .issue:not(:empty)::before{content:"✗ "}
.typed{display:flex;gap:.6rem;align-items:center;flex-wrap:wrap}
input[type=text],select{font:inherit;font-size:1rem;color:var(--ink);background:var(--wash);border:1px solid var(--soft);border-radius:5px;padding:.4em .55em;min-width:0;width:9.5rem;max-width:100%;font-variant-numeric:tabular-nums}
.typed input[type=text]{flex:1 1 8rem}
input[type=range]{flex:1 1 8rem;min-width:6rem;height:2.2rem;accent-color:var(--accent)}
input[type=checkbox]{width:1.5rem;height:1.5rem;accent-color:var(--accent)}
input:focus-visible,select:focus-visible,button:focus-visible{outline:3px solid var(--accent);outline-offset:1px}
.wrong input{border-color:var(--mark);border-width:2px}
.group{display:grid;gap:.35rem}.group>label{display:grid;grid-template-columns:6rem 1fr;align-items:center;font-size:.92em}
.grid input{width:auto;font-size:.9rem;padding:.25em .4em}
.input:has(.grid){grid-template-columns:minmax(0,1fr)}.issue{overflow-wrap:anywhere}.input:has(.asGiven) .asGiven{color:var(--soft)}
button{font:inherit;font-size:.95rem;color:var(--paper);background:var(--accent);border:0;border-radius:5px;padding:.5em 1em;cursor:pointer}
.again,#forget{color:var(--accent);background:none;border:1px solid var(--accent);margin-top:.7rem;padding:.35em .8em}
.refusal{color:var(--mark)}.refused .alive-answer,.busy .alive-answer{opacity:.4}
.alive-answer h4{display:none}
.exercise form{display:flex;flex-wrap:wrap;gap:.5rem;align-items:end}.exercise label{display:grid;gap:.2rem;font-size:.95em}.exercise form input{width:14rem}
.exercise output{display:block;min-height:1.6em;margin-top:.5rem;font-weight:600}.exercise.right output{color:#0b6e4f}.exercise.wrong output{color:var(--mark)}
@media (prefers-color-scheme:dark){.exercise.right output{color:#6fd3ae}}
.chart-sliders{display:grid;gap:.4rem;margin:.6rem 0}.chart-sliders .vega-bind{display:flex;gap:.6rem;align-items:center;flex-wrap:wrap}.chart-sliders .vega-bind-name{min-width:9rem}
.answers{display:table;width:100%}.answers td:nth-child(3){min-width:10rem}
.reckoner-cautions{background:var(--wash);border-radius:6px;padding:.6em 1em .6em 2em!important}
footer{margin-top:3em;font-size:.9em;color:var(--soft)}
@media (max-width:34rem){.input{grid-template-columns:minmax(0,1fr)}.result,.chart,.exercise{padding:.2rem .8rem .8rem}}
@media print{
 .print{display:block}
 .nameLine span{display:inline-block;width:38%;border-bottom:1px solid #000;margin-right:1.5em}
 .result,.chart,.exercise{border-color:#999}.chart,.exercise,.inputs{break-inside:avoid-page}.result{box-decoration-break:clone}.result>h3{break-after:avoid}
 .workspace i{display:block;height:8.5mm;border-bottom:.3pt solid #aaa}
 input[type=range],.issue{display:none}
 input[type=text],select{border:0;border-bottom:1px solid #000;border-radius:0;background:none;appearance:none;padding:0}
 .exercise form input{color:transparent!important;width:70mm}
 .input{grid-template-columns:1fr 1fr;padding:.1rem 0}
}`;
