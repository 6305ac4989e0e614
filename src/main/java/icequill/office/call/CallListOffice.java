package icequill.office.call;

import icequill.answer.call.CallListSheet;
import icequill.answer.call.CallListing;
import icequill.answer.call.CallRow;
import icequill.answer.call.CallStage;
import icequill.answer.call.ToldResponse;
import icequill.answer.history.Period;
import icequill.answer.history.VisitRow;
import icequill.answer.history.VisitState;
import icequill.files.form.AskedFor;
import icequill.ledger.Reading;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.find.FindWords;
import icequill.life.call.CallRecord;
import icequill.life.call.Response;
import icequill.office.care.AskedPeriod;
import icequill.office.care.VisitListOffice;
import icequill.office.care.VisitScope;
import icequill.office.care.VisitWish;
import icequill.party.Language;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookedCall;
import icequill.shop.BookedCalls;
import icequill.shop.ShopBook;
import icequill.shop.UnknownName;
import icequill.work.Call;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The office that lists calls: those that were taken, and visits that tell that somebody asked for them. */
public final class CallListOffice {

    private static final int ALL = 1_000_000;

    private final ShopBook book;

    private CallListOffice(ShopBook book) {
        this.book = book;
    }

    public static CallListOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static CallListOffice of(ShopBook book) {
        return new CallListOffice(book);
    }

    /** A call as it is listed, and all that is found of it by letters. */
    private record Found(CallRow row, String letters) {

        static Found of(CallRow row, Stream<String> more) {
            return new Found(row, FindWords.plain(Stream.concat(Stream.of(row.call().orElse(""),
                    row.visit().orElse(""), row.site(), row.siteName(), row.caller(), row.symptom()), more)
                    .collect(Collectors.joining("\n"))));
        }
    }

    /**
     * The calls that somebody wants to see, the newest first, and how soon somebody came to all of them.
     *
     * @param language of the reader; empty for the shop's
     */
    public Validated<CallListSheet> calls(CallWish wish, Optional<Language> language) {
        return CallDesk.of(book, language).then(desk -> wish.period().period()
                .then(period -> book.read(open -> VisitScope.of(open, wish.site(), wish.customer(), wish.machine())
                        .then(scope -> found(desk, open, wish, scope)
                                .then(all -> listed(all, wish, period)))))
                .map(listing -> new CallListSheet(listing, desk.sentences())));
    }

    private static Validated<CallListing> listed(List<Found> all, CallWish wish, Period period) {
        List<String> words = Arrays.stream(FindWords.plain(wish.find().orElse("")).strip().split("\\s+"))
                .filter(word -> !word.isEmpty()).toList();
        List<CallRow> rows = all.stream().filter(found -> words.stream().allMatch(found.letters()::contains))
                .map(Found::row).filter(row -> isCalledBy(row, wish.caller()) && isWithin(row, period)
                        && (wish.stages().isEmpty() || wish.stages().contains(row.stage())))
                .sorted(Comparator.comparing((CallRow row) -> row.at().toInstant()).reversed()
                        .thenComparing(CallRow::site))
                .toList();
        Problems problems = new Problems();
        wish.caller().filter(name -> all.stream().map(Found::row).noneMatch(row -> isCalledBy(row, Optional.of(name))))
                .ifPresent(name -> problems.add(UnknownName.name("call by", name,
                        all.stream().map(found -> found.row().caller()).distinct().sorted().toList(),
                        "a part of the name is enough")));
        return problems.or(() -> CallListing.of(rows, wish.most()));
    }

    private static boolean isCalledBy(CallRow row, Optional<String> caller) {
        return caller.isEmpty() || FindWords.plain(row.caller()).contains(FindWords.plain(caller.get().strip()));
    }

    private static boolean isWithin(CallRow row, Period period) {
        LocalDate day = row.at().toLocalDate();
        return period.from().filter(day::isBefore).isEmpty() && period.until().filter(day::isAfter).isEmpty();
    }

    private Validated<List<Found>> found(CallDesk desk, Reading open, CallWish wish, VisitScope scope) {
        Map<String, String> sites = open.entries().sites().stream()
                .collect(Collectors.toMap(SiteEntry::id, SiteEntry::name));
        return new BookedCalls(desk.folder().shop().orElseThrow(), open).all().then(calls -> {
            Set<String> answered = calls.stream().flatMap(call -> call.state().known().visits().stream())
                    .map(visit -> visit.visit()).collect(Collectors.toSet());
            Stream<Found> taken = calls.stream().filter(call -> isAsked(call, scope))
                    .map(call -> Found.of(CallRow.of(call, sites.getOrDefault(call.site(), call.site()), desk.now()),
                            call.state().known().call().order().purchaseOrder().stream()));
            return visits(wish).map(visits -> Stream.concat(taken,
                    visits.stream().filter(visit -> !answered.contains(visit.id()))
                            .flatMap(visit -> told(desk, open, visit, sites).stream()))
                    .toList());
        });
    }

    private static boolean isAsked(BookedCall call, VisitScope scope) {
        CallRecord known = call.state().known();
        return scope.contains(call.site())
                && (scope.machine().isEmpty() || scope.machine().equals(known.call().machine()));
    }

    private Validated<List<VisitRow>> visits(CallWish wish) {
        return VisitListOffice.of(book).visits(new VisitWish(wish.site(), wish.customer(), wish.machine(),
                Optional.empty(), Optional.empty(), Optional.empty(), true, AskedPeriod.EVER, Set.of(), ALL),
                Optional.empty()).map(sheet -> sheet.data().visits());
    }

    /** What a visit tells of a call that nobody took; empty where it names one. */
    private static Optional<Found> told(CallDesk desk, Reading open, VisitRow visit, Map<String, String> sites) {
        Optional<VisitEntry> entry = open.entries().visit(visit.id()).found();
        Optional<Call> asked = entry.flatMap(
                found -> new AskedFor(desk.now().getZone()).of(found.data())).filter(call -> call.id().isEmpty());
        return asked.map(call -> Found.of(row(call, visit, sites.getOrDefault(visit.site(), visit.site()),
                desk.now()), entry.flatMap(VisitEntry::purchaseOrder).stream()));
    }

    private static CallRow row(Call call, VisitRow visit, String siteName, ZonedDateTime now) {
        CallStage stage = stage(visit.state());
        Optional<ZonedDateTime> arrived = stage == CallStage.DONE || stage == CallStage.CLOSED
                ? Optional.of(visit.began())
                : Optional.empty();
        return new CallRow(Optional.empty(), Optional.of(visit.id()), stage, visit.site(), siteName, call.at(),
                call.askedBy(), call.symptom(), Optional.empty(),
                ToldResponse.of(new Response(call.at(), call.promised(), arrived), now));
    }

    private static CallStage stage(VisitState state) {
        return switch (state) {
        case PLANNED -> CallStage.PLANNED;
        case DONE -> CallStage.DONE;
        case BILLED -> CallStage.CLOSED;
        case WITHDRAWN -> CallStage.WITHDRAWN;
        };
    }
}
