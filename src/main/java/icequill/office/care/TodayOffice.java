package icequill.office.care;

import icequill.answer.BookedPaper;
import icequill.answer.call.CallRow;
import icequill.answer.history.Period;
import icequill.answer.history.VisitState;
import icequill.answer.today.DayAnswer;
import icequill.answer.today.DayAnswer.Attendance;
import icequill.answer.today.DayAnswer.DueClaim;
import icequill.answer.today.DayAnswer.LapsingQuote;
import icequill.answer.today.DayAnswer.Mails;
import icequill.answer.today.DaySheet;
import icequill.files.form.VisitNames;
import icequill.ledger.Reading;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.find.PaperFilter;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.life.mail.MailState;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.BookedCalls;
import icequill.shop.BookedPapers;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.life.ClaimLife;
import icequill.shop.life.MailLife;
import icequill.shop.life.QuoteLife;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** The office that tells what waits for somebody. */
public final class TodayOffice {

    private static final int WEEK = 7;
    /** No quote holds its prices for longer. */
    private static final int LONGEST_QUOTE = 366;
    private static final int MOST_QUOTES = 1_000;

    private final ShopBook book;

    private TodayOffice(ShopBook book) {
        this.book = book;
    }

    /** What sites are called, each looked up once. */
    private record SiteNames(Reading open, Map<String, String> known) {

        String of(String site) {
            return known.computeIfAbsent(site,
                    id -> open.entries().siteNow(id).found().map(SiteEntry::name).orElse(id));
        }

        Attendance attendance(VisitEntry entry) {
            return new Attendance(entry.id(), entry.site(), of(entry.site()), entry.began(), entry.ended(),
                    VisitNames.of(entry.data()).people());
        }
    }

    public static TodayOffice of(ShopBook book) {
        return new TodayOffice(book);
    }

    /**
     * What waits on a day.
     *
     * @param language of the reader; empty for the shop's
     */
    public Validated<DaySheet> on(LocalDate day, Optional<Language> language) {
        ShopFolder folder = BookForms.shop(book);
        return HistoryOffice.sentences(folder, language).then(sentences -> (book.exists()
                ? book.read(open -> calls(open, folder.shop().orElseThrow())
                        .map(calls -> waiting(open, day, calls, mails(open))))
                : Validated.valid(new DayAnswer(day, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                        Mails.NONE)))
                .map(waiting -> new DaySheet(waiting, sentences)));
    }

    /** To which nobody went yet, the oldest first. */
    private Validated<List<CallRow>> calls(Reading open, Shop shop) {
        ZonedDateTime now = book.clock().instant().atZone(shop.zone());
        SiteNames names = new SiteNames(open, new HashMap<>());
        return new BookedCalls(shop, open).all().map(calls -> calls.stream()
                .map(call -> CallRow.of(call, names.of(call.site()), now))
                .filter(row -> row.stage().isWaiting())
                .sorted(Comparator.comparing(row -> row.at().toInstant())).toList());
    }

    private static DayAnswer waiting(Reading open, LocalDate day, List<CallRow> calls, Mails mails) {
        FoundVisits visits = FoundVisits.in(open);
        SiteNames names = new SiteNames(open, new HashMap<>());
        List<FoundVisits.One> all = visits.of(visits.entries(VisitScope.ALL,
                new Period(Optional.empty(), Optional.of(day.plusDays(WEEK)))));
        return new DayAnswer(day, attendances(names, all, VisitState.PLANNED, visit -> visit.isBefore(day)),
                attendances(names, all, VisitState.PLANNED, visit -> !visit.isBefore(day)),
                attendances(names, all, VisitState.DONE, visit -> true), calls, lapsing(open, day),
                claims(open, names, day), mails);
    }

    private Mails mails(Reading open) {
        List<MailState> states = MailLife.all(open, false).stream()
                .map(mail -> mail.state().at(book.clock().instant())).toList();
        return new Mails((int) states.stream().filter(TodayOffice::isToLookAfter).count(),
                (int) states.stream().filter(MailState.Waiting.class::isInstance).count());
    }

    private static boolean isToLookAfter(MailState state) {
        return state instanceof MailState.Unknown || state instanceof MailState.Refused
                || state instanceof MailState.Returned;
    }

    private static List<Attendance> attendances(SiteNames names, List<FoundVisits.One> visits, VisitState state,
            Predicate<LocalDate> when) {
        return visits.stream().filter(one -> one.state() == state)
                .map(FoundVisits.One::entry).filter(entry -> when.test(entry.began().toLocalDate()))
                .sorted(Comparator.comparing(VisitEntry::began)).map(names::attendance).toList();
    }

    private static List<DueClaim> claims(Reading open, SiteNames names, LocalDate day) {
        return ClaimLife.all(open).stream().flatMap(claim -> claim.next().stream()
                .filter(last -> !last.isAfter(day.plusDays(WEEK)))
                .map(last -> new DueClaim(claim.id(), claim.site().map(names::of).orElse(""), last)))
                .sorted(Comparator.comparing(DueClaim::by).thenComparing(DueClaim::claim)).toList();
    }

    private static List<LapsingQuote> lapsing(Reading open, LocalDate day) {
        PaperFilter quotes = new PaperFilter(Optional.of(day.minusDays(LONGEST_QUOTE)), Optional.of(day),
                Set.of(PaperKind.MAINTENANCE_QUOTE.name(), PaperKind.REPAIR_QUOTE.name()), Optional.empty(), Set.of(),
                Set.of());
        Set<String> answered = QuoteLife.answers(open).keySet();
        return open.papers().find("", quotes, MOST_QUOTES).stream()
                .filter(quote -> !answered.contains(quote.number())).flatMap(quote -> lapsing(open, quote).stream())
                .filter(quote -> !quote.validUntil().isBefore(day)
                        && !quote.validUntil().isAfter(day.plusDays(WEEK)))
                .sorted(Comparator.comparing(LapsingQuote::validUntil).thenComparing(LapsingQuote::number)).toList();
    }

    private static Optional<LapsingQuote> lapsing(Reading open, IssuedPaper quote) {
        return BookedPapers.lastDay(open, quote)
                .map(last -> new LapsingQuote(quote.number(), BookedPaper.of(quote, open).where(), last));
    }
}
