package icequill.office.care;

import icequill.answer.history.Period;
import icequill.answer.history.VisitListSheet;
import icequill.answer.history.VisitListing;
import icequill.answer.history.VisitRow;
import icequill.files.form.VisitNames;
import icequill.ledger.Reading;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.entries.VisitQuestion;
import icequill.ledger.find.FindWords;
import icequill.party.Language;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.UnknownName;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The office that lists visits. */
public final class VisitListOffice {

    private final ShopBook book;

    private VisitListOffice(ShopBook book) {
        this.book = book;
    }

    public static VisitListOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static VisitListOffice of(ShopBook book) {
        return new VisitListOffice(book);
    }

    /**
     * The visits that somebody wants to see, the newest first.
     *
     * @param language of the reader; empty for the shop's
     */
    public Validated<VisitListSheet> visits(VisitWish wish, Optional<Language> language) {
        return wish.period().period().then(period -> book.read(open -> found(open, wish, period)))
                .then(listing -> HistoryOffice.sentences(BookForms.shop(book), language)
                        .map(sentences -> new VisitListSheet(listing, sentences)));
    }

    private static Validated<VisitListing> found(Reading open, VisitWish wish, Period period) {
        return VisitScope.of(open, wish.site(), wish.customer(), wish.machine()).then(scope -> {
            FoundVisits visits = FoundVisits.in(open);
            Predicate<VisitEntry> fits = fitting(open, wish);
            List<VisitEntry> named = visits.entries(scope, period).reversed().stream()
                    .filter(entry -> isNamed(VisitNames.of(entry.data()), wish)).filter(fits).toList();
            return named.isEmpty()
                    ? unknown(open, wish).map(none -> rows(visits, named, wish))
                    : Validated.valid(rows(visits, named, wish));
        });
    }

    private static VisitListing rows(FoundVisits visits, List<VisitEntry> named, VisitWish wish) {
        List<FoundVisits.One> found = wish.states().isEmpty()
                ? visits.of(named.stream().limit(wish.most() + 1L).toList())
                : visits.of(named).stream().filter(one -> wish.states().contains(one.state())).toList();
        return new VisitListing(found.stream().limit(wish.most()).map(VisitListOffice::row).toList(),
                found.size() > wish.most());
    }

    private static VisitRow row(FoundVisits.One one) {
        VisitEntry entry = one.entry();
        VisitNames names = VisitNames.of(entry.data());
        return new VisitRow(entry.id(), entry.site(), one.state(), entry.began(), entry.ended(), names.caller(),
                names.people(), names.machines(), one.invoices());
    }

    private static boolean isNamed(VisitNames names, VisitWish wish) {
        return isAmong(wish.technician(), names.people()) && isAmong(wish.caller(), names.caller().stream().toList())
                && (!wish.calls() || names.caller().isPresent());
    }

    /** By what somebody types of a visit, of which a part is enough. */
    private static Predicate<VisitEntry> fitting(Reading open, VisitWish wish) {
        List<String> words = Arrays.stream(FindWords.plain(wish.find().orElse("")).strip().split("\\s+"))
                .filter(word -> !word.isEmpty()).toList();
        if (words.isEmpty()) {
            return entry -> true;
        }
        Map<String, String> sites = open.entries().sites().stream()
                .collect(Collectors.toMap(SiteEntry::id, SiteEntry::name));
        return entry -> {
            VisitNames names = VisitNames.of(entry.data());
            String all = FindWords.plain(Stream.of(
                    Stream.of(entry.id(), entry.site(), sites.getOrDefault(entry.site(), "")), names.people().stream(),
                    names.caller().stream(), names.machines().stream(), entry.purchaseOrder().stream())
                    .flatMap(texts -> texts).collect(Collectors.joining("\n")));
            return words.stream().allMatch(all::contains);
        };
    }

    private static boolean isAmong(Optional<String> wanted, Collection<String> names) {
        return wanted.isEmpty() || names.stream()
                .anyMatch(name -> FindWords.plain(name).contains(FindWords.plain(wanted.get().strip())));
    }

    /** A problem where no visit of the whole book has a name that was asked for. */
    private static Validated<List<VisitNames>> unknown(Reading open, VisitWish wish) {
        if (wish.technician().isEmpty() && wish.caller().isEmpty()) {
            return Validated.valid(List.of());
        }
        List<VisitNames> all = open.entries().visits(VisitQuestion.ALL).stream()
                .map(entry -> VisitNames.of(entry.data())).toList();
        Problems problems = new Problems();
        unknown("visit by", wish.technician(), all, VisitNames::people, problems);
        unknown("call by", wish.caller(), all, names -> names.caller().stream().toList(), problems);
        return problems.or(() -> all);
    }

    private static void unknown(String what, Optional<String> wanted, List<VisitNames> all,
            Function<VisitNames, List<String>> names, Problems problems) {
        List<String> known = all.stream().flatMap(each -> names.apply(each).stream()).distinct().sorted().toList();
        wanted.filter(name -> !isAmong(Optional.of(name), known))
                .ifPresent(name -> problems.add(UnknownName.name(what, name, known, "a part of the name is enough")));
    }
}
