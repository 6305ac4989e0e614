package icequill.office;

import icequill.agreement.NoticePlan;
import icequill.agreement.NoticeRule;
import icequill.agreement.NoticeRules;
import icequill.agreement.SentNotice;
import icequill.answer.register.RenewalList;
import icequill.answer.register.RenewalList.Row;
import icequill.answer.register.RenewalList.Window;
import icequill.ledger.Reading;
import icequill.ledger.entries.AgreementEntry;
import icequill.life.agreement.AgreementState;
import icequill.life.agreement.AgreementState.InForce;
import icequill.party.Language;
import icequill.party.Site;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.render.words.Sentences;
import icequill.request.AgreementRequest;
import icequill.request.AgreementRequest.Renewal;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The office that sees renewals coming. */
public final class RenewalOffice {

    private final ShopBook book;
    private final Optional<Language> language;

    private RenewalOffice(ShopBook book, Optional<Language> language) {
        this.book = book;
        this.language = language;
    }

    /**
     * That of a shop.
     *
     * @param language of the reader; empty for the shop's
     */
    public static RenewalOffice of(Path folder, Clock clock, Optional<Language> language) {
        return of(ShopBook.of(folder, clock), language);
    }

    /** The same of a shop that is open already. */
    public static RenewalOffice of(ShopBook book, Optional<Language> language) {
        return new RenewalOffice(book, language);
    }

    /**
     * What renews itself.
     *
     * @param from no earlier day is proposed for sending
     * @param until the last day on which a term ends
     */
    public Validated<RenewalList> upcoming(LocalDate from, LocalDate until) {
        return listed(entry -> true, from, until);
    }

    /**
     * The same of one agreement, by its id or number, whenever its term ends; none where it does not renew itself.
     *
     * @param today no earlier day is proposed for sending
     */
    public Validated<RenewalList> of(String agreement, LocalDate today) {
        return listed(entry -> entry.id().equals(agreement) || entry.number().equals(agreement), today, LocalDate.MAX);
    }

    private Validated<RenewalList> listed(Predicate<AgreementEntry> which, LocalDate from, LocalDate until) {
        ShopFolder shop = BookForms.shop(book);
        Problems problems = new Problems();
        Optional<NoticeRules> rules = shop.notices();
        Optional<Rates> rates = shop.schedule().flatMap(schedule -> problems.take(schedule.asOf(from)));
        problems.addAll(shop.problems());
        return problems.or(() -> rules.orElseThrow()).then(known -> book.looking(held -> held.read(open -> {
            Telling telling = new Telling(known, rates.orElseThrow().labor().week()::isWorkday,
                    Sentences.of(language.orElse(shop.shop().orElseThrow().language()),
                            shop.shop().orElseThrow().address().country()));
            return Validated.valid(list(held, open, open.entries().agreements().stream()
                    .filter(entry -> !entry.isForgotten()).filter(which).toList(), telling, from, until));
        })));
    }

    /** By what renewals are told. */
    private record Telling(NoticeRules rules, Predicate<LocalDate> workday, Sentences sentences) {}

    private static RenewalList list(ShopBook book, Reading open, List<AgreementEntry> entries, Telling telling,
            LocalDate from, LocalDate until) {
        Problems unread = new Problems();
        List<Row> rows = entries.stream().flatMap(entry -> {
            ShopFolder shop = BookForms.shop(book);
            Optional<AgreementRequest> request = shop.agreement(BookForms.form(entry));
            Optional<Site> site = request.flatMap(found -> shop.site(found.scope().site(), found.scope().place()));
            unread.addAll(shop.problems());
            AgreementState state = BookForms.steps(open, entry.number()).state();
            return request.filter(found -> goesOn(found, from, until)).stream()
                    .flatMap(found -> site.stream().flatMap(there -> state instanceof InForce(List<SentNotice> notices)
                            ? Stream.of(row(entry, found, there, notices, telling, from))
                            : Stream.empty()));
        }).sorted(Comparator.comparing(RenewalOffice::first).thenComparing(Row::agreement)).toList();
        return new RenewalList(from, until, rows, unread.list());
    }

    private static LocalDate first(Row row) {
        return row.window().map(Window::first).orElse(row.refuseUntil());
    }

    private static boolean goesOn(AgreementRequest request, LocalDate from, LocalDate until) {
        LocalDate last = request.renewal().terms().term().lastDay();
        return request.accepted().isPresent() && request.endingNotice().isEmpty()
                && !request.isPastEnd(last.plusDays(1)) && !last.isBefore(from)
                && !last.isAfter(until);
    }

    private static Row row(AgreementEntry entry, AgreementRequest request, Site site, List<SentNotice> notices,
            Telling telling, LocalDate today) {
        Renewal renewal = request.renewal();
        NoticePlan plan = NoticePlan.of(renewal.terms(), renewal.jurisdictions(), telling.rules(), telling.workday(),
                today);
        RenewalEvidence evidence = RenewalEvidence.of(plan, notices, today);
        return new Row(entry.number(), entry.id(), site.customer().name(), site.name(),
                renewal.terms().term().lastDay(), renewal.terms().lastDayToRefuse(),
                plan.window().map(days -> new Window(days.first(), days.last())), plan.send(),
                plan.rules().stream().map(NoticeRule::id).toList(), evidence.why(telling.sentences()),
                evidence.sent(telling.sentences()), evidence.next());
    }
}
