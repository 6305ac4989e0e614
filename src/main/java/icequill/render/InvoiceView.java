package icequill.render;

import icequill.document.Attended;
import icequill.document.Invoice;
import icequill.document.InvoiceLine;
import icequill.document.MachineReport;
import icequill.document.Totals;
import icequill.explain.Explanation;
import icequill.explain.Phrase;
import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Machine;
import icequill.party.Shop;
import icequill.tax.TaxTotal;
import icequill.work.Finding;
import icequill.work.Order;
import icequill.work.Outcome;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** An invoice as texts, ready for the template. */
final class InvoiceView {

    private final Invoice invoice;
    private final Sentences sentences;
    private final Formats formats;

    private InvoiceView(Invoice invoice) {
        this.invoice = invoice;
        this.sentences = Sentences.of(invoice.language(), invoice.shop().address().country());
        this.formats = Formats.of(invoice.language(), invoice.shop().address().country());
    }

    static Map<String, Object> of(Invoice invoice) {
        return new InvoiceView(invoice).model();
    }

    private Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>();
        String currency = invoice.totals().gross().getCurrency().getCurrencyCode();
        model.put("lang", invoice.language().tag());
        model.put("size", invoice.size().name().toLowerCase(Locale.ROOT));
        model.put("accent", invoice.shop().accent());
        model.put("w", Words.of(invoice.language()).all());
        model.put("title", title());
        model.put("currency", currency);
        model.put("shop", shop(invoice.shop()));
        model.put("draft", invoice.isDraft());
        model.put("due", Map.of("amount", currency + "\u00a0" + formats.amount(invoice.totals().gross()), "by",
                formats.day(invoice.due())));
        model.put("billTo", billTo(invoice.billTo()));
        model.put("facts", facts());
        model.put("site", site(invoice.attended()));
        model.put("visit", visit(invoice.attended()));
        model.put("machines", invoice.machines().stream().map(this::machine).toList());
        model.put("lines", lines(true));
        model.put("declined", lines(false));
        model.put("totals", totals(invoice.totals()));
        model.put("anyTaxed", invoice.lines().stream().anyMatch(InvoiceLine::taxed));
        model.put("untaxed", untaxed());
        model.put("remarks", invoice.remarks().stream().map(sentences::say).toList());
        return model;
    }

    private String title() {
        return invoice.number().map(number -> sentences.word("invoice.title") + " " + number)
                .orElseGet(() -> sentences.word("invoice.draft"));
    }

    private Map<String, Object> shop(Shop shop) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("name", shop.name());
        view.put("lines", shop.address().lines());
        view.put("contact", shop.phone() + " · " + shop.email());
        view.put("registrations",
                shop.registrations().stream().map(entry -> entry.name() + " " + entry.value()).toList());
        view.put("payee", shop.remittance().payee());
        view.put("payeeLines", shop.remittance().address().lines());
        view.put("bank", shop.remittance().bank().stream().map(entry -> pair(entry.name(), entry.value())).toList());
        return view;
    }

    private static Map<String, Object> billTo(BillTo billTo) {
        List<String> lines = new ArrayList<>();
        billTo.attention().ifPresent(lines::add);
        lines.addAll(billTo.address().lines());
        return Map.of("name", billTo.name(), "lines", lines);
    }

    private List<Map<String, String>> facts() {
        Order order = invoice.attended().order();
        List<Map<String, String>> facts = new ArrayList<>();
        fact(facts, "fact.number", invoice.number());
        fact(facts, "fact.date", Optional.of(formats.day(invoice.date())));
        fact(facts, "fact.due", Optional.of(formats.day(invoice.due())));
        fact(facts, "fact.purchase-order", order.purchaseOrder());
        fact(facts, "fact.store", invoice.attended().storeNumber());
        fact(facts, "fact.vendor", invoice.vendorNumber());
        fact(facts, "fact.visit", Optional.of(invoice.attended().visit()));
        return facts;
    }

    private void fact(List<Map<String, String>> facts, String key, Optional<String> value) {
        value.ifPresent(text -> facts.add(pair(sentences.word(key), text)));
    }

    private static Map<String, Object> site(Attended attended) {
        Address address = attended.address();
        return Map.of("name", attended.site(), "lines", address.lines());
    }

    private List<Map<String, String>> visit(Attended attended) {
        List<Map<String, String>> rows = new ArrayList<>();
        fact(rows, "visit.date", Optional.of(formats.day(attended.arrived().toLocalDate())));
        fact(rows, "visit.times", Optional.of(span(attended.arrived(), attended.left())));
        attended.people().forEach(person -> fact(rows, "visit.person",
                Optional.of(person.name() + ", " + person.grade() + ", " + span(person.arrived(), person.left()))));
        attended.call().ifPresent(call -> {
            fact(rows, "visit.asked", Optional.of(call.askedBy() + ", " + moment(call.at())));
            fact(rows, "visit.symptom", Optional.of(call.symptom()));
            fact(rows, "visit.promised", call.promised().map(this::moment));
        });
        fact(rows, "visit.approved", attended.order().approver());
        return rows;
    }

    private String moment(ZonedDateTime moment) {
        return formats.day(moment.toLocalDate()) + ", " + formats.time(moment.toLocalTime());
    }

    private String span(ZonedDateTime from, ZonedDateTime until) {
        String end = from.toLocalDate().equals(until.toLocalDate()) ? formats.time(until.toLocalTime()) : moment(until);
        return formats.time(from.toLocalTime()) + " – " + end;
    }

    private Map<String, Object> machine(MachineReport report) {
        Machine machine = report.machine();
        Finding finding = report.finding();
        List<Map<String, String>> rows = new ArrayList<>();
        fact(rows, "machine.complaint", finding.complaint());
        fact(rows, "machine.cause", finding.cause());
        fact(rows, "machine.correction", finding.correction());
        fact(rows, "machine.tasks", Optional.of(String.join("; ", report.tasks())).filter(text -> !text.isEmpty()));
        finding.recommendations().forEach(advice -> fact(rows,
                advice.accepted() ? "machine.recommended-accepted" : "machine.recommended-declined",
                Optional.of(advice.text())));
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("where", machine.where());
        view.put("model", machine.model());
        view.put("serial", machine.serial().orElse(""));
        view.put("rows", rows);
        view.put("readings", finding.readings().stream().map(InvoiceView::reading).toList());
        return view;
    }

    private static Map<String, String> reading(Finding.Reading reading) {
        String unit = reading.unit().isEmpty() ? "" : " (" + reading.unit() + ")";
        return Map.of("what", reading.what() + unit, "before", reading.before().orElse("–"), "after",
                reading.after().orElse("–"));
    }

    private List<Map<String, Object>> lines(boolean done) {
        return invoice.lines().stream().filter(line -> line.outcome().isDone() == done).map(this::line).toList();
    }

    private Map<String, Object> line(InvoiceLine line) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("text",
                capitalized(sentences.say(line.text())) + line.machine().map(where -> " – " + where).orElse(""));
        view.put("outcome", line.outcome() == Outcome.CHARGED
                ? ""
                : sentences.word("outcome." + line.outcome().name().toLowerCase(Locale.ROOT)));
        view.put("quantity", line.unitPrice().isPresent() ? sentences.quantity(line.quantity()) : "");
        view.put("price", line.unitPrice()
                .map(price -> formats.amount(price.amount()) + sentences.each(price.per())).orElse(""));
        view.put("list", formats.amount(line.list()));
        view.put("amount", formats.amount(line.net()));
        view.put("how", how(line.how()));
        view.put("taxed", line.taxed());
        return view;
    }

    private String how(Explanation how) {
        List<String> parts = new ArrayList<>();
        parts.add(sentences.formula(how.figure()));
        how.reasons().forEach(reason -> parts.add(sentences.say(reason)));
        return String.join("; ", parts);
    }

    private List<Map<String, Object>> totals(Totals totals) {
        List<Map<String, Object>> rows = new ArrayList<>();
        totals.discount().ifPresent(off -> {
            rows.add(total(sentences.word("total.lines"), "", formats.amount(totals.lines()), false));
            rows.add(total(sentences.say(off.text()), how(off.how()), formats.amount(off.amount().negate()), false));
        });
        rows.add(total(sentences.word("total.net"), "", formats.amount(totals.net()), false));
        totals.taxes().forEach(tax -> rows.addAll(taxes(tax)));
        if (totals.taxes().isEmpty()) {
            rows.add(total(sentences.word("total.no-tax"), "", formats.amount(totals.tax()), false));
        }
        rows.add(total(sentences.word("total.gross") + " (" + totals.gross().getCurrency().getCurrencyCode() + ")", "",
                formats.amount(totals.gross()), true));
        return rows;
    }

    private List<Map<String, Object>> taxes(TaxTotal tax) {
        String on = sentences.word("total.on").replace("{0}", formats.amount(tax.base()));
        if (tax.components().isEmpty()) {
            String reason = tax.rate().reason().map(why -> why.in(invoice.language())).orElse(tax.rate().id());
            return List.of(total(reason, on, formats.amount(tax.tax()), false));
        }
        List<Map<String, Object>> rows = new ArrayList<>();
        tax.components().forEach(part -> rows.add(total(
                sentences.word("total.tax").replace("{0}", part.component().name().in(invoice.language()))
                        .replace("{1}", formats.number(part.component().percent().value()) + "\u00a0%"),
                on, formats.amount(part.amount()), false)));
        if (tax.components().size() > 1) {
            rows.add(total(sentences.word("total.tax-sum"), how(tax.how()), formats.amount(tax.tax()), false));
        }
        return rows;
    }

    private static Map<String, Object> total(String label, String how, String amount, boolean last) {
        return Map.of("label", label, "how", how, "amount", amount, "last", last);
    }

    /** Why the lines without a mark carry no tax, each reason once. */
    private List<String> untaxed() {
        Set<String> reasons = new LinkedHashSet<>();
        invoice.lines().stream().filter(line -> !line.taxed() && line.outcome().isDone()).map(InvoiceLine::why)
                .forEach((Phrase why) -> reasons.add(sentences.say(why)));
        return List.copyOf(reasons);
    }

    /** Names in the rates are written small, as within a sentence; a line begins one. */
    private static String capitalized(String text) {
        int first = text.offsetByCodePoints(0, 1);
        return text.substring(0, first).toUpperCase(Locale.ROOT) + text.substring(first);
    }

    private static Map<String, String> pair(String name, String value) {
        return Map.of("name", name, "value", value);
    }
}
