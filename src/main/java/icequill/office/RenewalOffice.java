package icequill.office;

import icequill.agreement.NoticePlan;
import icequill.agreement.NoticeRule;
import icequill.agreement.NoticeRules;
import icequill.answer.register.RenewalList;
import icequill.answer.register.RenewalList.Row;
import icequill.answer.register.RenewalList.Window;
import icequill.ledger.entries.AgreementEntry;
import icequill.party.Site;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Rates;
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

/** The office that sees renewals coming. */
public final class RenewalOffice {

    private final ShopBook book;

    private RenewalOffice(ShopBook book) {
        this.book = book;
    }

    public static RenewalOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static RenewalOffice of(ShopBook book) {
        return new RenewalOffice(book);
    }

    /**
     * What renews itself.
     *
     * @param from no earlier day is proposed for sending
     * @param until the last day on which a term ends
     */
    public Validated<RenewalList> upcoming(LocalDate from, LocalDate until) {
        ShopFolder shop = BookForms.shop(book);
        Problems problems = new Problems();
        Optional<NoticeRules> rules = shop.notices();
        Optional<Rates> rates = shop.schedule().flatMap(schedule -> problems.take(schedule.asOf(from)));
        problems.addAll(shop.problems());
        return problems.or(() -> rules.orElseThrow()).then(known -> book.read(open -> Validated.valid(
                open.entries().agreements().stream().filter(entry -> !entry.isForgotten()).toList()))
                .map(entries -> list(entries, known, rates.orElseThrow().labor().week()::isWorkday, from, until)));
    }

    private RenewalList list(List<AgreementEntry> entries, NoticeRules rules, Predicate<LocalDate> workday,
            LocalDate from, LocalDate until) {
        Problems unread = new Problems();
        List<Row> rows = entries.stream().flatMap(entry -> {
            ShopFolder shop = BookForms.shop(book);
            Optional<AgreementRequest> request = shop.agreement(BookForms.form(entry));
            Optional<Site> site = request.flatMap(found -> shop.site(found.scope().site(), found.scope().place()));
            unread.addAll(shop.problems());
            return request.filter(found -> goesOn(found, from, until)).stream()
                    .flatMap(found -> site.stream().map(there -> row(entry, found, there, NoticePlan.of(
                            found.renewal().terms(), found.renewal().jurisdictions(), rules, workday, from))));
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

    private static Row row(AgreementEntry entry, AgreementRequest request, Site site, NoticePlan plan) {
        Renewal renewal = request.renewal();
        return new Row(entry.number(), entry.id(), site.customer().name(), site.name(),
                renewal.terms().term().lastDay(), renewal.terms().lastDayToRefuse(),
                plan.window().map(days -> new Window(days.first(), days.last())), plan.send(),
                plan.rules().stream().map(NoticeRule::id).toList());
    }
}
