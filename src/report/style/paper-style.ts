/** The style of a page on paper: small type, little air, nothing cut, page one with the error picture on it. */
export const paperStyle = `
@page{size:auto;margin:12mm 12mm 13mm;
 @top-left{font:7.5pt Inter,sans-serif;color:#525d6a}
 @bottom-right{content:"page " counter(page) " of " counter(pages);font:7.5pt Inter,sans-serif;color:#525d6a}
 @bottom-left{font:7.5pt/1.3 Inter,sans-serif;color:#525d6a;white-space:pre}}
@media print{
 html{background:#fff}
 body{font-size:8.2pt;line-height:1.32}
 main{max-width:none;margin:0;padding:0;box-shadow:none}
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
 .what-to-do .verdict{font-size:14pt}
 .verdict .meaning{font-size:9pt;line-height:1.2}
 .answer-box .detail,.answer-box p.detail,.answer-box .opinion,.answer-box .failed-output{font-size:8pt;line-height:1.35}
 .answer-box .detail{margin-top:3pt}
 .answer-box .detail dd{margin-bottom:1pt}
 .answer-box .detail dt,.answer-facts dt{font-size:7pt}
 .answer-box .opinion,.failed-output{margin-top:4pt;padding-top:3pt}
 .what-to-do .step{margin-top:4pt}
 .answer-facts{margin-top:7pt;gap:4pt 8pt;font-size:8pt;line-height:1.35}
 .answer-facts .answer-fact{border-left-width:1pt;padding-left:6pt}
 .picture figcaption{font-size:7.5pt;line-height:1.3;margin-top:2pt}
 .picture h3{margin-bottom:2pt}
 .error-picture>.picture svg{max-height:60mm}
 .wide-only{display:block}
 .narrow-only{display:none}
 .pictures,.beside{grid-template-columns:1fr 1fr;gap:8pt 14pt;margin-top:6pt}
 .picture+.pictures{margin-top:8pt}
 .pictures svg,.beside svg{max-height:41mm}
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
 .figures .meaning,.figures .not-determined{font-size:6.8pt}
 .figures .where{font-size:7pt}
 .figures th[scope=row]{width:23%}
 .figures th .unit{display:inline;font-size:7pt}
 .figures:not(.plain){font-size:7.1pt}
 .figures td.meaning{width:48%}
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
 .set-point-part{display:grid;grid-template-columns:3fr 2fr;column-gap:12pt}
 .set-point-part>*{grid-column:1/-1}
 .set-point-part>.wide{grid-column:1}
 .set-point-part>.definitions{grid-column:2}
 .set-point-part .definitions dl{columns:1}
 .other-budgets{display:none}
 .paper-only{display:block}
 .fact-groups{columns:3;column-gap:14pt;margin:8pt 0}
 .fact-group{margin-bottom:6pt}
 .fact-group h3{margin-top:0}
 .fact-group .fact{grid-template-columns:8em 1fr;gap:6pt;padding:.8pt 0;font-size:7.5pt}
 code{font-size:7pt}
 .digests,.digests code{font-size:6.5pt}
 .digests li{margin:.5pt 0}
 .ink{height:26pt}
 .changes tbody tr:first-child{break-before:avoid}
 .definitions::details-content{display:block;content-visibility:visible;block-size:auto}
 .definitions{font-size:6.6pt;margin-top:4pt;padding:2pt 0 0}
 .definitions summary{break-after:avoid;list-style:none;font-weight:600}
 .definitions dl{columns:3;column-gap:12pt;margin:2pt 0 0;line-height:1.25}
 .definitions dl>div{padding:1pt 0;border-top-width:.5pt}
 .definitions .formula,.definitions .where{display:inline;font-size:inherit}
 .definitions .said+.formula::before{content:"\\a";white-space:pre}
 .definitions .formula+.where::before{content:" · "}
 .end{margin-top:10pt}
 *{print-color-adjust:exact;-webkit-print-color-adjust:exact}
}
`;
