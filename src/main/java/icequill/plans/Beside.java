package icequill.plans;

import icequill.party.Site;
import icequill.request.AgreementRequest;
import java.time.LocalDate;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What an agreement looks after besides one of its sites.
 *
 * @param machines from 0
 * @param sites from 0
 */
record Beside(int machines, int sites) {

    static final Beside NOTHING = new Beside(0, 0);

    /** The sites of an agreement, in the order of the requests. */
    record Of(List<AgreementRequest> requests, List<Site> sites) {

        /** What there is besides a site on a day. */
        Beside on(int site, LocalDate day) {
            List<Integer> counts = IntStream.range(0, sites.size()).filter(other -> other != site)
                    .mapToObj(other -> requests.get(other).machines(sites.get(other), day).size())
                    .filter(count -> count > 0).toList();
            return new Beside(counts.stream().mapToInt(Integer::intValue).sum(), counts.size());
        }

        /** The days within the term on which something changes at any site, in their order. */
        NavigableSet<LocalDate> days() {
            NavigableSet<LocalDate> days = new TreeSet<>();
            requests.forEach(request -> Stream.of(request.changes().stream().map(AgreementRequest.Change::from),
                    request.part().stream().flatMap(part -> part.from().stream()),
                    request.part().stream().flatMap(part -> part.until().stream()).map(last -> last.plusDays(1)))
                    .flatMap(each -> each).forEach(days::add));
            return days;
        }
    }
}
