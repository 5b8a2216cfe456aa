/** The style of an entry sheet: for thumbs, gloves, sun and dark, on a phone, a tablet and a desk. */
export const sheetStyle = `
:root{--ink:#1b2430;--quiet:#525d6a;--rule:#aab4bf;--faint:#f3f5f7;--paper:#fff;--bad:#9b1c1c;--good:#1d5e3a;--bar:#1557a6;--focus:#1b5fb4;color-scheme:light dark}
@media (prefers-color-scheme:dark){:root{--ink:#e8edf2;--quiet:#a9b4c0;--rule:#5b6672;--faint:#1d242c;--paper:#12171d;--bad:#ff9d94;--good:#8fd3ae;--bar:#8ab8f0;--focus:#8ab8f0}}
*{box-sizing:border-box}
body{margin:0;font:16px/1.45 system-ui,sans-serif;color:var(--ink);background:var(--paper)}
main{max-width:960px;margin:0 auto;padding:16px 16px 150px}
h1{font-size:28px;line-height:1.2;margin:0;overflow-wrap:anywhere}
h2{font-size:20px;line-height:1.3;margin:36px 0 8px;padding-top:8px;border-top:2px solid var(--ink)}
h3{font-size:16px;margin:18px 0 6px}
p,ul,ol{margin:6px 0}
.kind,.state,.unit,.asks-for,.subject{color:var(--quiet)}
.hidden{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
fieldset{border:0;margin:0;padding:0;min-width:0}
fieldset:disabled{opacity:.55}
legend{padding:0;font-weight:600}
:focus-visible{outline:3px solid var(--focus);outline-offset:1px}
input,select,button{font:inherit;color:inherit}
input:not([type=checkbox]):not([type=file]),select{width:100%;min-height:48px;padding:6px 10px;border:1px solid var(--quiet);border-radius:3px;background:var(--paper);font-variant-numeric:tabular-nums}
input::placeholder{color:var(--quiet);opacity:1;font-style:italic}
input[readonly]{background:var(--faint)}
[aria-invalid=true]{border:2px solid var(--bad)!important}
button{min-height:48px;padding:6px 16px;border:1px solid var(--ink);border-radius:3px;background:var(--faint);cursor:pointer}
button:disabled{color:var(--quiet);border-color:var(--rule);cursor:default}
button.small{min-height:40px;padding:2px 10px;font-size:14px}
button.big{min-height:60px;font-weight:600}
.cautions{border:2px solid var(--ink);padding:2px 16px 10px;margin-top:16px}
.cautions h2{border:0;margin:8px 0 0;padding:0}
.cautions ul{padding-left:20px;font-size:15px}
.fields{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,270px),1fr));gap:10px 16px}
.field{display:block;min-width:0}
.asks{display:block;font-size:14px}
.standards{margin-top:14px}
.tick{display:flex;gap:12px;align-items:center;min-height:48px}
.tick input{width:26px;height:26px;flex:none}
.locked{padding:8px 12px;border-left:5px solid var(--quiet);background:var(--faint)}
table{border-collapse:collapse;width:100%}
.readings th{text-align:left;font-size:14px;font-weight:600;padding:4px}
.readings td{padding:3px 4px;vertical-align:top}
.readings tbody th{white-space:nowrap;vertical-align:middle;width:64px}
.readings .says{width:40%;vertical-align:middle}
.readings tbody .run th{width:auto;padding-top:14px;color:var(--quiet)}
.number{display:inline-block;min-width:1.4em;text-align:right;font-variant-numeric:tabular-nums}
.bar{display:block;position:relative;height:10px;background:linear-gradient(var(--ink),var(--ink)) 50% 0/2px 100% no-repeat,linear-gradient(var(--quiet),var(--quiet)) 16.66% 0/2px 100% no-repeat,linear-gradient(var(--quiet),var(--quiet)) 83.33% 0/2px 100% no-repeat,var(--faint);border:1px solid var(--rule)}
.fill{position:absolute;top:0;bottom:0;background:var(--bar)}
.fill.is-outside{background:var(--bad)}
.error{font-size:14px;font-variant-numeric:tabular-nums}
.is-outside .error,.problem,.is-bad,.not-restored{color:var(--bad)}
.problem,.doubt{font-size:14px;margin:4px 0}
.problem.is-doubt{color:var(--ink)}
.doubt{border-left:5px solid var(--bad);padding-left:8px}
.doubt p{margin:2px 0 6px}
.stamp{display:grid;grid-template-columns:minmax(120px,1fr) auto auto;gap:10px;align-items:end}
.trips{list-style:none;padding:0}
.trips li{display:grid;grid-template-columns:1fr 1fr auto;gap:8px;align-items:end;margin:6px 0}
.checks{list-style:none;padding:0}
.check{border-top:1px solid var(--rule);padding:10px 0}
.asks-for{font-size:14px}
.answers{display:flex;flex-wrap:wrap;gap:8px;margin:6px 0}
.answer{min-width:96px}
.answer[aria-pressed=true]{background:var(--ink);color:var(--paper);font-weight:600}
.answer[aria-pressed=true]::before{content:"✓ "}
.beside{display:grid;grid-template-columns:1fr 2fr;gap:8px}
.hand-back{display:flex;flex-wrap:wrap;gap:10px}
.result{border:1px solid var(--rule);border-top:6px solid var(--rule);padding:8px 14px}
.result .word{font-size:24px;font-weight:600;margin:0}
.opinion{color:var(--quiet)}
summary{min-height:44px;padding:10px 0;cursor:pointer;font-weight:600}
.told{min-height:1.5em}
.state-line{position:fixed;left:0;right:0;bottom:0;z-index:1;display:grid;grid-template-columns:1fr auto;gap:0 12px;align-items:center;padding:8px max(16px,calc(50vw - 464px));background:var(--paper);border-top:3px solid var(--ink)}
.state-line p{margin:0;grid-column:1}
.state-line>button{grid-column:2;grid-row:1/3}
.keeping{font-size:14px}
.form-on-paper{display:none}
@media (max-width:640px){
 .readings thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
 .readings tr{display:flex;flex-wrap:wrap;gap:4px 6px;padding:6px 0;border-top:1px solid var(--rule)}
 .readings tbody th{flex:none;width:50px;align-self:center}
 .readings tbody .run th{width:100%}
 .readings td{padding:0;flex:1 1 76px}
 .readings tbody .says{width:auto;flex:1 0 100%}
 .stamp{grid-template-columns:1fr 1fr}
 .stamp .field{grid-column:1/-1}
 .beside{grid-template-columns:1fr}
}
@media print{
 #sheet{display:none}
 main{max-width:none;padding:0}
 .form-on-paper{display:block}
}
`;
