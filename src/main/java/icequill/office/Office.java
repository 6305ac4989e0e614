package icequill.office;

import icequill.document.CreditRequest;
import icequill.document.Invoice;
import icequill.document.Paper;
import icequill.files.ShopFolder;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Site;
import icequill.pricer.SpendingLimit;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The office of one shop folder. Each call reads the folder anew, so that it always works with what stands there now. */
public final class Office {

    private static final String NUMBER = "[A-Za-z0-9][A-Za-z0-9-]{0,29}";

    private final Path folder;
    private final PaperDesk desk;

    private Office(Path folder) {
        this.folder = folder;
        this.desk = new PaperDesk(folder);
    }

    /**
     * What an invoice or a credit note is to be like.
     *
     * @param number empty for a draft
     * @param language empty for the customer's
     */
    public record Wish(Optional<String> number, LocalDate date, Optional<Language> language, Extras extras) {}

    public static Office of(Path folder) {
        return new Office(folder);
    }

    /** The office where plans and agreements of the same shop are looked after. */
    public PlanOffice plans() {
        return PlanOffice.of(folder);
    }

    /** The office where the accounts of the same shop's customers are looked after. */
    public AccountOffice accounts() {
        return AccountOffice.of(folder);
    }

    /** Whether a file that is to be quoted asks for maintenance. */
    public boolean isMaintenance(Path file) {
        return BookSites.shop(folder).isMaintenance(file);
    }

    /** The price of a visit. */
    public Checked<PriceSheet> price(Path file, Optional<Language> language) {
        return VisitInHand.of(BookSites.shop(folder), file)
                .map(hand -> new PriceSheet(hand, language.orElseGet(() -> languageOf(hand))));
    }

    /**
     * Writes the invoice of a visit into papers/. A draft replaces an earlier draft; a numbered invoice never replaces
     * anything. A price above the customer's limit is a problem.
     */
    public Checked<WrittenPaper> invoice(Path file, Wish wish) {
        return VisitInHand.of(BookSites.shop(folder), file).then(hand -> invoice(hand, wish));
    }

    /** The same for a visit that was priced already. */
    Checked<WrittenPaper> invoice(VisitInHand hand, Wish wish) {
        return numbered(folder, wish).then(sound -> withinLimit(hand))
                .then(found -> assembled(found, wish).then(invoice -> write(found, invoice, wish)));
    }

    static Checked<VisitInHand> withinLimit(VisitInHand hand) {
        return SpendingLimit.exceeded(hand.taxed().priced(), hand.visit().order()).map(Checked::<VisitInHand>faulty)
                .orElseGet(() -> Checked.sound(hand));
    }

    static Checked<Invoice> assembled(VisitInHand hand, Wish wish) {
        LocalDate ended = hand.visit().ended().toLocalDate();
        if (wish.number().isPresent() && wish.date().isBefore(ended)) {
            return Checked.faulty(new Problem(Code.WRONG_ORDER, Place.NOWHERE,
                    "dated " + wish.date() + ", but visit \"" + hand.visit().id() + "\" ended on " + ended,
                    "that day or a later one"));
        }
        return billTo(hand.site(), wish.date())
                .map(billTo -> new InvoiceAssembly(hand.shop(), hand.site(), hand.visit(),
                        hand.rates(), hand.taxed(), billTo, language(hand, wish)).invoice(wish.number(), wish.date()));
    }

    /** Who is billed for a site on a day. */
    static Checked<BillTo> billTo(Site site, LocalDate day) {
        return site.customer().billTo().at(day).map(Checked::sound)
                .orElseGet(() -> Checked.faulty(new Problem(Code.MISSING,
                        Place.ofFile("sites/" + site.id() + ".yaml"), "nobody is billed on " + day,
                        "a billTo entry that covers the day")));
    }

    private Checked<WrittenPaper> write(VisitInHand hand, Invoice invoice, Wish wish) {
        String name = wish.number().map(number -> "invoice-" + number).orElse("draft-" + hand.visit().id());
        return desk.write(invoice, name, wish.extras(), invoice.isDraft())
                .map(files -> WrittenPaper.of(files, invoice, hand.notices()));
    }

    /**
     * Writes a credit note into papers/. The invoice is worked out anew from the visit it billed, at the prices and for the
     * addressee of its own date.
     */
    public Checked<WrittenPaper> credit(Path file, Wish wish) {
        ShopFolder shop = BookSites.shop(folder);
        Optional<CreditRequest> request = shop.credit(file);
        return VisitInHand.report(shop, new Problems()).or(request::orElseThrow)
                .then(wanted -> VisitInHand.of(shop, folder.resolve(wanted.visit()))
                        .then(hand -> numbered(folder, wish).then(sound -> credit(hand, wanted, wish))));
    }

    private Checked<WrittenPaper> credit(VisitInHand hand, CreditRequest request, Wish wish) {
        Wish original = new Wish(Optional.of(request.invoice().number()), request.invoice().date(), wish.language(),
                Extras.NONE);
        String name = wish.number().map(number -> "credit-" + number)
                .orElse("draft-credit-" + request.invoice().number());
        return assembled(hand, original)
                .then(invoice -> CreditAssembly.of(invoice, request))
                .then(assembly -> assembly.credit(wish.number(), wish.date()))
                .then(credit -> desk.write(credit, name, wish.extras(), credit.isDraft())
                        .map(files -> WrittenPaper.of(files, credit, List.of())));
    }

    /**
     * Writes the quote of a planned repair, or of maintenance, into papers/, at the prices of the quote's own date, which it
     * holds.
     */
    public Checked<WrittenPaper> quote(Path file, Wish wish) {
        ShopFolder shop = BookSites.shop(folder);
        if (shop.isMaintenance(file)) {
            return plans().quote(file, wish);
        }
        return numbered(folder, wish).then(sound -> RepairQuoting.of(folder, shop, file, wish))
                .then(quoting -> quoting.quote(wish).then(quote -> desk
                        .write(quote, name("quote", quoting.hand(), wish), wish.extras(), quote.isDraft())
                        .map(files -> WrittenPaper.of(files, quote,
                                quoting.hand().notices()))));
    }

    /** The price of a planned repair as its quote has it, for the owner. */
    public Checked<PriceSheet> priceOfQuote(Path file, Wish wish) {
        return VisitInHand.of(BookSites.shop(folder), file, visit -> wish.date())
                .map(hand -> new PriceSheet(hand, language(hand, wish)));
    }

    private static String name(String kind, VisitInHand hand, Wish wish) {
        return wish.number().map(number -> kind + "-" + number).orElse("draft-" + kind + "-" + hand.visit().id());
    }

    static Language language(VisitInHand hand, Wish wish) {
        return wish.language().orElseGet(() -> languageOf(hand));
    }

    /** Writes the record of a visit into papers/, in place of an earlier one. */
    public Checked<WrittenPaper> record(Path file, Wish wish) {
        return VisitInHand.of(BookSites.shop(folder), file).then(hand -> record(hand, wish));
    }

    /** The same for a visit that was read already. */
    Checked<WrittenPaper> record(VisitInHand hand, Wish wish) {
        return hand.vouched().then(sound -> write(new RecordAssembly(sound, language(sound, wish)).record(wish.date()),
                "record-" + sound.visit().id(), sound.site().customer().name(), wish));
    }

    /**
     * The shortest safe timetable of a planned visit.
     *
     * @param crew how many come; empty for those whom the visit names
     * @param language of the alarms; empty for the shop's
     */
    public Checked<PlanSheet> plan(Path file, OptionalInt crew, Optional<Language> language) {
        return VisitInHand.of(BookSites.shop(folder), file)
                .then(hand -> Planning.of(hand, crew).sheet(language.orElse(hand.shop().language())));
    }

    /** Writes the work sheet of a planned visit into papers/, in place of an earlier one. */
    public Checked<WrittenPaper> worksheet(Path file, Wish wish) {
        return VisitInHand.of(BookSites.shop(folder), file).then(hand -> {
            Language language = wish.language().orElse(hand.shop().language());
            return new WorkSheetAssembly(hand, language).sheet(wish.date())
                    .then(sheet -> write(sheet, "worksheet-" + hand.visit().id(), hand.site().customer().name(),
                            wish));
        });
    }

    /** Writes the brushing sheet of a site into papers/, in place of an earlier one. */
    public Checked<Brushed> brushing(Path file, Wish wish) {
        return BrushingInHand.of(BookSites.shop(folder), file, wish.date())
                .then(hand -> hand.sheet(wish.date(), wish.language()).then(sheet -> write(sheet,
                        "brushing-" + hand.site().id(), sheet.customer(), wish)
                        .map(paper -> new Brushed(paper, sheet))));
    }

    /** The same in both languages, one on each side of the sheet. */
    public Checked<Brushed> brushingPair(Path file, Wish wish) {
        return BrushingInHand.of(BookSites.shop(folder), file, wish.date())
                .then(hand -> hand.pair(wish.date(), wish.language()).then(pair -> write(pair,
                        "brushing-both-" + hand.site().id(), pair.front().customer(), wish)
                        .map(paper -> new Brushed(paper, pair))));
    }

    /** A paper without a number of its own. */
    private Checked<WrittenPaper> write(Paper paper, String name, String customer, Wish wish) {
        return unnumbered(wish).then(sound -> desk.write(paper, name, wish.extras(), true)
                .map(files -> WrittenPaper.of(files, paper, customer, List.of())));
    }

    /** The wish, or that it has a number, which not every kind of paper can have. */
    static Checked<Wish> unnumbered(Wish wish) {
        return wish.number().isEmpty()
                ? Checked.sound(wish)
                : Checked.faulty(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, "this kind of paper has no number",
                        "leave out --number"));
    }

    /** The wish, or that its number cannot be used: once there is a book, the book numbers. */
    static Checked<Wish> numbered(Path folder, Wish wish) {
        if (wish.number().isPresent() && ShopBook.of(folder, Clock.systemUTC()).exists()) {
            return Checked.faulty(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                    "this shop has a book, which gives the numbers",
                    "icequill visit FILE, then icequill issue VISIT; for quotes, icequill issue --quote FILE; for credit notes, icequill credit NUMBER"));
        }
        return wish.number().filter(number -> !number.matches(NUMBER))
                .map(number -> Checked.<Wish>faulty(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "the number \"" + number + "\" cannot be used", "up to 30 letters, digits and hyphens")))
                .orElseGet(() -> Checked.sound(wish));
    }

    private static Language languageOf(VisitInHand hand) {
        return hand.site().customer().language().orElse(hand.shop().language());
    }
}
