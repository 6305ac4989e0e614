<#ftl output_format="plainText">
<#-- The style sheet of every paper: dark ink on white, one accent color, figures to the right. -->
@page {
  size: <#if size == "a4">210mm 297mm<#else>8.5in 11in</#if>;
  margin: 15mm 18mm 17mm 20mm;
  @bottom-left { content: "${title?replace('"', '')?replace('\\', '')} · ${shop.name?replace('"', '')?replace('\\', '')}"; font-family: "Liberation Sans"; font-size: 8pt; color: #555555; }
  @bottom-right { content: "${w["page"]} " counter(page) " ${w["page.of"]} " counter(pages); font-family: "Liberation Sans"; font-size: 8pt; color: #555555; }
}
body { font-family: "Liberation Sans", Arial, sans-serif; font-size: 9.5pt; line-height: 1.28; color: #1a1a1a; margin: 0; }
h1 { font-size: 17pt; font-weight: normal; margin: 0; color: ${accent}; }
h2 { font-size: 10.5pt; font-weight: bold; margin: 3.2mm 0 0.8mm 0; color: ${accent}; page-break-after: avoid; }
h3 { font-size: 9.5pt; font-weight: bold; margin: 2mm 0 0.3mm 0; page-break-after: avoid; }
p { margin: 0; }
table { border-collapse: collapse; width: 100%; }
td, th { padding: 0; vertical-align: top; text-align: left; font-weight: normal; }
.small { font-size: 8pt; color: #444444; }
.strong { font-weight: bold; }

/* The head: who sends it, and what it is. */
.head { width: 100%; }
.head .sender { width: 60%; }
.head .kind { width: 40%; text-align: right; }
.sendername { font-size: 13pt; font-weight: bold; }

/* The address stands where a window envelope shows it. */
.address { margin-top: 8mm; height: 24mm; }
.address .to { width: 56%; padding-right: 8mm; }
.facts th { width: 50%; padding: 0.4mm 3mm 0.4mm 0; color: #444444; }
.facts td { padding: 0.4mm 0; }

.due { border-top: 0.8pt solid ${accent}; border-bottom: 0.8pt solid ${accent}; padding: 2mm 0; margin-top: 2mm; }
.due td { vertical-align: top; padding: 1mm 0; }
.due .pay { width: 72%; padding-right: 6mm; }
.due .sum { font-size: 15pt; font-weight: bold; text-align: right; }

.about th { width: 26%; padding: 0.2mm 3mm 0.2mm 0; color: #444444; }
.about td { padding: 0.2mm 0; }
.readings { width: 70%; margin-top: 1mm; }
.readings th { color: #444444; padding: 0.3mm 4mm 0.3mm 0; border-bottom: 0.3pt solid #999999; }
.readings td { padding: 0.3mm 4mm 0.3mm 0; }
.readings .value { text-align: right; }

/* The lines: heads repeat on every page, no line is torn apart. */
.lines { -fs-table-paginate: paginate; }
.lines tr { page-break-inside: avoid; }
.lines thead th { border-bottom: 0.8pt solid #1a1a1a; padding: 1mm 0; color: #444444; font-size: 8.5pt; }
.lines tbody td { border-bottom: 0.3pt solid #bbbbbb; padding: 0.9mm 0; }
.lines .what { width: 58%; padding-right: 4mm; }
.lines .quantity { width: 13%; text-align: right; padding-left: 2mm; }
.lines .price { width: 15%; text-align: right; padding-left: 2mm; }
.lines .amount { width: 14%; text-align: right; padding-left: 2mm; }
.outcome { font-style: italic; }

.totals { margin-top: 1mm; page-break-inside: avoid; }
.totals th { width: 86%; text-align: right; padding: 0.35mm 0; }
.totals td { width: 14%; text-align: right; padding: 0.35mm 0 0.35mm 2mm; }
.totals .last th, .totals .last td { border-top: 0.8pt solid #1a1a1a; font-weight: bold; font-size: 11pt; padding-top: 1.2mm; }
