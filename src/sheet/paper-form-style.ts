/** The style of a form for the pen, A4 or Letter: rows of nine millimetres, heads that repeat. */
export const paperFormStyle = `
@page{margin:12mm}
.paper-form{font:10pt/1.35 system-ui,sans-serif;color:#000;background:#fff}
.paper-form h1{font-size:20pt}
.paper-form h2{font-size:12pt;margin:14pt 0 4pt;padding-top:4pt;border-top:1.5pt solid #000;break-after:avoid}
.form-cautions{font-size:8pt;line-height:1.3;border:1pt solid #000;padding:4pt 8pt 4pt 18pt;margin:6pt 0}
.form-lines{display:grid;grid-template-columns:repeat(3,1fr);gap:0 10pt;margin:6pt 0}
.form-lines div{min-height:11mm;border-bottom:.75pt solid #000;break-inside:avoid}
.form-lines dt{font-size:8pt}
.form-lines dd{margin:0}
.form-table{border-collapse:collapse;width:100%;margin:4pt 0}
.form-table th,.form-table td{border:.75pt solid #000;height:9mm;padding:1mm 1.5mm;text-align:left;font-size:9pt}
.form-table thead th{height:auto;font-size:8pt}
.form-table thead .form-marks th{border-width:0;font-weight:400}
.form-table tr{break-inside:avoid}
.form-table .box{min-width:19mm}
.form-table .tick-box{min-width:11mm;text-align:center}
.form-table .printed{font-variant-numeric:tabular-nums}
`;
