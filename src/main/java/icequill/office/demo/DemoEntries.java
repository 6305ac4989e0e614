package icequill.office.demo;

import icequill.files.form.FormKind;
import icequill.ledger.Reading;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.RequestEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.problem.Validated;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the invented shop's papers are made of, each by id unless said otherwise.
 *
 * @param visits by the days on which they ended
 * @param quoted planned visits and requests
 * @param planned visits that nothing is quoted for
 */
record DemoEntries(List<VisitEntry> visits, List<FormName> quoted, List<FormName> planned, List<FormName> requests,
        List<FormName> brushings, List<FormName> agreements) {

    static DemoEntries of(ShopBook book) {
        return book.read(open -> Validated.valid(of(open))).orElseThrow();
    }

    private static DemoEntries of(Reading open) {
        List<VisitEntry> planned = open.entries().plannedVisits();
        List<String> requests = requests(open, FormKind.MAINTENANCE_REQUEST);
        return new DemoEntries(
                open.entries().visits().stream()
                        .sorted(Comparator.comparing(DemoEntries::day).thenComparing(VisitEntry::id)).toList(),
                names(Stream.concat(planned.stream().filter(DemoEntries::isQuoted).map(VisitEntry::id),
                        requests.stream())),
                names(planned.stream().filter(visit -> !isQuoted(visit)).map(VisitEntry::id)), names(requests.stream()),
                names(requests(open, FormKind.BRUSHING_REQUEST).stream()),
                names(open.entries().agreements().stream().map(AgreementEntry::id)));
    }

    static LocalDate day(VisitEntry visit) {
        return visit.ended().toLocalDate();
    }

    private static boolean isQuoted(VisitEntry visit) {
        return visit.data().contains("\"quote\":");
    }

    private static List<String> requests(Reading open, FormKind kind) {
        return open.entries().requests(kind.key()).stream().map(RequestEntry::id).toList();
    }

    private static List<FormName> names(Stream<String> ids) {
        return ids.sorted().<FormName>map(FormName.InBook::new).toList();
    }
}
