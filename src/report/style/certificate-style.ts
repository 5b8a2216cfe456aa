/** The style of the certificate, of the annexes behind it and of the list of contents, on a screen. */
export const certificateStyle = `
.skip{position:absolute;left:-99em;top:8px;padding:8px 14px;background:var(--paper);color:var(--ink);border:2px solid var(--ink);z-index:2}
.skip:focus{left:8px}
.hidden{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
:focus-visible{outline:3px solid var(--focus);outline-offset:2px}
main:has(>.leaf){max-width:1040px;padding:0;background:none;box-shadow:none;display:grid;grid-template-columns:minmax(0,1fr);gap:20px}
.leaf{min-width:0;padding:26px 34px 30px;background:var(--paper);box-shadow:0 1px 4px #1b243026;scroll-margin-top:8px}
.running,.sideways{display:none}
.contents ol{margin:0;padding:0;list-style:none;font-size:14px;line-height:1.35}
.contents a{display:flex;gap:10px;padding:5px 8px;color:var(--ink);text-decoration:none;border-left:3px solid transparent}
.contents a:hover{border-left-color:var(--ink);text-decoration:underline}
.contents .is-absent{display:flex;gap:10px;padding:5px 11px;color:var(--quiet)}
.letter{display:inline-block;min-width:1.1em;font-weight:600}
.annex h2{margin:0;padding:0;border:0}
.annex-head{display:flex;justify-content:space-between;align-items:baseline;gap:16px;border-bottom:2px solid var(--ink);padding-bottom:6px;margin-bottom:14px}
.annex-head .letter{margin-right:6px}
.fold{display:none}
.annex-body>h3{margin-top:20px}
.annex-body>.part{margin-top:26px}
.part+.part,.basis+.part,.part+.basis{margin-top:30px}
.annex .part>h3{font-size:18px;margin-bottom:8px}
.annex h4{font-size:15px;margin:16px 0 4px}
h5{margin:0;font-size:15px;line-height:1.35;font-weight:600}
.masthead .heading{margin-bottom:10px}
.masthead .facts{grid-template-columns:auto auto auto}
.laboratory{font-size:13px;color:var(--quiet)}
.masthead h1{margin-bottom:2px}
.masthead .loop-facts{max-width:none;grid-template-columns:repeat(4,minmax(0,1fr));gap:4px 18px;padding:6px 0;border:1px solid var(--rule);border-width:1px 0;font-size:13px;line-height:1.35}
.loop-facts .fact{border:0;padding:0}
.certificate{font-size:13px;line-height:1.4}
.certificate h2{font-size:14px;margin:12px 0 4px;padding-top:4px;border-top-width:1px}
.answer>h2,.test-points>h2{position:absolute;clip-path:inset(50%);width:1px;height:1px;overflow:hidden;margin:0}
.answer,.test-points{margin-top:12px}
.in-short .key-figures .where{display:none}
.certificate .answer-facts dt,.certificate .answer-facts dd{display:inline}
.certificate .answer-facts dt::after{content:": "}
.next-step,.sign-off{display:grid;grid-template-columns:auto 1fr;gap:0 14px;margin-top:10px;border-top:1px solid var(--ink);padding-top:4px}
.certificate .next-step h2,.certificate .sign-off h2{margin:0;padding:0;border:0}
.sign-off>.signatures{grid-column:1/-1}
.replaces{margin-top:10px;max-width:none;font-size:14px}
.certificate .answers{grid-template-columns:repeat(auto-fit,minmax(min(100%,300px),1fr))}
.certificate .answer-box{padding:4px 14px 8px;border-top-width:5px}
.certificate .answer-box.is-fail{border-top-width:7px}
.certificate .answer-box p,.certificate .answer-box .detail,.certificate .answer-facts{font-size:13px;line-height:1.4}
.certificate .answer-box .verdict{font-size:25px;line-height:1.2;margin:0 0 2px}
.certificate .detail .answer-fact dt,.certificate .detail .answer-fact dd{font-size:13px}
.certificate .detail{margin-top:4px}
.detail .answer-fact dt,.detail .answer-fact dd{display:inline;margin:0}
.detail .answer-fact dt::after{content:": "}
.certificate .answer-facts:empty{display:none}
.certificate .answer-facts{margin-top:10px;grid-template-columns:repeat(auto-fit,minmax(min(100%,260px),1fr))}
.tolerance-note{margin:4px 0;padding:3px 8px;border-left:4px solid var(--ink);background:var(--faint);font-size:14px}
.certificate .wide{margin-top:0}
.points{font-size:12px;line-height:1.3}
.points th,.points td{padding:2px 4px}
.points th[scope=row]{font-weight:600;white-space:nowrap}
.points .over{text-align:center}
.points .begins,.points .over{border-left:2px solid var(--quiet)}
.points .where{display:block;font-size:12px}
.points .statement{white-space:nowrap}
.points .is-bad{font-weight:600;color:var(--fail)}
.points .group{font-weight:400;font-size:12px;color:var(--quiet)}
.test-points .small{margin-top:4px;font-size:12px;line-height:1.35;max-width:none;color:var(--quiet)}
.picture-and-figures{display:grid;grid-template-columns:minmax(0,17fr) minmax(0,11fr);gap:24px}
.picture-title{font-weight:600;font-size:14px;margin:0 0 4px}
.in-short table{font-size:12.5px;line-height:1.3}
.in-short th,.in-short td{padding:2px 6px}
.in-short .figures th[scope=row]{min-width:7em}
.in-short .figures .where{font-size:11.5px}
.in-short caption,.caption{font-size:12.5px;font-weight:400;color:var(--quiet);padding:0 0 3px}
.standards-in-short{margin-top:6px;font-size:12.5px;line-height:1.35}
.standards-in-short ul{padding:0;list-style:none}
.standards-in-short li{overflow-wrap:anywhere}
.next-step p,.sign-off p{max-width:none}
.next-step .opinion{border:0;padding:0;margin:0;color:var(--quiet)}
.limits{margin-top:8px;font-size:12.5px;line-height:1.4}
.limits p+p{margin-top:2px}
.certificate .picture figcaption{font-size:12px;line-height:1.35}
.limits p{max-width:none}
.signatures{table-layout:fixed;margin-top:4px;font-size:13px}
.signatures th:first-child{width:15%;font-weight:400}
.signatures .ink{height:46px;min-width:0}
.signatures thead .where{display:inline;font-weight:400;font-size:12px}
.glossary h3{margin:18px 0 0}
.sheet tr:not(.letters) td:nth-child(2){color:var(--quiet)}
.sideways{position:sticky;left:0;width:fit-content;margin:0 0 4px;padding:1px 8px;font-size:12.5px;background:var(--faint);border-left:3px solid var(--quiet)}
@media screen{
 .wide:has(.unfold input:not(:checked)) .sheet tbody tr:nth-child(n+21):not(.outside):not(.left-out){display:none}
 section.wide{container-type:inline-size}
 .wide>table{min-width:720px}
 .wide>.is-wide{min-width:960px}
 .wide>.many{min-width:1140px}
 @container (max-width:719.9px){.sideways{display:block}}
 @container (max-width:959.9px){.sideways:has(~.is-wide){display:block}}
 @container (max-width:1139.9px){.sideways:has(~.many){display:block}}
}
@media screen and (min-width:1100px){
 main:has(>.leaf){max-width:1300px;grid-template-columns:200px minmax(0,1fr);gap:20px 16px;padding:0 14px;margin-top:14px}
 .leaf{grid-column:2}
 .contents{grid-column:1;grid-row:1/span 12;position:sticky;top:20px;align-self:start}
}
@media screen and (max-width:1099px){
 .contents{background:var(--paper);padding:14px 32px;box-shadow:0 1px 4px #1b243026}
 .contents a{padding:8px}
}
@media screen and (max-width:700px){
 main:has(>.leaf){gap:10px}
 .leaf{padding:18px 16px 22px}
 .contents{padding:8px 8px}
 .contents a{padding:10px 8px}
 .masthead .facts,.masthead .loop-facts{grid-template-columns:repeat(2,minmax(0,1fr))}
 .masthead .facts .across{grid-column:1/-1}
 .picture-and-figures{grid-template-columns:minmax(0,1fr);gap:0}
 .annex-head{margin-bottom:0;border-bottom-width:1px}
 .fold{display:inline-flex;gap:8px;align-items:center;padding:6px 0;white-space:nowrap}
 .fold input{width:22px;height:22px;margin:0}
 .annex-body{margin-top:12px}
 .annex:not(:target):not(:has(.fold input:checked)) .annex-body{display:none}
 .signatures{font-size:12px}
 .signatures th,.signatures td{padding:4px 5px;overflow-wrap:anywhere}
}
`;

/** For reading at night; paper is always light. Pictures turn their lightness and keep their hues. */
export const darkStyle = `
@media screen and (prefers-color-scheme:dark){
 :root{--ink:#e4e8ec;--quiet:#a3afba;--rule:#3b4651;--faint:#262e36;--fail:#ff9d94;--pass:#7fd3a0;--paper:#1a2027;--ground:#101418;--bad:#3a2326;--focus:#8ec5ff;color-scheme:dark}
 .drawing svg{filter:invert(1) hue-rotate(180deg)}
}
`;
