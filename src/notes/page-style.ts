/**
 * The look of every page we write: warm paper and dark ink, a book face, room to breathe; the same in the dark; and
 * on sheets of A4 or Letter with page numbers. No outside font or picture.
 */
export const pageStyle = `
:root{--paper:#fffdf8;--ink:#2b2620;--soft:#655a4d;--line:#ddd2c2;--wash:#f7f0e4;--accent:#8a4a1c;--mark:#b3261e;color-scheme:light dark}
@media (prefers-color-scheme:dark){:root{--paper:#211d19;--ink:#f1e9dd;--soft:#bfb2a1;--line:#4a4137;--wash:#2c2621;--accent:#e5a46c;--mark:#ff9c8f}}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;scroll-padding-top:1rem}
body{overflow-wrap:break-word;margin:0 auto;max-width:48rem;padding:2.2rem 1.2rem 5rem;background:var(--paper);color:var(--ink);
 font:1.06rem/1.6 Charter,"Bitstream Charter","Sitka Text",Cambria,"DejaVu Serif",Georgia,serif}
h1,h2,h3,h4{line-height:1.25;margin:2em 0 .6em;font-weight:600;text-wrap:balance}
h1{font-size:1.9rem;margin-top:0}h2{font-size:1.4rem;border-bottom:1px solid var(--line);padding-bottom:.25em}h3{font-size:1.15rem}h4{font-size:1rem}
a{color:var(--accent);text-underline-offset:.15em}
p,ul,ol,figure,table,pre,blockquote,details{margin:0 0 1em}
blockquote{padding:.1em 1em;border-left:3px solid var(--line);color:var(--soft)}
table{display:block;width:max-content;max-width:100%;overflow-x:auto;border-collapse:collapse;font-variant-numeric:tabular-nums}
th,td{padding:.28em 1em .28em 0;text-align:left;vertical-align:top;border-bottom:1px solid var(--line)}
th{font-weight:600;color:var(--soft)}
td.number,th.number{text-align:right;white-space:nowrap}
img{max-width:100%;height:auto}figure{margin-inline:0}figure svg,figure img,.output img,.output svg:not(.katex svg){display:block;max-width:100%;height:auto;border-radius:4px}
figcaption{font-size:.9em;color:var(--soft);margin-top:.4em}
code,pre,.prints{font-family:ui-monospace,"DejaVu Sans Mono",Menlo,Consolas,monospace;font-size:.86em}
code{overflow-wrap:anywhere}
pre{background:var(--wash);padding:.8em 1em;border-radius:6px;overflow-x:auto;line-height:1.5}
pre code{overflow-wrap:normal}
summary{cursor:pointer;color:var(--accent)}
small{font-size:.85em;color:var(--soft)}
hr{border:0;border-top:1px solid var(--line);margin:2em 0}
.katex{font-size:1.08em}.katex-display{overflow-x:auto;overflow-y:hidden;padding:.15em 0;margin:.5em 0;text-align:left}.katex-display>.katex{text-align:left;white-space:normal}
.hljs-keyword,.hljs-literal{color:#8a3b6b}.hljs-string,.hljs-regexp{color:#7a4a00}.hljs-number{color:#00589a}.hljs-comment{color:var(--soft);font-style:italic}.hljs-title,.hljs-built_in,.hljs-attr{color:#00664b}
@media (prefers-color-scheme:dark){.hljs-keyword,.hljs-literal{color:#e3a5cc}.hljs-string,.hljs-regexp{color:#e6be7d}.hljs-number{color:#8ac6f2}.hljs-title,.hljs-built_in,.hljs-attr{color:#7fd4b3}}
@media (max-width:34rem){body{padding:1.2rem .9rem 4rem;font-size:1rem}h1{font-size:1.55rem}th,td{padding-right:.7em}figure:not(.fits){overflow-x:auto}figure:not(.fits) svg{min-width:29rem;max-width:none!important}}
@page{margin:17mm 16mm 19mm;@bottom-right{content:"sheet " counter(page) " of " counter(pages);font:8.5pt Charter,"DejaVu Serif",Georgia,serif;color:#655a4d}}
@media print{
 :root{--paper:#fff;--ink:#000;--soft:#444;--line:#bbb;--wash:#f5f2ec;--accent:#000;--mark:#000}
 body{max-width:none;padding:0;font-size:10.2pt;line-height:1.45}
 h1{font-size:19pt}h2{font-size:14pt;margin-top:1.4em}h3{font-size:11.5pt}
 h1,h2,h3,h4,summary,figcaption{break-after:avoid}
 table{display:table;width:auto;overflow:visible}
 figure,tr,li,pre,blockquote,.keep,.katex-display{break-inside:avoid}
 thead{display:table-header-group}
 p,li{orphans:3;widows:3}
 pre{white-space:pre-wrap;overflow-wrap:anywhere}
 a{color:inherit;text-decoration:none}
 figure svg,figure img{max-height:10cm;width:auto;max-width:100%!important;min-width:0}
 figure svg>rect:first-child{fill:#fff}
 details::details-content{content-visibility:visible;display:block;block-size:auto}
 .screen{display:none!important}
}`;
