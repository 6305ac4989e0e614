package icequill.office.billing;

import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.entries.VisitEntry;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.UnknownName;

/** Visits of the book, as far as something may be done with them. */
final class RecordedVisits {

    private RecordedVisits() {
    }

    /** One that was done and stands. */
    static Validated<VisitEntry> billable(Reading open, String id) {
        return known(open, id).then(entry -> VisitBooking.standing(open, entry)).then(entry -> entry.isPlanned()
                ? Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "visit \"" + id + "\" is only planned", "first record what was done: icequill visit add FILE"))
                : Validated.valid(entry));
    }

    static Validated<VisitEntry> known(Reading open, String id) {
        return open.entries().visit(id).found().map(Validated::valid)
                .orElseGet(() -> Validated.invalid(open.entries().agreement(id).isPresent()
                        ? new Problem(Code.NOT_ALLOWED, Place.NOWHERE, "\"" + id + "\" is an agreement",
                                "--installment N; which is next: icequill agreement next " + id)
                        : UnknownName.name("visit", id,
                                open.entries().visits().stream().map(VisitEntry::id).toList(),
                                "record it first: icequill visit add FILE")));
    }

    static Validated<VisitEntry> unlessBilled(Reading open, VisitEntry entry) {
        return StandingInvoices.visit(open, entry.id()).map(number -> Validated.<VisitEntry>invalid(new Problem(
                Code.ALREADY_EXISTS, Place.NOWHERE, "visit \"" + entry.id() + "\" was billed as " + number,
                "if that is wrong: icequill credit issue " + number))).orElse(Validated.valid(entry));
    }

    /** A colleague may have recorded it anew. */
    static Validated<VisitEntry> unchanged(Transaction open, VisitEntry entry) {
        return open.entries().visit(entry.id()).then(now -> now.equals(entry)
                ? Validated.valid(now)
                : Validated.invalid(BookForms.changed("visit \"" + entry.id() + "\"")));
    }
}
