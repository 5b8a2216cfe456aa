/** The style of a page on paper: small type, little air, nothing cut, page one with the error picture on it. */
export const paperStyle = `
@page{size:auto;margin:9mm 12mm 10mm;
 @bottom-right{content:"page " counter(page) " of " counter(pages);font:7.5pt Inter,sans-serif;color:#525d6a}}
@media print{
 .unfold{display:none}
 html{background:#fff}
 body{font-size:8.2pt;line-height:1.32}
 main,main:has(>.leaf){display:block;max-width:none;margin:0;padding:0;box-shadow:none}
 .skip,.contents,.fold{display:none}
 .leaf{display:table;width:100%;table-layout:fixed;padding:0;box-shadow:none}
 .leaf+.leaf,.contents+.leaf{break-before:page}
 .running{display:table-header-group;break-inside:avoid}
 .marks{display:flex;justify-content:space-between;gap:12pt;max-width:none;margin:0;padding:0 0 2pt;border-bottom:.5pt solid var(--rule);font-size:7pt;line-height:1.25;color:var(--quiet)}
 .marks span+span{text-align:right}
 .leaf-body{padding:4pt .5pt 0}
 .annex h2{font-size:13pt}
 .annex-head{padding-bottom:2pt;margin-bottom:5pt;border-bottom-width:1pt}
 .part+.part,.basis+.part,.part+.basis{margin-top:11pt}
 .annex .part>h3{font-size:11pt;margin-bottom:2pt}
 .annex h4{font-size:9pt;margin:6pt 0 2pt}
 h5{font-size:9pt;break-after:avoid}
 .annex-body>h3{margin-top:8pt}
 .annex-body>.part{margin-top:9pt}
 .annex-body>.part:first-child{margin-top:0}
 .masthead .heading{margin-bottom:4pt;align-items:flex-start}
 .masthead h1{line-height:1.05;margin:0}
 .laboratory{font-size:7.6pt}
 .masthead .kind{margin:0}
 .answer,.test-points{margin-top:5pt}
 .loop-facts .fact dt{font-size:6.8pt;line-height:1.15}
 .masthead .loop-facts{grid-template-columns:3fr 4fr 4fr 5fr;gap:1pt 10pt;padding:3pt 0;font-size:7.6pt;line-height:1.25}
 .certificate h2{font-size:8.5pt;margin:5pt 0 2pt;padding-top:2pt;border-top-width:.5pt}
 .certificate h2.hidden{margin:0}
 .certificate .answer-box{padding:2pt 7pt 4pt;border-top-width:3pt}
 .certificate .answer-box.is-fail{border-top-width:4pt}
 .certificate .answer-box p,.certificate .answer-box .detail,.certificate .answer-facts,.certificate .answer-box .failed-output{font-size:7.6pt;line-height:1.28}
 .certificate .answer-box .verdict{font-size:14pt;line-height:1.15}
 .certificate .answer-box h3{font-size:8pt}
 .certificate .verdict .meaning{font-size:8.5pt}
 .certificate .detail .answer-fact dt,.certificate .detail .answer-fact dd{font-size:7.6pt}
 .certificate .answers{grid-template-columns:repeat(auto-fit,minmax(200pt,1fr));gap:7pt}
 .certificate .answer-facts{margin-top:4pt;grid-template-columns:repeat(auto-fit,minmax(150pt,1fr))}
 .replaces{margin-top:3pt;font-size:7.8pt}
 .tolerance-note{margin:1pt 0 2pt;padding:1pt 5pt;border-left-width:2.5pt}
 .certificate .wide{margin-top:0}
 .points{font-size:7.3pt;line-height:1.15}
 .points th,.points td{padding:.9pt 3.5pt}
 .points .where{font-size:6.8pt}
 .points.is-long td .where{display:inline;margin-left:4pt}
 .points .group{font-size:6.8pt}
 .points thead th{white-space:normal}
 .test-points .small{margin-top:2pt;font-size:6.8pt;line-height:1.25}
 .picture-and-figures{grid-template-columns:minmax(0,19fr) minmax(0,11fr);gap:12pt;break-inside:avoid}
 .picture-title{font-size:7.8pt;margin-bottom:1pt}
 .certificate .picture figcaption{font-size:6.6pt;line-height:1.22;margin-top:1pt}
 .in-short table{font-size:7pt;line-height:1.15}
 .in-short th,.in-short td{padding:.7pt 3pt}
 .in-short .figures .where,.in-short caption,.caption{font-size:6.5pt;padding:0 0 1pt}
 .in-short .key-figures th[scope=row]{width:40%}
 .standards-in-short{margin-top:3pt;font-size:6.9pt;line-height:1.25}
 .next-step,.sign-off{gap:0 8pt;margin-top:4pt;border-top-width:.5pt;padding-top:2pt}
 .certificate{font-size:7.6pt;line-height:1.28}
 .next-step p,.limits{font-size:7.2pt;line-height:1.25}
 .limits{margin-top:3pt;font-size:6.8pt;line-height:1.22}
 .limits p+p{margin-top:1pt}
 .signatures{margin-top:2pt;font-size:7.3pt}
 .signatures .ink{height:10mm}
 .signatures thead .where{display:inline;font-size:6.5pt}
 p,.notes,.picture figcaption{max-width:none}
 section p+p{margin-top:3pt}
 h1{font-size:20pt}
 h2{font-size:11pt;margin:8pt 0 2.5pt;padding-top:3pt;border-top-width:1pt;break-after:avoid}
 h3,h4{font-size:9pt}
 section>h3{margin-top:7pt}
 h3,h4,caption,h2+p,h3+p{break-after:avoid}
 table:not(:has(tbody tr:nth-child(9))),.set-point-part{break-inside:avoid}
 tr,figure,.answer-box,.fact,.notes li,.heading,.sign-off{break-inside:avoid}
 p{break-inside:avoid;orphans:3;widows:3}
 .small,.rule,.opinion,.notes,.open-questions{font-size:7.8pt}
 .notes{padding-left:11pt}
 .notes li{margin:1.5pt 0}
 .where,.plain td .where,.plain th .where,.sign-off .where,.loop-checks th .where{font-size:7pt}
 .kind{margin-bottom:2pt}
 .subject{font-size:10pt}
 .facts{gap:1pt 16pt}
 .facts .fact{border-left-width:1pt;padding-left:6pt}
 .fact dt{font-size:7.5pt}
 .answers{gap:8pt}
 .answer-box{padding:4pt 8pt 6pt;border-top-width:4pt}
 .is-fail{border-top-width:5pt}
 .answer-box p{font-size:8.5pt}
 .answer-box .verdict{font-size:16pt;margin:0 0 2pt}
 .verdict .meaning{font-size:9pt;line-height:1.2}
 .answer-box .detail,.answer-box p.detail,.answer-box .opinion,.answer-box .failed-output{font-size:8pt;line-height:1.35}
 .answer-box .detail{margin-top:3pt}
 .answer-box .detail dd{margin-bottom:1pt}
 .answer-box .detail dt,.answer-facts dt{font-size:7pt}
 .answer-box .opinion,.failed-output{margin-top:4pt;padding-top:3pt}
 .answer-facts{margin-top:7pt;gap:4pt 8pt;font-size:8pt;line-height:1.35}
 .answer-facts .answer-fact{border-left-width:1pt;padding-left:6pt}
 .picture figcaption{font-size:7.5pt;line-height:1.3;margin-top:2pt}
 .error-picture>.picture svg{max-height:39mm}
 .wide-only{display:block}
 .narrow-only{display:none}
 .pictures,.beside{grid-template-columns:1fr 1fr;gap:8pt 14pt;margin-top:6pt}
 .picture+.pictures{margin-top:8pt}
 .pictures svg,.beside svg{max-height:39mm}
 .pictures .picture:last-child:nth-child(odd){grid-column:1/-1;display:grid;grid-template-columns:subgrid;grid-template-rows:auto 1fr}
 .pictures .picture:last-child:nth-child(odd) .drawing{grid-column:2;grid-row:1/3}
 .wide{overflow:visible;margin-top:6pt}
 .wide+p,.loop-checks+p{margin-top:5pt}
 .wide table+p{margin-top:2pt}
 table{font-size:7.3pt;line-height:1.25}
 thead{display:table-header-group}
 .plain{font-size:7.3pt}
 caption{padding:2pt 0}
 th,td{padding:1pt 4pt}
 .figures .not-determined{font-size:6.8pt}
 .figures .where{font-size:7pt}
 .figures th[scope=row]{width:23%}
 .figures th .unit{display:inline;font-size:7pt}
 .figures:not(.plain){font-size:7.1pt}
 .sheet{font-size:7pt;line-height:1.15}
 .sheet .formulas td{font-size:6.5pt;min-width:0}
 .sheet th,.sheet td{padding:.8pt 3pt}
 .sheet.many{font-size:6.2pt}
 .sheet.many .formulas td{font-size:5.8pt}
 .sheet.many th,.sheet.many td{padding:.8pt 2pt}
 .loop-checks,.thresholds,.evidence{margin-top:4pt}
 .loop-checks th .where,.loop-checks td .where{display:inline}
 .loop-checks .where::before{content:" · "}
 .loop-checks td>.where:first-child::before{content:""}
 .budget th[scope=row]{width:25%}
 .thresholds td{white-space:nowrap}
 .finding{break-inside:avoid;margin-top:4pt;padding:4pt 8pt 5pt;border-left-width:2pt}
 .finding h4{font-size:9pt}
 .finding h4 .where{font-size:7.5pt}
 .finding-parts{gap:4pt 14pt;margin-top:3pt}
 .finding h4,.finding caption{break-after:avoid}
 .open-questions dt{font-size:7.5pt}
 .open-questions dd{margin-bottom:3pt}
 .after-findings{margin-top:5pt}
 .other-budgets{display:none}
 .fact-groups{columns:3;column-gap:14pt;margin:8pt 0}
 .fact-group{margin-bottom:6pt}
 .fact-group h3{margin-top:0}
 .fact-group .fact{grid-template-columns:8em 1fr;gap:6pt;padding:.8pt 0;font-size:7.5pt}
 code{font-size:7pt}
 .digests,.digests code{font-size:6.5pt}
 .digests li{margin:.5pt 0}
 .ink{height:26pt}
 .changes tbody tr:first-child{break-before:avoid}
 .glossary h3{margin:5pt 0 0}
 .definitions{font-size:6.8pt;columns:3;column-gap:12pt;margin:2pt 0 0;line-height:1.25}
 .definitions>div{padding:1pt 0;border-top-width:.5pt}
 samp,cite{display:inline;font-size:inherit}
 samp::before{content:"\\a";white-space:pre}
 cite::before{content:" · "}
 .end{margin-top:10pt}
 *{print-color-adjust:exact;-webkit-print-color-adjust:exact}
}
`;
