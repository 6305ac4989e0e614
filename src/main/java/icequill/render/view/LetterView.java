package icequill.render.view;

import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.explain.ConstantKey;
import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Shop;
import icequill.render.page.Texts;
import icequill.render.words.Fonts;
import icequill.render.words.Sentences;
import icequill.render.words.Words;
import icequill.tax.TaxPlace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What every paper begins with, as texts for {@code parts/letter.ftlh}. */
record LetterView(Paper paper, Title title, Sentences sentences) {

    /**
     * What a paper is called.
     *
     * @param number that its readers quote; empty where it bears none
     */
    record Title(String kind, Optional<String> number) {

        static Title of(String kind) {
            return new Title(kind, Optional.empty());
        }

        /** On one line, as the file and the foot of its pages say it. */
        String text() {
            return number.map(known -> kind + " " + known).orElse(kind);
        }
    }

    LetterView(Paper paper, String kind, Sentences sentences) {
        this(paper, Title.of(kind), sentences);
    }

    /**
     * What stands above all else.
     *
     * @param lang of the language, as HTML says it
     * @param w the words of the language
     * @param title on one line
     * @param kind of paper, without its number
     * @param number may be empty
     * @param draft whether it says that it is one
     * @param footFont the font of the foot of each page
     * @param facts the references beside the address
     */
    record Letter(String lang, String size, String accent, Words w, String title, String kind, String number,
            boolean draft, String footFont, Sender shop, Addressee billTo, List<Details.Row> facts)
            implements
            Texts {}

    record Sender(String name, List<String> lines, String phone, String email, List<String> registrations,
            String payee, List<String> payeeLines, List<Details.Row> bank)
            implements
            Texts {}

    record Addressee(String name, List<String> lines) implements Texts {}

    /**
     * What is to be paid.
     *
     * @param nothing whether nothing is
     * @param by the day, or what else stands beside the amount; may be empty
     * @param early what is enough if it is paid early; may be empty
     * @param quote what to quote; may be empty
     * @param questions whom to ask; may be empty
     */
    record Pay(String label, String amount, boolean nothing, String by, String early, String quote, String questions)
            implements
            Texts {

        Pay(String label, String amount, boolean nothing, String by) {
            this(label, amount, nothing, by, "", "", "");
        }
    }

    /**
     * For papers that go to whoever pays.
     *
     * @param facts the references beside the address
     */
    Letter letter(BillTo addressee, boolean draft, List<Details.Row> facts) {
        return letter(billTo(addressee), draft, facts);
    }

    /** Whether the VAT identifiers of both sides belong on the paper (2006/112/EC Art. 226(3) and (4)). */
    private boolean namesVat() {
        return paper instanceof PricedPaper priced && priced.totals().taxPlace().regime() == TaxPlace.Regime.VAT;
    }

    private Stream<String> vatNumber(Optional<String> id) {
        return id.filter(number -> namesVat()).map(number -> sentences.word("vat-number", number)).stream();
    }

    /** For papers that go to a site: whose it is, and where. */
    Letter letter(String customer, String site, Address address, List<Details.Row> facts) {
        List<String> lines = new ArrayList<>();
        if (!site.equals(customer)) {
            lines.add(site);
        }
        lines.addAll(address.lines());
        return letter(new Addressee(customer, List.copyOf(lines)), false, facts);
    }

    private Letter letter(Addressee addressee, boolean draft, List<Details.Row> facts) {
        return new Letter(paper.language().tag(), ConstantKey.of(paper.size()), paper.shop().accent(),
                Words.of(paper.language()), title.text(), title.kind(), title.number().orElse(""), draft,
                Fonts.familyFor(title.text() + paper.shop().name()).style(), sender(paper.shop()), addressee, facts);
    }

    private Sender sender(Shop shop) {
        return new Sender(shop.name(), shop.address().lines(), shop.phone(), shop.email(),
                Stream.concat(vatNumber(shop.vatId()),
                        shop.registrations().stream().map(entry -> entry.name() + " " + entry.value())).toList(),
                shop.remittance().payee(), shop.remittance().address().lines(),
                shop.remittance().bank().stream().map(entry -> new Details.Row(entry.name(), entry.value())).toList());
    }

    private Addressee billTo(BillTo billTo) {
        List<String> lines = new ArrayList<>();
        billTo.attention().ifPresent(lines::add);
        lines.addAll(billTo.address().lines());
        vatNumber(billTo.vatId()).forEach(lines::add);
        return new Addressee(billTo.name(), List.copyOf(lines));
    }
}
