package icequill.render.view;

import icequill.document.Bill;
import icequill.party.Remittance;
import icequill.render.words.Sentences;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What every invoice begins with: its number, to whom, under which references, and what is to be paid. */
record InvoiceHead(Bill invoice, Sentences sentences) {

    /**
     * The head as texts.
     *
     * @param facts the references beside the address
     */
    Map<String, Object> model(List<Map<String, String>> facts) {
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(invoice, title(), sentences).model(invoice.billTo(), facts));
        model.put("draft", invoice.isDraft());
        model.put("currency", currency());
        model.put("pay", pay());
        return model;
    }

    String label() {
        return sentences.word(invoice.isDraft() ? "total.draft" : "total.gross");
    }

    private Title title() {
        return new Title(sentences.word(invoice.isDraft() ? "invoice.draft" : "invoice.title"), invoice.number());
    }

    private String questions() {
        Remittance remittance = invoice.shop().remittance();
        String phone = remittance.phone().orElse(invoice.shop().phone());
        return sentences.word("pay.questions", remittance.contact().map(name -> name + ", " + phone).orElse(phone));
    }

    private String currency() {
        return invoice.totals().gross().getCurrency().getCurrencyCode();
    }

    /** A draft asks for no payment yet, and a sum of nothing for none at all. */
    private Map<String, Object> pay() {
        boolean nothing = invoice.totals().gross().isZero();
        boolean asked = !nothing && !invoice.isDraft();
        return Map.of("label", label(), "amount",
                currency() + "\u00a0" + sentences.formats().amount(invoice.totals().gross()), "nothing", nothing, "by",
                invoice.dueDate().filter((LocalDate due) -> asked).map(sentences.formats()::day).orElse(""), "quote",
                invoice.number().filter(number -> asked).map(number -> sentences.word("pay.quote", number)).orElse(""),
                "questions", questions());
    }
}
