import { palette } from "../../charts/palette.ts";
import { certificateStyle, darkStyle } from "./certificate-style.ts";
import { paperStyle } from "./paper-style.ts";

/** The style of a page: on a desk, at phone width, printed on A4 or Letter, and in grey. */
export const pageStyle = `
:root{--ink:${palette.ink};--quiet:${palette.quiet};--rule:#c9d1d9;--faint:#f3f5f7;--fail:#9b1c1c;--pass:#1d5e3a;--paper:#fff;--ground:#e9edf1;--bad:#fbeeee;--focus:#1b5fb4;color-scheme:light}
*{box-sizing:border-box}
html{background:var(--ground)}
body{margin:0;font:15px/1.5 Inter,system-ui,sans-serif;color:var(--ink)}
main{max-width:1160px;margin:24px auto;padding:36px 48px 48px;background:var(--paper);box-shadow:0 1px 4px #1b243026}
h1,h2,h3,p,dl,dd,figure,ul{margin:0}
h1,h2,h3,th,strong,.verdict{font-weight:600}
h1{font-size:34px;line-height:1.15;overflow-wrap:anywhere}
h2{font-size:20px;line-height:1.3;margin:40px 0 12px;padding-top:10px;border-top:2px solid var(--ink)}
h3{font-size:15px;line-height:1.4}
p{max-width:76ch;overflow-wrap:anywhere}
section p+p{margin-top:6px}
.heading{display:flex;gap:32px;justify-content:space-between;align-items:flex-end}
.heading>div{min-width:0}
.kind{color:var(--quiet);margin-bottom:6px}
.draft{display:inline-block;margin-left:10px;padding:0 8px;border:1px solid var(--ink);color:var(--ink);border-radius:2px}
.subject{font-size:17px;color:var(--quiet)}
.facts{display:grid;grid-template-columns:auto auto;gap:2px 28px;flex:none;max-width:50%}
.fact dt{color:var(--quiet);font-size:13px}
.fact dd{overflow-wrap:anywhere}
.facts .across{grid-column:1/-1}
.facts .fact{border-left:2px solid var(--rule);padding-left:10px}
.not-stated,.not-determined{color:var(--quiet);font-style:italic}
.answer-box{border:1px solid var(--rule);border-top:6px solid var(--rule);padding:12px 16px 14px}
.answer-box p{font-size:15px}
.answer-box .verdict{font-size:28px;line-height:1.25;margin:2px 0 6px}
.answer-box .detail{margin-top:8px}
.answer-box .detail,.answer-box p.detail,.answer-box .opinion,.answer-box .failed-output{font-size:13.5px;line-height:1.45}
.answer-box .detail dt{color:var(--quiet);font-size:12.5px}
.answer-box .detail dd{margin-bottom:4px}
.answer-facts{display:grid;grid-template-columns:repeat(3,minmax(0,1fr));gap:10px 16px;margin-top:16px;font-size:14px;line-height:1.45}
.answer-fact{overflow-wrap:anywhere}
.answer-facts dt{color:var(--quiet);font-size:12.5px}
.answer-facts .answer-fact{border-left:2px solid var(--rule);padding-left:10px}
.answers{display:grid;gap:16px}
.failed-output{margin-top:8px}
.verdict .meaning{display:inline-block;line-height:1.3;font-size:15px;font-weight:400;color:var(--ink)}
.is-pass{border-top-color:var(--pass)}
.is-pass .verdict{color:var(--pass)}
.is-fail{border-top-color:var(--fail);border-top-style:double;border-top-width:8px}
.is-fail .verdict{color:var(--fail)}
.rule{margin-top:14px;font-size:14px;color:var(--quiet)}
.picture h3{margin:0 0 6px}
.picture figcaption{margin-top:4px;font-size:13px;color:var(--quiet);max-width:90ch}
.drawing svg{display:block;width:100%;height:auto}
.narrow-only{display:none}
.picture+.pictures{margin-top:24px}
.pictures{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,420px),1fr));gap:28px 32px}
.wide{overflow-x:auto;margin-top:14px}
.wide+p{margin-top:10px}
.wide table+p{margin-top:6px}
.day{white-space:nowrap}
.trips{width:auto}
table{border-collapse:collapse;width:100%;font-size:14px;line-height:1.4}
caption{text-align:left;font-weight:600;padding:4px 0 6px}
th,td{padding:5px 10px;border:1px solid var(--rule);text-align:left;vertical-align:top}
thead th{background:var(--faint)}
.number,.numeric td,.numeric thead th,.numbered tbody [scope=row]{text-align:right;font-variant-numeric:tabular-nums}
td.number,.numeric td{white-space:nowrap}
.numeric .text,.numeric .over,.numeric .not-determined{text-align:left;white-space:normal}
.figures .not-determined,.figures .where{white-space:normal;display:block;font-size:12.5px}
.where,.meaning{color:var(--quiet)}
.figures th[scope=row]{font-weight:400;min-width:11em}
.figures th .unit{display:block;font-size:12.5px;color:var(--quiet)}
.unfold{display:block;padding:8px 0;font-size:14px}
.unfold input{width:22px;height:22px;margin:0 4px 0 0;vertical-align:-5px}
.sheet{font-size:12.5px;line-height:1.35}
.sheet th,.sheet td{padding:3px 7px}
.sheet.many{font-size:12px}
.sheet.many th,.sheet.many td{padding:3px 5px}
.sheet td{text-align:right;font-variant-numeric:tabular-nums}
.sheet .words,.sheet tbody td:nth-child(4),.sheet tbody td:last-child{text-align:left}
.sheet tbody td{white-space:nowrap}
.sheet .letters th{text-align:center;color:var(--quiet)}
.sheet .corner{background:var(--faint)}
.sheet tbody th,.sheet .titles th,.sheet .formulas th{background:var(--faint);color:var(--quiet);font-weight:400;text-align:right}
.sheet .titles td{font-weight:600}
.sheet .unit{display:block;font-weight:400;color:var(--quiet)}
.sheet .formulas td{font-size:12px;color:var(--quiet);text-align:center;vertical-align:middle}
.sheet .outside td{background:var(--bad)}
.sheet .outside td:last-child{color:var(--fail);font-weight:600}
.sheet .outside td:last-child::before{content:"▸ "}
.sheet .left-out td{color:var(--quiet)}
.is-open{border-top-style:dashed;border-top-color:var(--ink)}
.outside td:last-child{font-weight:600}
.plain td .where,.loop-checks th .where{display:block;font-size:12px;font-weight:400}
.loop-checks{margin-top:14px}
.loop-checks th,.loop-checks td{overflow-wrap:anywhere}
.loop-checks th[scope=row]{font-weight:400;width:40%}
.loop-checks td:last-child{width:18%;overflow-wrap:normal}
.loop-checks+p{margin-top:12px}
.history th[scope=row]{font-weight:400;white-space:nowrap}
.history .where{display:block;font-size:12px}
.drifts td:last-child{min-width:13em}
.wide>.history+p{margin-top:8px}
p+.picture{margin-top:14px}
.is-break td,.is-break th{border-bottom:2px dashed var(--quiet)}
.set-points th[scope=row]{font-weight:400}
.budget th[scope=row]{font-weight:400}
.budgets th[scope=row]{font-weight:400}
.budgets .sum>*{background:var(--faint);font-weight:600}
.other-budgets{margin:10px 0}
details{border-top:1px solid var(--rule);padding:5px 0;font-size:14px}
summary{cursor:pointer}
.definitions{margin-top:14px;font-size:13.5px;columns:2;column-gap:40px;line-height:1.45}
.definitions>div{break-inside:avoid;padding:4px 0 5px;border-top:1px solid var(--rule)}
.definitions dt{font-weight:600}
.definitions dt>*{font:inherit;font-weight:400}
.definitions small,cite{color:var(--quiet)}
.definitions sub{font-size:75%;line-height:0}
.definitions dd{overflow-wrap:anywhere}
samp,cite{display:block;font:inherit}
cite{font-size:12px}
.plain{font-size:13.5px}
tfoot td,tfoot th{background:var(--faint);font-weight:600}
.notes{padding-left:20px;max-width:84ch}
.notes li{margin:4px 0;overflow-wrap:anywhere}
.digests{font-size:13px;color:var(--quiet)}
code{font:12px/1.4 ui-monospace,monospace;overflow-wrap:anywhere}
h4{margin:0;font-size:15px;line-height:1.35}
.finding{margin:12px 0 0;padding:12px 16px 14px;border:1px solid var(--rule);border-left:4px solid var(--ink)}
.finding h4 .where{font-weight:400;font-size:13px;margin-left:6px}
.finding-parts{display:grid;grid-template-columns:minmax(0,3fr) minmax(0,4fr);gap:8px 28px;margin-top:8px;align-items:start}
.evidence th[scope=row]{font-weight:400}
.kept-together{white-space:nowrap}
.recommendation .finding p{margin-top:4px}
.recommendation .finding .notes{margin-top:4px}
.recommendation .after-findings{margin-top:14px}
.thresholds{margin-top:14px}
.thresholds th[scope=row]{font-weight:400}
.open-questions{font-size:14px}
.open-questions dt{color:var(--quiet);font-size:13px}
.open-questions dd{margin:0 0 8px}
.opinion{margin-top:8px;padding-top:6px;border-top:1px solid var(--rule)}
.fact-groups{columns:2;column-gap:40px;margin:22px 0}
.fact-group{margin-bottom:18px}
.fact-group .fact{display:grid;grid-template-columns:10em 1fr;gap:12px;padding:3px 0;border-top:1px solid var(--rule);font-size:14px}
.small{font-size:14px}
.typed{display:flex;flex-wrap:wrap;gap:8px 32px;margin:8px 0}
.typed .fact{border-left:2px solid var(--rule);padding-left:10px}
.beside{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,420px),1fr));gap:20px 32px;margin:16px 0}
.plain .group{background:var(--faint)}
.plain th .where{display:block;font-size:12px;font-weight:400}
.basis h3,.fact-groups+*{margin-top:14px}
section>h3{margin-top:18px}
.ink{height:46px}
.sign-off .ink{min-width:220px}
.replacement-matrix{table-layout:fixed}
.replacement-matrix th[scope=row]{width:22%}
.replacement-matrix th,.replacement-matrix td{overflow-wrap:anywhere;min-width:0}
.replacement-matrix .is-unfit{background:var(--bad);border-left:4px double var(--fail)}
.replacement-matrix .is-unfit strong{color:var(--fail)}
.replacement-matrix .asks-change{border-left:4px solid var(--quiet)}
.replacement-matrix .is-untold{border-left:4px dotted var(--quiet)}
.replacement ol.notes{margin:10px 0 14px}
.replacement .notes ul{margin:2px 0 4px;padding-left:20px}
.changes th[scope=row]{font-weight:400}
.changes th,.changes td{overflow-wrap:anywhere}
.changes th:first-child{width:40%}
.all-changes{table-layout:fixed;font-size:12.5px}
.all-changes th:first-child{width:30%}
.beside>:only-child{grid-column:1/-1}
.impact-facts{max-width:none;grid-template-columns:repeat(auto-fit,minmax(min(100%,11em),1fr));margin:10px 0 14px}
.sign-off .where{display:block;font-size:12px;font-weight:400}
.fingerprint{overflow-wrap:anywhere}
.when{display:inline-block}
.end{margin-top:22px;text-align:center;color:var(--quiet)}
@media screen and (max-width:700px){
 body{font-size:14px}
 main{margin:0;padding:18px 16px 28px;box-shadow:none}
 .heading{display:block}
 .facts{max-width:none;margin-top:14px}
 h1{font-size:28px}
 .fact-groups{columns:1}
 .fact-group .fact{grid-template-columns:8em 1fr}
 .wide-only{display:none}
 .narrow-only{display:block}
 .sign-off .ink{min-width:90px}
 .figures th[scope=row]{min-width:7.5em}
 .figures td{white-space:normal;min-width:7em}
 .figures th,.figures td{padding:5px 8px}
 .answers, .finding-parts{grid-template-columns:1fr}
 .loop-checks th[scope=row]{width:37%}
 .loop-checks td:last-child{width:25%}
 .loop-checks th,.loop-checks td{padding:5px 7px}
 .replacement-matrix{min-width:620px}
 .replacement-matrix tbody th,.replacement-matrix thead th:first-child{position:sticky;left:0;background:var(--faint)}
 .set-points{font-size:12px}
 .set-points th,.set-points td{padding:4px}
 .definitions{columns:1}
}
${certificateStyle}${darkStyle}${paperStyle}`;
