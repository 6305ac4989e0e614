package icequill.office.billing;

import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.work.Attendance;
import icequill.work.Visit;

/** Finds people who would be in two visits at the same time: at two places, or in one visit that was recorded under two names. */
record SamePeople(ShopBook shop, Reading book) {

    Problems problems(Visit visit) {
        Problems problems = new Problems();
        ShopFolder folder = BookForms.shop(shop);
        book.entries().visitsDuring(visit.began(), visit.ended()).stream()
                .filter(other -> !other.id().equals(visit.id()))
                .filter(other -> book.entries().withdrawal(other.id()).isEmpty())
                .forEach(other -> check(visit, other, folder, problems));
        return problems;
    }

    /** The visits of a customer who was forgotten do not say who was there. */
    private static void check(Visit visit, VisitEntry other, ShopFolder folder, Problems problems) {
        if (!other.isForgotten()) {
            folder.contents().visit(BookForms.form(other)).ifPresent(recorded -> visit.people()
                    .forEach(person -> recorded.people().stream()
                            .filter(there -> person.known().isPresent() && person.known().equals(there.known())
                                    && person.overlaps(there))
                            .forEach(there -> problems.add(twice(visit, person, recorded, there)))));
        }
    }

    private static Problem twice(Visit visit, Attendance person, Visit recorded, Attendance there) {
        boolean same = visit.site().equals(recorded.site());
        return new Problem(Code.OVERLAP, person.place(),
                person.person() + " was " + (same ? "at this site" : "at site \"" + recorded.site() + "\"") + " from "
                        + there.arrived().toLocalDateTime() + " to " + there.left().toLocalDateTime()
                        + ", as visit \"" + recorded.id() + "\" says, which is recorded already",
                same
                        ? "one of the two; if the first is wrong: icequill visit withdraw " + recorded.id()
                        : "each person at one site at a time");
    }
}
