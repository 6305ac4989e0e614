package icequill.render.view;

import icequill.document.Bill;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Remittance;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.time.LocalDate;
import java.util.List;

/**
 * What every invoice begins with: its number, to whom, under which references, and what is to be paid.
 *
 * @param what it asks for, where that is not the whole of finished work, such as a deposit; may be empty
 */
record InvoiceHead(Bill invoice, String what, Sentences sentences) {

    /** Of what is no part of anything. */
    InvoiceHead(Bill invoice, Sentences sentences) {
        this(invoice, "", sentences);
    }

    /** In which currency, and what is to be paid. */
    record Due(String currency, LetterView.Pay pay) implements Texts {}

    /** @param facts the references beside the address */
    LetterView.Letter letter(List<Details.Row> facts) {
        return new LetterView(invoice, title(), sentences).letter(invoice.billTo(), invoice.isDraft(), facts);
    }

    /** A draft asks for no payment yet, and a sum of nothing for none at all. */
    Due due() {
        boolean nothing = invoice.totals().gross().isZero();
        boolean asked = !nothing && !invoice.isDraft();
        String currency = invoice.totals().gross().getCurrency().getCurrencyCode();
        return new Due(currency, new LetterView.Pay(label(),
                currency + "\u00a0" + sentences.formats().amount(invoice.totals().gross()), nothing,
                invoice.dueDate().filter((LocalDate due) -> asked).map(sentences.formats()::day).orElse(""),
                invoice.totals().early().filter(early -> asked)
                        .map(early -> sentences.say(Phrase.of("pay.early", new Fact.Amount(early.gross()),
                                new Fact.Day(early.until()))))
                        .orElse(""),
                invoice.number().filter(number -> asked).map(number -> sentences.word("pay.quote", number)).orElse(""),
                questions()));
    }

    String label() {
        return sentences.word(invoice.isDraft() ? "total.draft" : "total.gross");
    }

    private LetterView.Title title() {
        String kind = sentences.word(invoice.isDraft() ? "invoice.draft" : "invoice.title");
        return new LetterView.Title(what.isEmpty() ? kind : kind + ": " + what, invoice.number());
    }

    private String questions() {
        Remittance remittance = invoice.shop().remittance();
        String phone = remittance.phone().orElse(invoice.shop().phone());
        return sentences.word("pay.questions", remittance.contact().map(name -> name + ", " + phone).orElse(phone));
    }
}
