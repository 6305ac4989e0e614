package icequill.office.asking;

import icequill.answer.PriceSheet;
import icequill.answer.RecordedVisit;
import icequill.answer.entry.VisitChoices;
import icequill.files.disk.SafeFile;
import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.entries.VisitQuestion;
import icequill.ledger.papers.Pdf;
import icequill.life.repair.RecommendedRepair;
import icequill.office.Office;
import icequill.office.billing.FreeVisitId;
import icequill.office.billing.RecordOffice;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.rates.RateSchedule;
import icequill.render.words.Sentences;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.BookForms;
import icequill.shop.BookedCalls;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.ShopFolder;
import icequill.shop.life.FreeId;
import icequill.shop.life.OpenRepairs;
import icequill.work.Visit;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The office where somebody is asked about a visit; what he told is read, priced and stored like any form. */
public final class AskingOffice {

    private static final int LAST_VISITS = 10;
    private static final int MOST_PEOPLE = 9;

    private final ShopBook book;

    private AskingOffice(ShopBook book) {
        this.book = book;
    }

    public static AskingOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static AskingOffice of(ShopBook book) {
        return new AskingOffice(book);
    }

    /**
     * The questions about a visit at a site.
     *
     * @param language of who is asked; empty for the shop's
     */
    public Validated<VisitDialogue> about(String site, Optional<Language> language) {
        ShopFolder folder = BookForms.shop(book);
        Optional<Site> where = folder.site(site, Place.NOWHERE);
        Optional<RateSchedule> schedule = folder.schedule();
        Optional<Shop> shop = folder.shop();
        if (where.isEmpty() || schedule.isEmpty() || shop.isEmpty()) {
            return new Validated.Invalid<>(folder.problems());
        }
        Sentences sentences = Sentences.of(language.orElse(shop.get().language()), shop.get().address().country());
        return book.read(open -> Validated.valid(new VisitDialogue(where.get(), shop.get().zone(),
                ShopDay.today(book.folder(), book.clock()), people(lastVisits(open, site)), repairs(folder, open, site),
                Optional.empty(), schedule.get()::asOf, sentences)));
    }

    /**
     * What can be chosen for a visit, where a form shows all of it at once.
     *
     * @param day by whose rates the visit is priced
     */
    public Validated<VisitChoices> choices(String site, LocalDate day, Language language) {
        return about(site, Optional.of(language)).then(dialogue -> dialogue.rates().apply(day).map(
                rates -> new Choosing(
                        new Setting(new Asking(dialogue.sentences()), dialogue.site(), dialogue.zone(), day,
                                rates, dialogue.repairs()))
                        .all(dialogue.known())));
    }

    /** What a call says already of the visit that answers it. */
    public Validated<CalledVisit> answering(String call) {
        ShopFolder folder = BookForms.shop(book);
        return folder.shop().map(shop -> book.read(open -> new BookedCalls(shop, open).find(call))
                .map(CalledVisit::of)).orElseGet(() -> new Validated.Invalid<>(folder.problems()));
    }

    /** The questions about a visit that answers a call of its site. */
    public Validated<VisitDialogue> answering(String call, String site, Optional<Language> language) {
        return answering(call).then(called -> called.site().equals(site)
                ? about(site, language).map(open -> open.answering(called))
                : Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "call \"" + call + "\" is of site \"" + called.site() + "\"",
                        "a call of the visit's own site")));
    }

    private static List<RecommendedRepair> repairs(ShopFolder folder, Reading open, String site) {
        return new OpenRepairs(folder, open).at(site).stream().map(OpenRepairs.One::repair).toList();
    }

    private static List<VisitEntry> lastVisits(Reading open, String site) {
        return open.entries().visits(new VisitQuestion(List.of(site), Optional.empty(), Optional.empty())).reversed()
                .stream().filter(entry -> !entry.isPlanned() && !entry.isForgotten()).limit(LAST_VISITS).toList();
    }

    /** Who was there, the last first, with the grades that they had then. */
    private List<KnownPerson> people(List<VisitEntry> visits) {
        ShopFolder folder = BookForms.shop(book);
        Map<String, KnownPerson> known = new LinkedHashMap<>();
        visits.stream().flatMap(entry -> folder.contents().visit(BookForms.form(entry)).stream()).map(Visit::people)
                .flatMap(List::stream).filter(person -> person.known().isPresent())
                .forEach(person -> known.putIfAbsent(person.known().get(),
                        new KnownPerson(person.person(), Optional.of(person.grade()))));
        return known.values().stream().limit(MOST_PEOPLE).toList();
    }

    /** What was told, under a name that the book does not have yet. */
    public TypedVisit typed(Draft visit) {
        String day = visit.texts("people", "arrived").stream().findFirst().orElse("").replaceFirst("T.*", "");
        String site = String.valueOf(visit.values().get("site"));
        return new TypedVisit(new FreeVisitId(book).like(FreeId.of(site, day)), visit);
    }

    /** Its price, or all that keeps it from having one. */
    public Validated<PriceSheet> price(TypedVisit visit, Language language) {
        return Office.of(book).price(visit.name(), Optional.of(language));
    }

    /** The draft of its invoice, in the customer's language, to look at. */
    public Validated<Pdf> draftOfInvoice(TypedVisit visit, LocalDate day) {
        return Office.of(book).draftOfInvoice(visit.name(),
                new PaperOptions(Optional.empty(), day, Optional.empty(), Extras.NONE));
    }

    public Validated<RecordedVisit> store(TypedVisit visit) {
        return RecordOffice.of(book).record(visit.name());
    }

    /** That a form is in the way where one is to be written. */
    public static Optional<Problem> inTheWay(Path file) {
        return SafeFile.inTheWay(file).map(there -> new Problem(Code.ALREADY_EXISTS, there.place(), there.message(),
                "another name; no form is written over a file"));
    }

    /** Writes its form into a new file. */
    public Validated<Path> write(TypedVisit visit, Path file) {
        return inTheWay(file).map(Validated::<Path>invalid).orElseGet(
                () -> SafeFile.write(file, visit.yaml().getBytes(StandardCharsets.UTF_8), false));
    }
}
