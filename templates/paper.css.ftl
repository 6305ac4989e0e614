<#ftl output_format="plainText">
<#-- The style sheet of every paper: dark ink on white, one accent color, figures to the right. It is set into the page as it
     is, so it must hold no less-than sign and no ampersand; names within strings have theirs written as CSS escapes. -->
<#function quoted text><#return text?replace("\\", "\\5C ")?replace("\"", "\\22 ")?replace("&", "\\26 ")?replace("<", "\\3C ")></#function>
@page {
  size: <#if size == "a4">210mm 297mm<#else>8.5in 11in</#if>;
  margin: <#if working!false>8mm 14mm 11mm 14mm<#else>12mm 20mm 14mm 20mm</#if>;
  @bottom-left { content: "${quoted(title)} · ${quoted(shop.name)}"; font-family: ${footFont}; font-size: 8pt; color: #555555; }
  @bottom-right { content: "${w["page"]} " counter(page) " ${w["page.of"]} " counter(pages); font-family: Liberation Sans; font-size: 8pt; color: #555555; }
}
<#-- Sheets in two languages have their feet in both. -->
<#macro foot side>
  @bottom-left { content: "${quoted(side.title)} · ${quoted(shop.name)}"; font-family: ${side.footFont}; font-size: 8pt; color: #555555; }
  @bottom-right { content: "${side.w["page"]} " counter(page) " ${side.w["page.of"]} " counter(pages); font-family: Liberation Sans; font-size: 8pt; color: #555555; }
</#macro>
<#list sides![.data_model] as side>
@page wall-${side.lang} { margin: 9mm 20mm 13mm 20mm; <@foot side=side/> }
@page back-${side.lang} { margin: 14mm 20mm 16mm 20mm; <@foot side=side/> }
</#list>
body { font-family: Liberation Sans, Arial, sans-serif; font-size: 9.3pt; line-height: 1.2; color: #1a1a1a; margin: 0; }
h1 { font-size: 15.5pt; line-height: 1.1; font-weight: normal; margin: 0; color: ${accent}; }
h2 { font-size: 10.5pt; font-weight: bold; margin: 2.8mm 0 0.6mm 0; color: ${accent}; page-break-after: avoid; }
h3 { font-size: 9.3pt; font-weight: bold; margin: 1.4mm 0 0.2mm 0; page-break-after: avoid; }
p { margin: 0; }
table { border-collapse: collapse; width: 100%; }
td, th { padding: 0; vertical-align: top; text-align: left; font-weight: normal; }
a { color: inherit; text-decoration: none; }
.small { font-size: 9pt; color: #444444; }
.strong { font-weight: bold; }
.whole { white-space: nowrap; }

/* The head: who sends it, and what it is. Its height brings the address to where window envelopes show it. */
.head { height: 33mm; }
.head .sender { width: 53%; padding-right: 4mm; }
.head .kind { width: 47%; text-align: right; }
.paper-number { display: block; font-size: 12.5pt; font-weight: bold; white-space: nowrap; color: #1a1a1a; }
.sendername { font-size: 13pt; font-weight: bold; }

.address { height: 24mm; }
.address .to { width: 50%; padding-right: 6mm; }
.facts th { width: 42%; padding: 0 3mm 0.3mm 0; color: #444444; }
.facts td { padding: 0 0 0.5mm 0; }

/* What is to be paid: how much, by when, to whom. */
.pay { border-top: 0.8pt solid ${accent}; border-bottom: 0.8pt solid ${accent}; padding: 1.4mm 0; margin-top: 1.6mm; page-break-inside: avoid; }
.pay .sum { width: 27%; padding-right: 3mm; }
.pay .amount { font-size: 17pt; line-height: 1.15; font-weight: bold; }
.pay .by { width: 25%; padding-right: 3mm; }
.pay .by .strong { font-size: 10.5pt; padding-top: 1mm; }
.pay .where { width: 48%; font-size: 9pt; line-height: 1.22; }
.pay .why { width: 72%; }
.pay .asked { margin-top: 1.2mm; }
.pay .warning { margin-top: 0.4mm; }

.about th { width: 26%; padding: 0.15mm 3mm 0.15mm 0; color: #444444; }
.about td { padding: 0.15mm 0; }
.about tr, .readings tr { page-break-inside: avoid; }
.readings { width: 62%; margin-top: 0.8mm; }
.readings thead th { color: #444444; font-size: 9pt; border-bottom: 0.3pt solid #999999; }
.readings th, .readings td { padding: 0.2mm 0; }
.readings .value { width: 20%; text-align: right; }

/* The lines: heads repeat on every page, no line is torn apart. */
.lines { -fs-table-paginate: paginate; }
.lines tr, .lines .closing { page-break-inside: avoid; }
.lines thead th { border-bottom: 0.8pt solid #1a1a1a; padding: 0.8mm 0; color: #444444; font-size: 9pt; }
.lines .line td { border-bottom: 0.3pt solid #bbbbbb; padding: 0.6mm 0; }
.lines .line-number { width: 6%; color: #444444; }
.lines .what { width: 56%; padding-right: 4mm; }
.lines .quantity { width: 11%; text-align: right; padding-left: 2mm; }
.lines .price { width: 14%; text-align: right; padding-left: 2mm; }
.lines .amount { width: 13%; text-align: right; padding-left: 2mm; }
.outcome { font-style: italic; }

.lines .sum th { text-align: right; padding: 0.35mm 0; }
.lines .sum td { padding-top: 0.35mm; padding-bottom: 0.35mm; }
.lines .first th, .lines .first td { padding-top: 1mm; }
.lines .last th, .lines .last td { border-top: 0.8pt solid #1a1a1a; font-weight: bold; font-size: 11pt; padding-top: 1.2mm; }
.lines .notes td { padding-top: 1.5mm; }

.terms { margin: 0; padding-left: 5mm; }
.terms li { padding-bottom: 0.4mm; }

/* Where the customer signs: one line for each thing to write, never torn from its heading. */
.approval { page-break-inside: avoid; }
.signing { margin-top: 9mm; border-collapse: separate; border-spacing: 4mm 0; }
.signing td { width: 20%; border-top: 0.5pt solid #1a1a1a; padding-top: 0.6mm; }
/* Papers without charges. */
.readings.wide { width: 100%; }
.readings.wide .value { width: 13%; }
.readings.wide .text { width: 20%; }
.readings.log th, .readings.log td { padding-right: 3mm; }
.safety { font-size: 11pt; line-height: 1.15; }
.together { page-break-inside: avoid; }
.note { margin-top: 2.5mm; }
.cautions { margin: 0 0 1mm 0; padding-left: 6mm; }
ul.cautions { padding-left: 6mm; }
.cautions li { margin: 0 0 0.4mm 0; page-break-inside: avoid; }
/* Numbers that the text refers to are written, not only drawn, so that they are read aloud. */
ol.cautions { list-style: none; }
ol.cautions li { text-indent: -4.5mm; }
svg { display: inline-block; }

/* The timetable of a visit: a row for each machine, drawn to scale. */
.crew { list-style: none; margin: 1mm 0; padding: 0; }
.crew li { display: inline; margin-right: 5mm; }
.swatch { width: 8mm; height: 3.2mm; display: inline-block; }
.axis { display: block; width: 170mm; height: 4mm; margin-top: 1mm; }
.bars { display: block; width: 170mm; height: 8.6mm; }
.alarms { -fs-table-paginate: paginate; }
.alarms tr { page-break-inside: avoid; }
.alarms thead th { border-bottom: 0.8pt solid #1a1a1a; color: #444444; font-size: 9pt; }
.alarms td, .alarms th { padding: 0.5mm 2mm 0.5mm 0; }
.alarms tbody td, .alarms tbody th { border-bottom: 0.3pt solid #bbbbbb; }
.alarms .number { width: 5%; }
.alarms .at { width: 12%; }
.alarms .machine { width: 17%; }
.alarms .next { width: 27%; }
.working .alarms td, .working .alarms th { padding: 0.3mm 2mm 0.3mm 0; font-size: 9.3pt; }
.alarms .spare { width: 9%; text-align: right; padding-right: 3mm; }
.alarms .person { width: 6%; }
.steps .turn { font-size: 9pt; white-space: nowrap; }

/* For wet hands: large type, large boxes, cautions where the work is. */
.working { font-size: 10pt; line-height: 1.2; }
.working .head { height: 14mm; }
.working .about th { width: 20%; }
.working .axis, .working .bars { width: 182mm; }
.working h2 { margin-top: 1.2mm; margin-bottom: 0.3mm; }
.box { display: inline-block; width: 3.6mm; height: 3.6mm; border: 0.9pt solid #1a1a1a; }
.load td { width: 33%; padding: 0.2mm 2mm 0.2mm 0; }
.working .cautions { font-size: 11pt; line-height: 1.12; padding-left: 4.5mm; }
.working ul.cautions { padding-left: 5.6mm; }
.working .cautions li { margin-bottom: 0.2mm; }
.job { page-break-inside: avoid; page-break-after: avoid; }
.step { page-break-inside: avoid; border-top: 0.5pt solid #999999; padding: 0.4mm 0; }
.step .tick { width: 10mm; }
.step .tick .box { width: 6mm; height: 6mm; }
.step .task { padding-right: 3mm; }
.step .blank { width: 30mm; height: 9.5mm; border: 0.6pt solid #1a1a1a; padding: 0.3mm 1mm; font-size: 9pt; color: #333333; }
.step .name { font-size: 11pt; font-weight: bold; }
.step .caution { font-size: 11pt; line-height: 1.1; }
.step .when { width: 54mm; font-size: 9pt; }
.step .turn { font-weight: bold; white-space: nowrap; }
.boxes { margin-top: 0.8mm; }
.boxes td { width: 25%; height: 9.5mm; border: 0.6pt solid #1a1a1a; padding: 0.4mm 1.2mm; font-size: 9pt; color: #333333; }
.boxes.wide td { width: auto; }
.boxes .tall { height: 13mm; }
.ends td { width: 20%; }
.ends .more { width: 30%; }
.where .clock { width: 40mm; padding-left: 3mm; }
.where .about th { width: 26%; }
.boxes .taller { height: 30mm; }
.boxes .signed { height: 14mm; width: 28%; }
.boxes .signed.more { width: 44%; }
.answers { text-align: right; font-size: 10pt; color: #1a1a1a; }
.boxes .answer { width: 17mm; vertical-align: middle; font-size: 10pt; color: #1a1a1a; }
.ending { font-size: 10.5pt; margin-top: 1mm; }
.about.left th { width: 50%; }
.apart { page-break-before: always; }
.log td, .log th { border: 0.3pt solid #999999; padding: 0.8mm 1.5mm; height: 9mm; }
.log thead th { height: auto; color: #444444; font-size: 9pt; width: 17%; }
.log thead .number { width: 8%; }
.log thead .by { width: 27%; }
.log thead .seen { width: 31%; }
.lines .line th { border-bottom: 0.3pt solid #bbbbbb; padding: 0.6mm 0; }
/* Plans: what is planned, for how much. */
.planned { margin-top: 0.8mm; -fs-table-paginate: paginate; }
.planned tr { page-break-inside: avoid; }
.planned thead th { color: #444444; font-size: 9pt; border-bottom: 0.3pt solid #999999; }
.planned th, .planned td { padding: 0.2mm 0; }
.planned .first { width: 19%; padding-right: 4mm; }
.planned .text { padding-right: 4mm; }
.planned .value { width: 13%; text-align: right; padding-left: 2mm; }
.calltable .first { width: 24%; }
.scopes tbody th, .scopes tbody td { padding: 0.5mm 4mm 0.5mm 0; }
.scopes tbody .value { padding-right: 0; }
.annex { font-size: 14pt; font-weight: normal; margin-top: 0; }
.ticks { list-style: none; margin: 1mm 0 0 0; padding: 0; }
.ticks li { margin-bottom: 1.2mm; }
.ticks .box { display: inline-block; width: 4mm; height: 4mm; border: 0.8pt solid #1a1a1a; margin-right: 2mm; }
.surveyed .day { width: 17%; }
.surveyed .found { width: 28%; }
.planned .value.near { padding-right: 4mm; }
.choices { -fs-table-paginate: paginate; }
.choices tr { page-break-inside: avoid; }
.choices thead th { border-bottom: 0.8pt solid #1a1a1a; padding: 0.6mm 0; color: #444444; font-size: 9pt; }
.choices tbody th, .choices tbody td { border-bottom: 0.3pt solid #bbbbbb; padding: 1mm 0; }
.choices .choice { width: 48%; padding-right: 4mm; }
.choices tbody .counted th, .choices tbody .counted td { border-bottom: none; padding-bottom: 0; page-break-after: avoid; }
.choices tbody .gets td { padding-top: 0.2mm; color: #444444; }
.choices .value { text-align: right; padding-left: 2mm; }
.choices .payments { white-space: nowrap; }
/* Papers about an account. */
.lines.account .what { width: 24%; }
.lines.account .store { width: 8%; }
.lines.account .when { width: 17%; padding-right: 1.5mm; font-size: 9pt; }
.lines.account .days { width: 8%; text-align: right; }
.lines.account .amount { width: 12%; }
.lines.account .happened { width: 58%; padding-right: 4mm; }
.ages { margin-bottom: 1.5mm; }
.ages th, .ages td { text-align: right; padding: 0.8mm 0 0.8mm 2mm; border-bottom: 0.3pt solid #bbbbbb; }
.ages th { color: #444444; font-size: 9pt; border-bottom: 0.8pt solid #1a1a1a; }
.sign { margin-top: 12mm; page-break-inside: avoid; page-break-before: avoid; }
.sign .line { width: 46%; border-top: 0.5pt solid #1a1a1a; padding-top: 0.8mm; }
.sign .gap { width: 8%; }
/* What to expect, on one page: it is handed over, not sent in a window envelope. */
.compact .head { height: 16.5mm; }
.compact .address { height: 15mm; margin-top: 2.5mm; }
.outlook { font-size: 9.3pt; line-height: 1.2; }
.outlook h2 { margin: 2mm 0 0.5mm 0; }
.answer { border-top: 0.8pt solid ${accent}; border-bottom: 0.8pt solid ${accent}; padding: 1mm 0; margin-top: 1mm; }
.answer .strong { font-size: 13pt; line-height: 1.2; margin-bottom: 1mm; }
.outlook .answer { padding: 2mm 0; }
.outlook .answer p { margin-bottom: 0.6mm; }
.tensites td { padding: 1.2mm 0; vertical-align: middle; }
.tensites .way { width: 44%; padding-right: 4mm; }
.ways.year .way { width: 29%; padding-right: 3mm; }
.ways.year .calls { width: 9%; }
.ways.year tbody th, .ways.year tbody td { padding-top: 1mm; padding-bottom: 1mm; }
.legend { width: 100%; margin-bottom: 0.8mm; }
.legend td { vertical-align: middle; font-size: 9pt; color: #444444; }
.legend .kind { width: 6mm; }
.legend .means { padding-right: 4mm; white-space: nowrap; }
.ways tr { page-break-inside: avoid; }
.ways thead th { border-bottom: 0.8pt solid #1a1a1a; padding: 0.5mm 0; color: #444444; font-size: 9pt; vertical-align: bottom; }
.ways tbody th, .ways tbody td { border-bottom: 0.3pt solid #bbbbbb; padding: 0.3mm 0; }
.ways tbody .counted th, .ways tbody .counted td { border-bottom: none; page-break-after: avoid; }
.ways tbody .gets td { padding: 0 0 0.2mm 0; }
.ways .way { width: 18%; padding-right: 2mm; }
.ways .sites { width: 27%; }
.ways .calls { width: 8%; }
.ways .value { text-align: right; padding-left: 2mm; }
.ways .span { width: 20%; text-align: right; padding-left: 2mm; }
.besides th { width: 22%; }
.inputs .column { width: 50%; padding-right: 4mm; }
.inputs ul { margin: 0; padding-left: 4mm; }
.who { font-style: italic; }
.exact th, .exact td { padding: 0.15mm 0; border-bottom: 0.3pt solid #dddddd; }
.exact .label { width: 36%; padding-right: 3mm; }
.exact .value { width: auto; padding-left: 2mm; }
.swings .what { width: 33%; padding-right: 3mm; }
.swings .bar { width: 47%; }
.swings .value { width: 10%; }
.swings th, .swings td { vertical-align: middle; }
.pictures { margin-top: 1mm; }
.pictures td { width: 33%; padding-right: 2mm; }
.brushing .cautions { padding-left: 4.5mm; }
.brushing ul.cautions { padding-left: 5.6mm; }
/* For the wall of a kitchen: read from where the machine stands. */
.wall { font-size: 11pt; line-height: 1.15; }
.cautions.large { font-size: 11pt; }
.wall h1 { font-size: 18pt; }
.wall h2 { font-size: 12pt; margin: 1.6mm 0 0.4mm 0; }
.wall .small, .wall p { font-size: 11pt; }
.wall .monthly td { height: 11mm; }
.wall .many td { height: 10mm; }
.wall .monthly thead th, .wall .monthly .first { font-size: 11pt; }
.compact.tight .head { height: 17mm; }
.brushing .whose { margin-bottom: 1mm; }
.brushing .cautions li { margin-bottom: 0.2mm; }
.halves .steps { width: 45%; padding-right: 4mm; }
.halves .half { width: 50%; padding-right: 4mm; }
.halves .wide { width: 53%; padding-right: 5mm; }
.halves .narrow { width: 47%; }
.brushing .lines .what { width: 78%; }
.brushing .lines .amount { width: 22%; }
.brushing .lines .line th, .brushing .lines .line td { padding: 0.3mm 0; }
.brushing .note { margin-top: 1mm; }
.monthly th, .monthly td { border: 0.3pt solid #999999; padding: 0.3mm 1mm; height: 4.6mm; }
.monthly thead th { width: 6.8%; height: auto; color: #444444; font-size: 9pt; text-align: center; }
.monthly .first { width: 18%; font-size: 9pt; color: #444444; text-align: left; }

.choice { margin-right: 4pt; }
.code { font-family: Liberation Sans, Arial, sans-serif; margin: 0; white-space: pre; }

@media screen {
  body { max-width: 176mm; margin: 12mm auto; padding: 0 5mm; }
}
