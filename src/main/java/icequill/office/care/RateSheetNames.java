package icequill.office.care;

import icequill.problem.Problem;
import icequill.rates.RateSheet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Holds whom rate sheets are for against the book: a sheet for a name that nobody has would never be used, and nobody would know.
 *
 * @param customers of the book, by id
 * @param sites of the book, by id
 */
record RateSheetNames(List<String> customers, List<String> sites) {

    List<Problem> problems(RateSheet sheet) {
        return Stream.concat(unknown(sheet, "customer", sheet.accounts(), customers),
                unknown(sheet, "site", sheet.sites(), sites)).toList();
    }

    private static Stream<Problem> unknown(RateSheet sheet, String kind, Set<String> named, List<String> known) {
        return new TreeSet<>(named).stream().filter(id -> !known.contains(id))
                .map(id -> Problem.unknownName(sheet.place(), kind, id, known));
    }
}
