package icequill.office.letters;

import icequill.document.Bill;
import icequill.document.CreditNote;
import icequill.document.MaintenanceQuote;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.document.RepairQuote;
import icequill.document.ServicePeriod;
import icequill.document.Where;
import icequill.life.mail.MailLetter;
import icequill.life.mail.MailMatter.Occasion;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a mail says of the paper that it brings, in the paper's language and out of nothing else than the paper.
 *
 * @param title of the paper, as its subject begins
 * @param facts by which the customer's office files it: order, store
 * @param sentences about it
 */
public record MailText(Shop shop, Sentences words, String title, List<String> facts, List<String> sentences) {

    private static final String PARAGRAPH = "\n\n";

    public MailText {
        facts = List.copyOf(facts);
        sentences = List.copyOf(sentences);
    }

    /** That of a paper without a number, as it was kept. */
    static MailText of(Shop shop, Language language, MailLetter letter) {
        return new MailText(shop, Sentences.of(language, shop.address().country()), letter.title(), letter.facts(),
                letter.sentences());
    }

    /** That of a paper; a problem for one that the book does not issue. */
    public static Validated<MailText> of(Paper paper, Occasion occasion) {
        Sentences words = Sentences.of(paper.language(), paper.shop().address().country());
        String day = words.formats().day(paper.date());
        return switch (paper) {
        case CreditNote credit -> letter(credit, words, List.of(words.word("mail.credit-note", number(credit), day,
                words.formats().amountInCurrency(credit.totals().gross()), credit.original().number())));
        case Bill bill -> letter(bill, words, Stream.concat(
                Stream.of(words.word("mail.invoice", number(bill), day,
                        words.formats().amountInCurrency(bill.totals().gross()))),
                bill.dueDate().map(due -> words.word("mail.due", words.formats().day(due))).stream()).toList());
        case RepairQuote quote -> letter(quote, words, List.of(
                words.word("mail.repair-quote", number(quote), day,
                        words.formats().amountInCurrency(quote.totals().gross())),
                held(words, occasion, quote.validUntil()), words.word("mail.accept")));
        case MaintenanceQuote quote -> Validated.valid(new MailText(quote.shop(), words,
                words.word("mail.title.maintenance-quote", quote.number().orElse("")),
                store(words, quote.where()), List.of(
                        words.word("mail.maintenance-quote", quote.number().orElse(""), day),
                        held(words, occasion, quote.validUntil()), words.word("mail.accept"))));
        default -> Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, "this paper is not mailed",
                "a bill or a quote of the book"));
        };
    }

    private static Validated<MailText> letter(PricedPaper paper, Sentences words, List<String> sentences) {
        ServicePeriod served = paper.served();
        return Validated.valid(new MailText(paper.shop(), words, words.word("mail.title." + switch (paper) {
        case CreditNote credit -> "credit-note";
        case Bill bill -> "invoice";
        default -> "repair-quote";
        }, number(paper)), Stream.concat(
                served.purchaseOrder().map(order -> words.word("mail.order", order)).stream(),
                served.isAtOneSite()
                        ? store(words, served.site(), served.storeNumber()).stream()
                        : Stream.of(words.word("mail.several-sites")))
                .toList(), sentences));
    }

    private static String held(Sentences words, Occasion occasion, LocalDate last) {
        return words.word(occasion == Occasion.LAPSES_SOON ? "mail.lapses" : "mail.valid", words.formats().day(last));
    }

    private static String number(PricedPaper paper) {
        return paper.number().orElse("");
    }

    private static List<String> store(Sentences words, Where where) {
        return store(words, where.site(), where.storeNumber());
    }

    private static List<String> store(Sentences words, String site, Optional<String> number) {
        return List.of(number.map(store -> words.word("mail.store", site, store)).orElse(site));
    }

    /** Who writes, what it is, and by what it is filed. */
    String subject() {
        return shop.name() + ": " + Stream.concat(Stream.of(title), facts.stream()).collect(Collectors.joining(", "));
    }

    /**
     * The whole text.
     *
     * @param names of those it goes to, as far as they are known
     * @param standing what goes along besides
     * @param bill whether it asks for money
     */
    String text(List<String> names, List<String> standing, boolean bill) {
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add(names.isEmpty()
                ? words.word("mail.greeting")
                : words.word("mail.greeting-to", String.join(", ", names)));
        paragraphs.add(String.join(" ", sentences));
        if (!facts.isEmpty()) {
            paragraphs.add(facts.stream().map(Sentences::capitalized).collect(Collectors.joining("\n")));
        }
        if (!standing.isEmpty()) {
            paragraphs.add(words.word("mail.standing", String.join(", ", standing)));
        }
        if (bill) {
            paragraphs.add(words.word("pay.warning"));
        }
        paragraphs.add(words.word("mail.questions", shop.phone(), shop.email()));
        paragraphs.add(Stream.concat(Stream.of(words.word("mail.closing"), shop.name()),
                shop.address().lines().stream()).collect(Collectors.joining("\n")));
        return String.join(PARAGRAPH, paragraphs) + "\n";
    }
}
